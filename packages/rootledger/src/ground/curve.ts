/**
 * The hydraulic behaviour of one soil material. Head in cm (negative when unsaturated), theta in m3/m3,
 * conductivity in cm/h. `thetaAt` rises and `conductivityAt` never falls with rising head; at head >= 0 they are
 * `thetaSaturated` and `kSatCmPerH`.
 */
export interface SoilCurve {
  /** What the reader calls this soil, for instance "clay loam". */
  readonly name: string;
  /** Publication, table and row the numbers come from. */
  readonly source: string;
  readonly thetaSaturated: number;
  /** Limit of theta as the soil dries without end. */
  readonly thetaResidual: number;
  readonly kSatCmPerH: number;
  /** Water content at a head, m3/m3. */
  thetaAt(headCm: number): number;
  /** Conductivity at a head, cm/h. */
  conductivityAt(headCm: number): number;
  /** Slope d(theta)/d(head), 1/cm. */
  capacityAt(headCm: number): number;
}
