/** A time without air that a publication names, with what it saw. They differ by more than tenfold; none is a clock. */
export interface AirSpell {
  readonly hours: readonly [number, number];
  readonly saw: string;
  readonly source: string;
  readonly verified: "seen" | "memory";
}

/** State of the roots and soil that shifts how long they bear it. */
export interface AirDamageCase {
  readonly rootRot: "present" | "absent";
  /** Of the soil. */
  readonly temperatureC: number;
}

/** From the first published sign of harm to the last published time without, or death; and all that says so. */
export interface AirDamageBand {
  readonly fromH: number;
  readonly toH: number;
  readonly spells: readonly AirSpell[];
  /** What must stand beside the band. */
  readonly remark: string;
}

const day = 24;

/** Avocado without Phytophthora root rot. */
const healthy: readonly AirSpell[] = [
  {
    hours: [2 * day, 2 * day],
    saw: "trees under water died",
    source: "Newett, Queensland Department of Agriculture, Fisheries and Forestry, slides",
    verified: "seen",
  },
  {
    hours: [7 * day, 7 * day],
    saw: "a flood of seven days had no effect on healthy trees",
    source: "Schaffer & Ploetz (1989), HortScience 24",
    verified: "seen",
  },
  {
    hours: [9 * day, 14 * day],
    saw: "in a flood of eleven days gas exchange fell by day 9, stem water potential by day 14",
    source: "Gil et al. (2007), VI World Avocado Congress",
    verified: "seen",
  },
];

/** Avocado with Phytophthora cinnamomi in the soil. */
const infected: readonly AirSpell[] = [
  {
    hours: [12, 24],
    saw: "more than half of the roots rotted after floods of 12 to 24 hours with inoculum",
    source: "Phytophthora cinnamomi and flooding, Revista Brasileira de Fruticultura (2020)",
    verified: "seen",
  },
  {
    hours: [2 * day, 7 * day],
    saw: "trees with more than 15-20 % of their roots dead took up no carbon or lost most of it when flooded",
    source:
      "Ploetz & Schaffer (1987), Proc. Florida State Hort. Soc. 100; Schaffer & Ploetz (1989), HortScience 24; days from memory",
    verified: "memory",
  },
];

/** Temperatures, C, between which root rot was worst, some at the lower one, none at the upper one. */
const rot = { some: 15, worstFrom: 21, worstTo: 27, none: 33 };
const rotSource = "root rot worst at 21-27 C, some at 15, none at 33: Zentmyer (1981), Phytopathology 71";

/**
 * How long without air roots of avocado bear it: a band between sources, never a single hour. Root rot turns days into hours, between
 * the temperatures at which it was seen (above 15 and below 33 C); outside them an infected soil is judged as a healthy one, and says so.
 * Without root rot no source gives figures by temperature for avocado; citrus is injured after 3-4 days at 30-35 C and bears weeks below
 * 16 C (UF/IFAS), so warmth shortens.
 *
 * @throws RangeError if the temperature is not between -5 and 50 C.
 * @example airDamageBand({ rootRot: "present", temperatureC: 24 }).fromH // 12
 */
export function airDamageBand({ rootRot, temperatureC }: AirDamageCase): AirDamageBand {
  if (!(temperatureC >= -5 && temperatureC <= 50)) {
    throw new RangeError(`airDamageBand requires a soil temperature of -5 to 50 C: got ${temperatureC}`);
  }
  const active = rootRot === "present" && temperatureC >= rot.some && temperatureC < rot.none;
  const spells = active ? infected : healthy;
  const hours = spells.flatMap((spell) => spell.hours);
  const worst = temperatureC >= rot.worstFrom && temperatureC <= rot.worstTo;
  const about = !active
    ? rootRot === "present"
      ? `no root rot was seen at this temperature (${rotSource})`
      : "without root rot; warm soil shortens it"
    : `with root rot, ${worst ? "at the temperatures where it was worst" : "at temperatures where some was seen"} (${rotSource})`;
  return { fromH: Math.min(...hours), toH: Math.max(...hours), spells, remark: `sources differ: ${about}` };
}

/**
 * Where a spell without air lies in a band. `within` says that some sources expect harm and others do not.
 *
 * @example airDamageOf(30, airDamageBand({ rootRot: "absent", temperatureC: 20 })) // "below"
 */
export const airDamageOf = (spellH: number, band: AirDamageBand): "below" | "within" | "beyond" =>
  spellH < band.fromH ? "below" : spellH <= band.toH ? "within" : "beyond";
