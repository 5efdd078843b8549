import { soluteGrid } from "../../water/solute-grid.js";
import { usualSpreading } from "../../water/solute-spread.js";
import { soluteTransport } from "../../water/solute-transport.js";
import { type Recorder, recorder } from "../recorder.js";
import { hasSolutes, type SolutesInRun, type SolutesMaker, type SolutesSetup } from "../solutes-in-run.js";
import type { StretchObserver } from "../tree-run.js";
import { extractEcInto } from "./extract-ec.js";
import { laidDoses, lineNitrogen, saltContentOf } from "./line-content.js";
import { rootMean, seasonSums, seasonSumsSize } from "./root-zone-salt.js";
import { respondInto, saltInCells, withSalt } from "./salt-stress.js";
import { layOnGround, massOf, type SoluteStore, soluteBook, soluteMover } from "./solute-account.js";
import { nitrogenColumns, saltColumns } from "./solute-days.js";
import { soluteMeasures } from "./solute-measures.js";
import { type CarriedSolutes, solutesResult } from "./solutes-result.js";
import { nitrateAtStart, saltAtStart } from "./start-masses.js";
import { stretchRecord } from "./stretch.js";

const mgPerG = 1000;

/**
 * Moves salt and nitrogen with the water of a run: mixing cells of at most 2.5 cm with bounded dispersion. Salt stays in the soil when
 * water is drawn or evaporates; nitrate goes with the water that roots draw. Neither sorbs, reacts or settles out, and all
 * nitrogen counts as nitrate. While the water settles they rest. Pass it to `simulate` as `solutes`.
 *
 * @throws RangeError if a dose by hand lies outside the season or finds no ground of its kind.
 * @example simulate(scenario, { solutes: seasonSolutes }).solutes?.salt?.residualFraction
 */
export const seasonSolutes: SolutesMaker = (setup) => (hasSolutes(setup.scenario) ? started(setup) : undefined);

