import type { Role } from "./header-role.js";
import type { ColumnReport } from "./station-report.js";
import type { Unit } from "./unit.js";

/** What is planned for one column of the file before its values are read. */
export interface ColumnPlan {
  readonly index: number;
  /** The name in the file; columns of one name are told apart as "30cm(1)" and "30cm(2)". */
  readonly header: string;
  readonly role: Role;
  readonly unit: Unit | undefined;
  readonly unitFrom: ColumnReport["unitFrom"];
  readonly depthCm: number | undefined;
  /** Minutes ahead of UTC said in the header; NaN where none. */
  readonly zoneMinutes: number;
}
