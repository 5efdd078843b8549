import type { FloorBasis, Question } from "rootledger/compare";

export const questions: Readonly<Record<Question, string>> = {
  interval: "el intervalo",
  pulses: "los pulsos",
  gap: "la pausa entre pulsos",
  "emitter-flow": "el caudal del emisor",
  lines: "las líneas",
  amount: "la cantidad de agua",
  "start-time": "la hora de inicio",
  nitrogen: "el nitrógeno",
  rule: "la regla que decide",
  limits: "los límites de la bomba",
};

export const measures: Readonly<Record<string, string>> = {
  thirsty: "Horas de raíz con sed",
  airless: "Horas de raíz sin aire",
  "below-roots": "Agua perdida bajo las raíces",
  transpiration: "Agua que bebió el árbol",
  evaporation: "Agua evaporada",
  runoff: "Agua escurrida",
  "longest-thirsty": "Racha más larga con sed",
  "longest-airless": "Racha más larga sin aire",
};

/** Measures whose name is a plural. */
export const plural: ReadonlySet<string> = new Set(["thirsty", "airless"]);

export const shortMeasures: Readonly<Record<string, string>> = {
  thirsty: "con sed",
  airless: "sin aire",
  transpiration: "bebido",
  "below-roots": "perdido abajo",
  evaporation: "evaporado",
};

export const units: Readonly<Record<string, string>> = { "root-h": "h", L: "L", h: "h", mm: "mm" };

/** USDA texture classes. */
export const textures: Readonly<Record<string, string>> = {
  sand: "arena",
  "loamy sand": "arena franca",
  "sandy loam": "franco arenoso",
  loam: "franco",
  "silt loam": "franco limoso",
  silt: "limo",
  "sandy clay loam": "franco arcilloso arenoso",
  "clay loam": "franco arcilloso",
  "silty clay loam": "franco arcilloso limoso",
  "sandy clay": "arcilla arenosa",
  "silty clay": "arcilla limosa",
  clay: "arcilla",
};

const ofEngine = (soils: string): string => `distancia del motor rápido al lento, ${soils}`;

/** What a floor rests on. */
export const floorBases: Readonly<Record<FloorBasis, string>> = {
  "engine-coarse": ofEngine("suelos gruesos"),
  "engine-medium": ofEngine("suelos medios"),
  "engine-fine": ofEngine("suelos finos"),
  "engine-tight": ofEngine("suelos apretados"),
  "engine-layered": ofEngine("suelos en capas"),
  "engine-any": ofEngine("cualquier suelo"),
  "one-percent": "lo menor que importa: 1 %",
  "half-day": "lo menor que importa: medio día",
  "not-simulated": "contado, no simulado",
};
