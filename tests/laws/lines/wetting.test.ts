import fc from "fast-check";
import {
  estimateWetting,
  flowEffect,
  pondShareLimits,
  stripPondFlowCm2PerH,
  stripPondHalfWidthCm,
  type WettingInput,
  woodingPondFlowCm3PerH,
  woodingPondRadiusCm,
} from "rootledger/lines";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (ours: number, theirs: number, relative: number): void =>
  expect(Math.abs(ours - theirs), `ours ${ours}, theirs ${theirs}`).toBeLessThanOrEqual(relative * Math.abs(theirs));
const soil = fc.record({ kSatCmPerH: number(0.05, 40), alphaPerCm: number(0.01, 0.4) });

describe("ponds", () => {
  test("flow and size are each other's inverse and rise together", () => {
    fc.assert(
      fc.property(soil, number(0.1, 100), number(1.01, 3), (ground, sizeCm, factor) => {
        const disc = woodingPondFlowCm3PerH(sizeCm, ground);
        near(woodingPondRadiusCm(disc, ground), sizeCm, 1e-10);
        expect(woodingPondFlowCm3PerH(factor * sizeCm, ground)).toBeGreaterThan(disc);
        const strip = stripPondFlowCm2PerH(sizeCm, ground);
        near(stripPondHalfWidthCm(strip, ground), sizeCm, 1e-9);
        expect(stripPondFlowCm2PerH(factor * sizeCm, ground)).toBeGreaterThan(strip);
      }),
    );
  });
  test("a wide pond passes kSat over its area; a small one what the soil draws", () => {
    const ground = { kSatCmPerH: 2, alphaPerCm: 0.1 };
    near(woodingPondFlowCm3PerH(1e5, ground), Math.PI * 1e10 * 2, 1e-3);
    near(stripPondFlowCm2PerH(1e5, ground), 2e5 * 2, 1e-3);
    near(woodingPondFlowCm3PerH(1e-4, ground), (4 * 1e-4 * 2) / 0.1, 1e-4);
    // Weber's strip: pi phi / (ln(8/(alpha x0)) - gamma - 1), reached only logarithmically.
    near(stripPondFlowCm2PerH(1e-9, ground), (Math.PI * 20) / (Math.log(8 / (0.1 * 1e-9)) - 1.5772156649), 1e-4);
  });
  test("finer soil and weaker draw make the pond larger", () => {
    fc.assert(
      fc.property(soil, number(100, 10000), number(1.01, 4), (ground, flow, factor) => {
        const radiusCm = woodingPondRadiusCm(flow, ground);
        expect(woodingPondRadiusCm(flow, { ...ground, kSatCmPerH: ground.kSatCmPerH / factor })).toBeGreaterThan(
          radiusCm,
        );
        expect(woodingPondRadiusCm(flow, { ...ground, alphaPerCm: ground.alphaPerCm * factor })).toBeGreaterThan(
          radiusCm,
        );
      }),
    );
  });
  test("refused: nothing, less than nothing, not a number", () => {
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => woodingPondRadiusCm(bad, { kSatCmPerH: 1, alphaPerCm: 0.1 })).toThrow(
        `woodingPondRadiusCm requires emitterFlowCm3PerH above 0: got ${bad}`,
      );
      expect(() => stripPondHalfWidthCm(1, { kSatCmPerH: bad, alphaPerCm: 0.1 })).toThrow(RangeError);
    }
  });
});

const anyRun: fc.Arbitrary<WettingInput> = fc
  .record({
    emitterFlowCm3PerH: number(500, 8000),
    volumeCm3: number(500, 30000),
    kSatCmPerH: number(0.1, 30),
    alphaPerCm: number(0.02, 0.3),
    thetaInitial: number(0.02, 0.25),
    pores: number(0.1, 0.3),
    share: number(0.3, 1),
  })
  .map(({ pores, share, ...run }) => {
    const thetaSaturated = run.thetaInitial + pores;
    // From the difference, not from `pores`: the sum has lost the last digit, and a rise may equal the free pores.
    return { ...run, thetaSaturated, meanThetaRise: share * (thetaSaturated - run.thetaInitial) };
  });

