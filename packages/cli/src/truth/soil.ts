import {
  carselParrishCurve,
  carselParrishParameters,
  clappHornbergerCurve,
  cosbyCampbell,
  defaultSoilCurve,
  drainCovered,
  type FaoSoil,
  faoSoilRanges,
  faoWettedFraction,
  fieldCapacityAssoulineOr,
  fieldCapacityAtTension,
  fieldCapacityByDrain,
  fieldCapacityByFlux,
  fieldCapacityTwarakavi,
  osmoticTensionKPa,
  type Range,
  rawlsGreenAmpt,
  saxtonRawls,
  type TextureClass,
  textureCentre,
  textureClasses,
  textureClassOf,
  vanGenuchtenCurve,
} from "rootledger/ground";
import { headFromTension } from "rootledger/units";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

function textureOf(name: string): TextureClass {
  const found = textureClasses.find((texture) => texture === name);
  if (found === undefined) throw new Error(`no texture class is named ${name}`);
  return found;
}

const classOf = (given: Given): TextureClass => textureOf(given.text("class"));

const pair = (range: Range | undefined): number[] => (range === undefined ? [] : [range.low, range.high]);

const saxtonRawlsOf = (given: Given) =>
  saxtonRawls({
    sandFraction: given.number("sandPercent") / 100,
    clayFraction: given.number("clayPercent") / 100,
    organicMatterFraction: given.number("organicMatterPercent") / 100,
    densityFactor: given.has("densityFactor") ? given.number("densityFactor") : 1,
  });

const printedCurve = (given: Given, near: "raw" | "linear") =>
  vanGenuchtenCurve(
    "printed",
    {
      thetaResidual: given.number("thetaResidual"),
      thetaSaturated: given.number("thetaSaturated"),
      alphaPerCm: given.number("alphaPerCm"),
      n: given.number("n"),
      kSatCmPerH: given.number("kSatCmPerD") / 24,
    },
    "printed",
    near,
  );

/** Water of a default class held from 8 kPa to a drier tension, mm per m. */
const heldMmPerM = (name: TextureClass, toKPa: number): number => {
  const curve = defaultSoilCurve(name);
  return 1000 * (curve.thetaAt(headFromTension(8)) - curve.thetaAt(headFromTension(toKPa)));
};

/** Share of the texture triangle of each class on its 0.1 % grid. */
function textureShares(): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const steps = 1000;
  let points = 0;
  for (let sand = 0; sand <= steps; sand++) {
    for (let clay = 0; clay <= steps - sand; clay++) {
      const name = textureClassOf({ sandFraction: sand / steps, clayFraction: clay / steps });
      counts.set(name, (counts.get(name) ?? 0) + 1);
      points++;
    }
  }
  return new Map([...counts].map(([name, count]) => [name, (100 * count) / points]));
}

