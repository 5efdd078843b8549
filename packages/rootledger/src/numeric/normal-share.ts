import { bisect } from "./bisect.js";
import { erfc } from "./error-function.js";

/** Share of a normal distribution of mean 0 and variance 1 below z: erfc(-z / sqrt 2) / 2. @example normalShare(1.959964) // 0.975 */
export const normalShare = (z: number): number => erfc(-z / Math.SQRT2) / 2;

/** The z below which a share of the normal distribution lies, 0 < share < 1. @example normalQuantile(0.975) // 1.959964 */
export const normalQuantile = (share: number): number => bisect((z) => normalShare(z) - share, -9, 9);