describe("estimateWetting", () => {
  test("every relation wets wider and deeper with more water; the transient front stands still once flow is steady", () => {
    fc.assert(
      fc.property(anyRun, number(1.05, 3), (run, factor) => {
        const less = estimateWetting(run).bodies;
        const more = estimateWetting({ ...run, volumeCm3: factor * run.volumeCm3 }).bodies;
        less.forEach((body, k) => {
          const least = body.relation === "warrick-transient" ? 1 - 1e-7 : 1 + 1e-4;
          expect(more[k].widthCm, body.relation).toBeGreaterThan(least * body.widthCm);
          expect(more[k].depthCm, body.relation).toBeGreaterThan(least * body.depthCm);
        });
      }),
      { numRuns: 25, endOnFailure: true },
    );
  });

  test("the spread is that of the bodies, and twice the flow is a run of twice the flow", () => {
    fc.assert(
      fc.property(anyRun, (run) => {
        const ours = estimateWetting(run);
        const widths = ours.bodies.map((body) => body.widthCm);
        expect(ours.all.widthCm).toEqual({
          min: Math.min(...widths),
          max: Math.max(...widths),
          ratio: Math.max(...widths) / Math.min(...widths),
        });
        expect(ours.all.depthCm.ratio).toBeGreaterThanOrEqual(1);
        const room = ours.bodies.filter((body) => body.holdsTheWater).map((body) => body.depthCm);
        if (room.length === 0) expect(ours.possible).toBeUndefined();
        else expect(ours.possible?.depthCm).toMatchObject({ min: Math.min(...room), max: Math.max(...room) });
        const faster = estimateWetting({ ...run, emitterFlowCm3PerH: 2 * run.emitterFlowCm3PerH });
        expect(faster.bodies.map((body) => body.widthCm)).toEqual(ours.bodies.map((body) => body.widthAtDoubleFlowCm));
        expect(faster.pond.pondShare).toBeGreaterThan(ours.pond.pondShare);
      }),
      { numRuns: 20 },
    );
  });

  test("each relation keeps its own law of flow", () => {
    const run: WettingInput = {
      emitterFlowCm3PerH: 2000,
      volumeCm3: 8000,
      kSatCmPerH: 1.04,
      alphaPerCm: 0.145,
      thetaInitial: 0.15,
      thetaSaturated: 0.43,
      meanThetaRise: 0.2,
    };
    const of = Object.fromEntries(estimateWetting(run).bodies.map((body) => [body.relation, body]));
    const grown = (name: string): number => of[name].widthAtDoubleFlowCm / of[name].widthCm;
    near(grown("schwartzman-zur"), 2 ** 0.17, 1e-12);
    near(grown("amin-ekhmaj"), 2 ** -0.0028, 1e-12);
    expect(grown("philip-travel-time")).toBe(1);
    expect(grown("warrick-transient")).toBeLessThan(1);
  });

  test("along a line: which bodies meet, and the pond as a strip", () => {
    const run: WettingInput = {
      emitterFlowCm3PerH: 2000,
      volumeCm3: 8000,
      kSatCmPerH: 1,
      alphaPerCm: 0.05,
      thetaInitial: 0.15,
      thetaSaturated: 0.43,
      meanThetaRise: 0.2,
    };
    expect(estimateWetting(run).line).toBeUndefined();
    expect(estimateWetting({ ...run, emitterSpacingCm: 20 }).line?.meetingNeighbours).toHaveLength(4);
    expect(estimateWetting({ ...run, emitterSpacingCm: 500 }).line?.meetingNeighbours).toEqual([]);
    const { line } = estimateWetting({ ...run, emitterSpacingCm: 40 });
    near(stripPondFlowCm2PerH(line?.pondHalfWidthCm ?? 0, run), 50, 1e-9);
  });

  test("refused: a rise larger than the free pores, water above saturation", () => {
    const run = {
      emitterFlowCm3PerH: 2000,
      volumeCm3: 8000,
      kSatCmPerH: 1,
      alphaPerCm: 0.05,
      thetaInitial: 0.3,
      thetaSaturated: 0.4,
      meanThetaRise: 0.2,
    };
    expect(() => estimateWetting(run)).toThrow(/meanThetaRise above 0 and at most the free pore space: got 0.2 of 0.1/);
    expect(() => estimateWetting({ ...run, thetaInitial: 0.5 })).toThrow(/thetaInitial < thetaSaturated < 1/);
    expect(() => estimateWetting({ ...run, volumeCm3: 0 })).toThrow("requires volumeCm3 above 0: got 0");
    expect(() => estimateWetting({ ...run, meanThetaRise: 0.1, emitterSpacingCm: 0 })).toThrow(/emitterSpacingCm/);
  });
});

test("the effect of flow turns once, from longer run to pond, as the emitter gets faster", () => {
  const order = ["longer-run-wider", "about-even", "pond-wider"];
  fc.assert(
    fc.property(soil, number(500, 20000), number(0.05, 0.4), (ground, volumeCm3, deficit) => {
      let last = 0;
      for (let flow = 50; flow < 2e5; flow *= 1.5) {
        const { effect, pondShare } = flowEffect({ ...ground, volumeCm3, emitterFlowCm3PerH: flow }, deficit);
        const now = order.indexOf(effect);
        expect(now).toBeGreaterThanOrEqual(last);
        expect(effect === "pond-wider").toBe(pondShare > pondShareLimits.pondAbove);
        last = now;
      }
    }),
    { numRuns: 30 },
  );
});