/** Texture, class tables, hydraulic functions and field capacity. */
export const soil: Evaluators = {
  texture: (given) => ({
    class: textureClassOf({
      sandFraction: given.number("sandPercent") / 100,
      clayFraction: given.number("clayPercent") / 100,
    }),
  }),
  "texture-area": () => Object.fromEntries(textureShares()),
  "saxton-rawls-class": (given) => {
    const found = saxtonRawlsOf(given);
    return {
      wiltingPercent: 100 * found.theta1500,
      fieldCapacityPercent: 100 * found.theta33,
      saturationPercent: 100 * found.thetaSaturated,
      availablePercent: 100 * (found.theta33 - found.theta1500),
      kSatMmPerH: 10 * found.kSatCmPerH,
      densityGPerCm3: found.densityGPerCm3,
    };
  },
  "saxton-rawls-equations": (given) => {
    const found = saxtonRawlsOf(given);
    return { ...found, kSatMmPerH: 10 * found.kSatCmPerH };
  },
  "saxton-rawls-salt": (given) => ({
    osmoticTensionKPa: osmoticTensionKPa({
      ecDsPerM: given.number("ecDsPerM"),
      thetaSaturated: given.number("thetaSaturated"),
      theta: given.number("theta"),
    }),
  }),
  "saxton-rawls-air": (given, names) =>
    Object.fromEntries(
      names.map((name) => {
        const organicMatterFraction = given.number("organicMatterPercent") / 100;
        const found = saxtonRawls({ ...textureCentre(textureOf(name)), organicMatterFraction });
        return [name, found.thetaSaturated - found.theta33];
      }),
    ),
  "van-genuchten": (given) => {
    const curve = printedCurve(given, "raw");
    const theta = curve.thetaAt(given.number("headCm"));
    return {
      effectiveSaturation: (theta - curve.thetaResidual) / (curve.thetaSaturated - curve.thetaResidual),
      theta,
      conductivityCmPerD: 24 * curve.conductivityAt(given.number("headCm")),
    };
  },
  "clapp-hornberger": (given) => {
    const curve = clappHornbergerCurve(classOf(given) as Parameters<typeof clappHornbergerCurve>[0]);
    const headAt80 = -given.number("airEntryCm") * 0.8 ** -given.number("b");
    return {
      "thetaAt336.6Cm": curve.thetaAt(-336.6),
      thetaAt15296Cm: curve.thetaAt(-15296),
      "conductivityAt0.8SaturationCmPerD": 24 * curve.conductivityAt(headAt80),
    };
  },
  cosby: (given) => {
    const found = cosbyCampbell({
      sandFraction: given.number("sandPercent") / 100,
      clayFraction: given.number("clayPercent") / 100,
    });
    return {
      b: found.b,
      airEntryCm: found.airEntryCm,
      kSatInchPerH: found.kSatCmPerH / 2.54,
      thetaSaturatedPercent: 100 * found.thetaSaturated,
    };
  },
  "green-ampt-row": (given) => ({ ...rawlsGreenAmpt[classOf(given) as keyof typeof rawlsGreenAmpt] }),
  "field-capacity": (given) => {
    const name = classOf(given);
    const parameters = carselParrishParameters(name);
    const curve = carselParrishCurve(name);
    return {
      twarakavi: fieldCapacityTwarakavi(parameters).theta,
      "flux0.01CmPerD": fieldCapacityByFlux(curve, 0.01).theta,
      assoulineOr: fieldCapacityAssoulineOr(parameters).theta,
      at33KPa: fieldCapacityAtTension(curve, 33).theta,
    };
  },
  "covered-drain": (given) => {
    const column = drainCovered([{ curve: printedCurve(given, "linear"), thicknessCm: given.number("columnCm") }], {
      hours: given.number("hours"),
    });
    const edges = given.numbers("layerEdgesCm");
    const theta = edges.slice(1).map((bottom, layer) => {
      const inside = [...column.theta].filter((_, i) => {
        const depth = column.depthCm[i] ?? Number.NaN;
        return depth > (edges[layer] ?? Number.NaN) && depth < bottom;
      });
      return inside.reduce((sum, value) => sum + value, 0) / inside.length;
    });
    return { thetaLayers: theta, drainedMm: 10 * column.drainedCm };
  },
  "readily-available-water": (given) => {
    const name = classOf(given);
    return {
      mmPerM8To20KPa: heldMmPerM(name, 20),
      mmPerM8To60KPa: heldMmPerM(name, 60),
      mmPerM8To1500KPa: heldMmPerM(name, 1500),
    };
  },
  "basic-infiltration": (given) => {
    const mmPerH = 10 * defaultSoilCurve(classOf(given)).kSatCmPerH;
    return { lowMmPerH: mmPerH, highMmPerH: mmPerH };
  },
  "field-capacity-tension": (given) => {
    const tensions = textureClasses.map(
      (name) =>
        fieldCapacityByDrain([{ toCm: 150, curve: defaultSoilCurve(name) }], {
          depthCm: given.number("depthCm"),
          hours: given.number("hours"),
          columnCm: 100,
        }).tensionKPa,
    );
    return { lowKPa: Math.min(...tensions), highKPa: Math.max(...tensions) };
  },
  "fao56-table-19": (given) => {
    const row = faoSoilRanges[classOf(given) as FaoSoil];
    return {
      fieldCapacity: pair(row?.fieldCapacity),
      wiltingPoint: pair(row?.wiltingPoint),
      available: pair(row?.available),
      readilyEvaporableMm: pair(row?.readilyEvaporableMm),
      totalEvaporableMm: pair(row?.totalEvaporableMm),
    };
  },
  "fao56-table-20": () =>
    Object.fromEntries(Object.entries(faoWettedFraction).map(([event, range]) => [event, pair(range)])),
};
