import { type FaoSoil, faoSoilRanges } from "../ground/fao-soil-ranges.js";
import type { TextureClass } from "../ground/texture.js";
import type { Default } from "./defaults.js";
import type { Surface } from "./scenario.js";

const ownChoice = "our choice; no published value";

/** What `block.surface` may leave out. Everything that holds rain or shades the soil is off unless the file asks for it. */
export const surfaceDefaults: {
  readonly evaporation: Default<Surface["evaporation"]>;
  readonly evaporableDepthCm: Default<number>;
  readonly canopyStorageMm: Default<number>;
  readonly antecedent: Default<"usual">;
  readonly litterfallKgPerM2Year: Default<number>;
  readonly decayPerYear: Default<number>;
  readonly litterWhere: Default<"under-canopy">;
  readonly mulchWhere: Default<"all-ground">;
  readonly mulchCoverFraction: Default<number>;
} = {
  evaporation: {
    value: "soil-limited",
    source: `${ownChoice}: full to 33 kPa, falling to nothing at half the wilting point`,
    published: "two-stage: Allen et al. (1998), FAO-56 eqs 71-74",
  },
  evaporableDepthCm: {
    value: 10,
    source: "Allen et al. (1998), FAO-56 ch. 7: 0.10 to 0.15 m of soil dry by evaporation",
    published: "10-15 cm",
  },
  canopyStorageMm: {
    value: 0,
    source: "no rain is held by leaves unless the file says so",
    published: "0.8 mm (cashew, Kottamparamba); none for avocado",
  },
  antecedent: { value: "usual", source: "USDA-NRCS, NEH 630 ch. 10: condition II", published: "dry, usual, wet" },
  litterfallKgPerM2Year: {
    value: 0.56,
    source: "Murovhi et al. (2012), Agroforestry Systems 86:61: 5.6 t/ha and year under avocado",
    published: "0.28-0.76 (Bernal-Estrada et al. 2020)",
  },
  decayPerYear: { value: 0.7, source: `${ownChoice}: half of it rots in a year`, published: "none" },
  litterWhere: { value: "under-canopy", source: "leaves fall under the tree", published: "none" },
  mulchWhere: { value: "all-ground", source: "spread by hand or machine", published: "none" },
  mulchCoverFraction: { value: 1, source: "no gaps unless the file says so", published: "none" },
};

/** Rows that stand in for the textures that table 19 lacks. Our choice. */
const standIns: Readonly<Record<Exclude<TextureClass, FaoSoil>, FaoSoil>> = {
  "sandy clay loam": "sandy loam",
  "clay loam": "silty clay loam",
  "sandy clay": "silty clay",
};

/** Readily evaporable water of a texture, mm: the middle of its range. @example rewDefault("loam").value // 9 */
export function rewDefault(texture: TextureClass): Default<number> {
  const row = texture in standIns ? standIns[texture as keyof typeof standIns] : (texture as FaoSoil);
  const { low, high } = faoSoilRanges[row].readilyEvaporableMm;
  return {
    value: (low + high) / 2,
    source: `Allen et al. (1998), FAO-56 table 19, middle of the range of ${row}`,
    published: `${low}-${high} mm`,
  };
}
