import { cropCurves } from "./crop-curves.js";
import { cropTables } from "./crop-tables.js";
import { dualKc } from "./dual-kc.js";
import type { Values } from "./figures.js";
import { generator } from "./generator.js";
import type { Given } from "./given.js";
import { groundCover } from "./ground-cover.js";
import { oxygen } from "./oxygen.js";
import { referenceEt } from "./reference-et.js";
import { richards } from "./richards.js";
import { roots } from "./roots.js";
import { salinity } from "./salinity.js";
import { soil } from "./soil.js";
import { solutes } from "./solutes.js";
import { spillingCell } from "./spilling-cell.js";
import { surface } from "./surface.js";
import { uniformity } from "./uniformity.js";
import { waterNeeds } from "./water-need.js";
import { weather } from "./weather.js";
import { wetting } from "./wetting.js";

/** What the library gives for a check, by the names of its printed figures. */
export type Evaluator = (given: Given, names: readonly string[]) => Values;

export type Evaluators = Readonly<Record<string, Evaluator>>;

/** By id of a check, or by topic for all checks of one kind. */
export const evaluators: Evaluators = {
  ...cropTables,
  ...cropCurves,
  ...dualKc,
  ...groundCover,
  ...spillingCell,
  ...surface,
  ...waterNeeds,
  ...weather,
  ...generator,
  ...referenceEt,
  ...soil,
  ...roots,
  ...richards,
  ...wetting,
  ...uniformity,
  ...salinity,
  ...oxygen,
  ...solutes,
};
