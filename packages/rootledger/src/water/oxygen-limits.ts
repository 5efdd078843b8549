/** A published limit of oxygen or of flooding, with what was seen beyond it. They disagree; none is a law. */
export interface AirLimit {
  readonly crop: string;
  readonly what: string;
  /** One figure, or the ends of a range. */
  readonly figures: readonly number[];
  readonly unit: string;
  readonly source: string;
  readonly verified: "seen" | "memory";
}

/** Limits that measurements of oxygen or of flooding have given. Root rot and temperature shift all of them. */
export const airLimits: Readonly<Record<string, AirLimit>> = {
  "avocado-odr-growth": {
    crop: "avocado",
    what: "oxygen diffusion rate below which roots stop growing",
    figures: [0.2],
    unit: "ug O2 cm-2 min-1",
    source: "Valoras, Letey, Stolzy & Frolich (1964), whose web copy prints 20 for 0.20",
    verified: "seen",
  },
  "avocado-odr-decay": {
    crop: "avocado",
    what: "oxygen diffusion rate at which 44-100 % of the roots decayed",
    figures: [0.17],
    unit: "ug O2 cm-2 min-1",
    source: "Stolzy, Zentmyer, Klotz & Labanauskas (1967)",
    verified: "seen",
  },
  "avocado-oxygen": {
    crop: "avocado",
    what: "oxygen in the soil air below which harm is expected",
    figures: [0.1],
    unit: "m3/m3 of the air",
    source: "soil-oxygen dynamics under avocado in clay, Israel, conference abstract",
    verified: "seen",
  },
  "citrus-flood": {
    crop: "citrus",
    what: "days of saturation that injure at 30-35 C",
    figures: [3, 4],
    unit: "d",
    source: "UF/IFAS extension, flooding of fruit crops",
    verified: "seen",
  },
  "blueberry-flood": {
    crop: "rabbiteye blueberry",
    what: "days of summer flooding after which a third of the plants died",
    figures: [5],
    unit: "d",
    source: "Crane & Davies (1988), J. American Society for Horticultural Science",
    verified: "seen",
  },
};
