/** What the ground holds at one moment; the whole memory of the water engines. Theta in m3/m3 by cell. */
export interface WaterState {
  timeH: number;
  readonly theta: Float64Array;
  /** Matric head by cell, cm, above 0 under free water; kept by engines that solve for it, made from theta when absent. */
  headCm?: Float64Array;
  /** Time step such an engine would take next, h. */
  stepH?: number;
  /** State on the engine's own finer cells, when it keeps them; `theta` then holds their means. */
  fine?: WaterState;
}

/** What acts on the ground, constant from `state.timeH` to `untilH`. Rates in cm3/h per tree. */
export interface Forcing {
  /** Water leaving the tree's open emitters. */
  emitterCm3PerH: number;
  /** Rain that reaches the ground, by lane. */
  readonly rainCm3PerH: Float64Array;
  /** Most that the soil surface could evaporate, by lane. */
  readonly evaporationCm3PerH: Float64Array;
  /** Most that the tree would transpire. */
  transpirationCm3PerH: number;
}

/** Sums since they were last cleared: cm3 per tree, or hours. Engines only add to them. */
export interface WaterFluxes {
  emitterCm3: number;
  rainCm3: number;
  evaporationCm3: number;
  transpirationCm3: number;
  runoffCm3: number;
  bottomCm3: number;
  /** Net water that an own source brought or an own sink took; 0 unless `ownProcesses` is in use. */
  ownCm3: number;
  /** Net downward flow through the lower face of each layer; the last one is the bottom. */
  readonly downwardCm3: Float64Array;
  readonly uptakeCm3: Float64Array;
  /** Hours each cell was airless or thirsty, and those hours times what the local factor lacked of 1. */
  readonly airlessH: Float64Array;
  readonly thirstyH: Float64Array;
  readonly airlessSeverityH: Float64Array;
  readonly thirstySeverityH: Float64Array;
  /** Hours each lane could not take all the water offered to it. */
  readonly pondedH: Float64Array;
  subSteps: number;
  /** Kept only when a process asks for it; then every engine adds to it whatever moves water. */
  faces?: FaceSums;
}

/**
 * Water through every face, cm3 per tree, since last cleared. Theta changes by exactly these, uptake and evaporation: what
 * is dissolved in the water can be moved with it.
 */
export interface FaceSums {
  /** Through the lower face of each cell, downward; in the last layer through the bottom. */
  readonly downCm3: Float64Array;
  /** Through the outer face of each cell, outward. */
  readonly sideCm3: Float64Array;
  /** From the surface into each lane's top cell; below 0 where a full cell gave water back to the surface. */
  readonly intakeCm3: Float64Array;
  /** Evaporated from each lane's top cell. */
  readonly evaporationCm3: Float64Array;
  /** Of each lane's intake, what cracks took from the top cell straight to the layer `crackLayer`. */
  readonly crackCm3: Float64Array;
  crackLayer: number;
}

/** @example faceSums({ lanes: 8, cells: 64 }).downCm3.length // 64 */
export function faceSums(size: { lanes: number; cells: number }): FaceSums {
  return {
    downCm3: new Float64Array(size.cells),
    sideCm3: new Float64Array(size.cells),
    intakeCm3: new Float64Array(size.lanes),
    evaporationCm3: new Float64Array(size.lanes),
    crackCm3: new Float64Array(size.lanes),
    crackLayer: -1,
  };
}

/** Sets every sum back to zero. @example clearFaces(faces) */
export function clearFaces(faces: FaceSums): void {
  faces.downCm3.fill(0);
  faces.sideCm3.fill(0);
  faces.intakeCm3.fill(0);
  faces.evaporationCm3.fill(0);
  faces.crackCm3.fill(0);
}

/** One way of moving water through the cells. It changes `state` up to `untilH` and adds what moved to `fluxes`. */
export interface WaterEngine {
  readonly name: "bucket" | "richards" | "spill";
  /** Goes on to an hour under constant forcing. */
  advance(state: WaterState, forcing: Forcing, untilH: number, fluxes: WaterFluxes): void;
}

/** @example emptyFluxes({ layers: 8, lanes: 8, cells: 64 }).bottomCm3 // 0 */
export function emptyFluxes(size: { layers: number; lanes: number; cells: number }): WaterFluxes {
  return {
    emitterCm3: 0,
    rainCm3: 0,
    evaporationCm3: 0,
    transpirationCm3: 0,
    runoffCm3: 0,
    bottomCm3: 0,
    ownCm3: 0,
    downwardCm3: new Float64Array(size.layers),
    uptakeCm3: new Float64Array(size.cells),
    airlessH: new Float64Array(size.cells),
    thirstyH: new Float64Array(size.cells),
    airlessSeverityH: new Float64Array(size.cells),
    thirstySeverityH: new Float64Array(size.cells),
    pondedH: new Float64Array(size.lanes),
    subSteps: 0,
  };
}

/** Sets every sum back to zero. @example clearFluxes(fluxes) */
export function clearFluxes(fluxes: WaterFluxes): void {
  fluxes.emitterCm3 = 0;
  fluxes.rainCm3 = 0;
  fluxes.evaporationCm3 = 0;
  fluxes.transpirationCm3 = 0;
  fluxes.runoffCm3 = 0;
  fluxes.bottomCm3 = 0;
  fluxes.ownCm3 = 0;
  fluxes.downwardCm3.fill(0);
  fluxes.uptakeCm3.fill(0);
  fluxes.airlessH.fill(0);
  fluxes.thirstyH.fill(0);
  fluxes.airlessSeverityH.fill(0);
  fluxes.thirstySeverityH.fill(0);
  fluxes.pondedH.fill(0);
  fluxes.subSteps = 0;
}
