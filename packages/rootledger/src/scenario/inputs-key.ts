import { contentKey } from "../numeric/content-key.js";
import { version } from "../version.js";
import type { Comparison, Scenario } from "./scenario.js";

/**
 * A key of everything that decides a result: the parsed scenario or comparison, defaults and weather included, and the library's version.
 * Equal keys, equal options: equal results on one JavaScript engine. Names and remarks count too. 16 hexadecimal digits; tells changes
 * apart, not forgeries.
 *
 * @example inputsKey(scenario).length // 16
 */
export const inputsKey = (inputs: Scenario | Comparison): string => contentKey({ version, inputs });
