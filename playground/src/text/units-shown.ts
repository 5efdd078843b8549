import {
  cmPerInch,
  hectaresPerAcre,
  kPaPerCbar,
  litresPerGallon,
  m2PerHa,
  microSPerCmPerDsPerM,
  mmPerCm,
  mSPerMPerDsPerM,
} from "rootledger/units";

/** A unit as it stands behind a number, and how many of the model's own units it holds. */
interface UnitShown {
  readonly text: string;
  readonly holds: number;
}

/** Units that a person may choose per kind of number; the first is the model's own. Salt is held in dS/m, area in m2. */
export const unitChoices = {
  water: { L: { text: "L", holds: 1 }, gal: { text: "gal", holds: litresPerGallon } },
  depth: { mm: { text: "mm", holds: 1 }, in: { text: "in", holds: cmPerInch * mmPerCm } },
  tension: { kPa: { text: "kPa", holds: 1 }, cbar: { text: "cbar", holds: kPaPerCbar } },
  salt: {
    "dS/m": { text: "dS/m", holds: 1 },
    "uS/cm": { text: "µS/cm", holds: 1 / microSPerCmPerDsPerM },
    "mS/m": { text: "mS/m", holds: 1 / mSPerMPerDsPerM },
  },
  area: { ha: { text: "ha", holds: m2PerHa }, ac: { text: "ac", holds: hectaresPerAcre * m2PerHa } },
} as const satisfies Readonly<Record<string, Readonly<Record<string, UnitShown>>>>;

export type Quantity = keyof typeof unitChoices;
export type UnitsChosen = Readonly<Record<Quantity, string>>;

export const quantities = Object.keys(unitChoices) as readonly Quantity[];

const firstUnits: UnitsChosen = { water: "L", depth: "mm", tension: "kPa", salt: "dS/m", area: "ha" };
const key = "rootledger.units";

/** Units that hold now; set by `chooseUnits` alone and read at every drawing. */
export let unitsChosen: UnitsChosen = keptUnits();

/** The unit that a kind of number is shown in. */
export function unitOf(quantity: Quantity): UnitShown {
  const units: Readonly<Record<string, UnitShown>> = unitChoices[quantity];
  return units[unitsChosen[quantity]] ?? Object.values(units)[0]!;
}

/** Holds from the next drawing on, and on this device from now on where storage is allowed. */
export function chooseUnits(chosen: UnitsChosen): void {
  unitsChosen = chosen;
  try {
    localStorage.setItem(key, JSON.stringify(chosen));
  } catch {
    // Without storage the choice holds until the page is closed.
  }
}

function keptUnits(): UnitsChosen {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? "{}");
    if (typeof kept !== "object" || kept === null) return firstUnits;
    const known = Object.entries(kept).filter(
      ([name, unit]) => Object.hasOwn(unitChoices, name) && Object.hasOwn(unitChoices[name as Quantity], String(unit)),
    );
    return { ...firstUnits, ...Object.fromEntries(known) };
  } catch {
    return firstUnits;
  }
}