function started({ scenario, prepared, treeNames, limits }: SolutesSetup): SolutesInRun {
  const { block, programme, season, soil } = scenario;
  const { grid: coarse, ground, roots, rootedLayers } = prepared;
  const { cells, lanes } = coarse;
  const { thetaSaturated } = ground;
  const { salt } = block;
  const withNitrogen = block.nitrogen !== undefined || programme.nitrogen !== undefined;
  const response = salt?.response ?? { kind: "none" };
  const grid = soluteGrid(coarse);
  const transport = soluteTransport({ grid, spreading: usualSpreading, thetaSaturated, rootedLayers });
  const rootless = rootlessLanes(roots.share, lanes);
  const groundwater = salt !== undefined && soil.bottom.kind === "water-table" ? saltContentOf(salt.startEceDsPerM) : 0;
  const moveSalt = soluteMover(
    transport,
    { uptakeShare: 0, mostUptakeMgPerDay: 0, bottomMgPerCm3: groundwater },
    rootless,
  );
  const mostUptakeMgPerDay = (block.nitrogen?.mostUptakeGPerTreeDay ?? Number.POSITIVE_INFINITY) * mgPerG;
  const moveNitrogen = soluteMover(transport, { uptakeShare: 1, mostUptakeMgPerDay, bottomMgPerCm3: 0 }, rootless);
  const saltMgPerCm3 = salt === undefined ? 0 : saltContentOf(salt.waterEcDsPerM);
  const line = lineNitrogen(scenario, prepared);
  const doses = laidDoses(scenario, prepared, rootless);
  const days: Recorder<string> = recorder(
    [...(salt === undefined ? [] : saltColumns), ...(withNitrogen ? nitrogenColumns : [])],
    "day",
    season.days,
    treeNames.length,
  );
  const stretch = stretchRecord(coarse);
  const { move, surface } = stretch;
  const inCells = saltInCells(cells);
  const trees = treeNames.map(
    (): CarriedSolutes => ({
      salt: salt === undefined ? undefined : saltAtStart(salt, grid, thetaSaturated),
      nitrogen: withNitrogen ? nitrateAtStart(block.nitrogen, grid, prepared) : undefined,
      sums: new Float64Array(seasonSumsSize),
    }),
  );
  if (trees.length > 0) readSalt(trees[0], thetaSaturated);

  function readSalt(tree: CarriedSolutes, theta: Float64Array): void {
    if (tree.salt === undefined) return;
    extractEcInto(inCells.eceDsPerM, tree.salt.massMg, grid, thetaSaturated);
    respondInto(inCells, response, theta, thetaSaturated);
  }

  function lay(store: SoluteStore, hour: number, row: number): void {
    if (hour % 24 === 0) store.book[soluteBook.takenUpToday] = 0;
    for (const dose of doses) {
      if (dose.hour !== hour) continue;
      layOnGround(store, dose.byLaneMg, rootless);
      days.at.nitrogenGiven[row] += massOf(dose.byLaneMg) / mgPerG;
    }
  }

  const observerOf = (carried: CarriedSolutes, t: number): StretchObserver => {
    const rowAt = (hour: number): number => ((hour / 24) | 0) * treeNames.length + t;
    return {
      before(tree, fromH) {
        readSalt(carried, tree.state.theta);
        if (carried.nitrogen) lay(carried.nitrogen, fromH, rowAt(fromH));
        stretch.begin(tree);
      },
      after(tree, fromH, toH) {
        stretch.end(tree, toH - fromH);
        bookWater(carried.sums);
        if (carried.salt) carrySalt(carried.salt, rowAt(fromH), toH);
        if (carried.nitrogen) carryNitrogen(carried.nitrogen, rowAt(fromH), line.at(0.5 * (fromH + toH)));
      },
    };
  };

  function bookWater(sums: Float64Array): void {
    const { eceDsPerM, factor } = inCells;
    const { hours, uptakeCm3, faces } = move;
    for (let c = 0; c < cells; c++) {
      sums[seasonSums.rootEceH] += roots.share[c] * eceDsPerM[c] * hours;
      sums[seasonSums.heldBackH] += roots.share[c] * (1 - factor[c]) * hours;
      sums[seasonSums.drawnEce] += uptakeCm3[c] * eceDsPerM[c];
      sums[seasonSums.drawnCm3] += uptakeCm3[c];
    }
    const last = (rootedLayers - 1) * lanes;
    for (let j = 0; j < lanes; j++) {
      sums[seasonSums.enteredCm3] += faces.intakeCm3[j];
      sums[seasonSums.belowRootsCm3] += faces.downCm3[last + j];
    }
  }

  function carrySalt(store: SoluteStore, row: number, toH: number): void {
    const d = days.at;
    const below = store.book[soluteBook.belowRoots];
    moveSalt(store, move, surface, saltMgPerCm3);
    d.saltWithWater[row] += (surface.emittedCm3 * saltMgPerCm3) / mgPerG;
    d.saltBelowRoots[row] += (store.book[soluteBook.belowRoots] - below) / mgPerG;
    if (toH % 24 !== 0) return;
    extractEcInto(inCells.eceDsPerM, store.massMg, grid, thetaSaturated);
    d.rootZoneEce[row] = rootMean(inCells.eceDsPerM, roots.share);
    d.saltStored[row] = massOf(store.massMg) / mgPerG;
  }

  function carryNitrogen(store: SoluteStore, row: number, lineMgPerCm3: number): void {
    const d = days.at;
    const below = store.book[soluteBook.belowRoots];
    const taken = store.book[soluteBook.takenUp];
    moveNitrogen(store, move, surface, lineMgPerCm3);
    d.nitrogenGiven[row] += (surface.emittedCm3 * lineMgPerCm3) / mgPerG;
    d.nitrogenTakenUp[row] += (store.book[soluteBook.takenUp] - taken) / mgPerG;
    d.nitrogenBelowRoots[row] += (store.book[soluteBook.belowRoots] - below) / mgPerG;
    d.nitrogenStored[row] = massOf(store.massMg) / mgPerG;
    d.nitrogenOnGround[row] = massOf(store.surfaceMg) / mgPerG;
  }

  const blocks = [
    ...trees.flatMap(({ salt: s, nitrogen: n, sums }) => [...(s ? [s.block] : []), ...(n ? [n.block] : []), sums]),
    days.block,
  ];
  const place = { grid, thetaSaturated, rootShare: roots.share };
  return {
    breaksH: Array.from(line.eventsH),
    ...(line.injection && { injection: line.injection }),
    stress: (base) => withSalt(base, inCells, response, limits, coarse),
    observers: trees.map(observerOf),
    snapshot: () => blocks.flatMap((block) => Array.from(block)),
    restore(from) {
      const size = blocks.reduce((sum, block) => sum + block.length, 0);
      if (from.length !== size) throw new RangeError(`restore requires ${size} numbers of solutes: got ${from.length}`);
      let at = 0;
      for (const block of blocks) {
        block.set(from.slice(at, at + block.length));
        at += block.length;
      }
    },
    result: (theta) => solutesResult(trees, days.table, theta, place),
    measures: (hours) => soluteMeasures(trees, hours, place),
    notes: line.notes,
  };
}

function rootlessLanes(share: Float64Array, lanes: number): Uint8Array {
  const rootless = new Uint8Array(lanes).fill(1);
  for (let c = 0; c < share.length; c++) if (share[c] > 0) rootless[c % lanes] = 0;
  return rootless;
}
