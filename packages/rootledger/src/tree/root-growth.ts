/**
 * Depth of the roots of an annual crop, growing with Kcb: Zr min + (Zr max - Zr min) (Kcb - Kcb ini)/(Kcb mid - Kcb ini).
 * Source: FAO-56 (Allen et al. 1998) Annex 8, eq. 8-1. Valid from the initial to the middle stage.
 *
 * @throws RangeError if Kcb is outside its initial and middle values.
 * @example rootDepthWithKcbM({ zrMinM: 0.2, zrMaxM: 0.8, kcbInitial: 0.15, kcbMiddle: 1.14 }, 0.63) // 0.491
 */
export function rootDepthWithKcbM(
  crop: { readonly zrMinM: number; readonly zrMaxM: number; readonly kcbInitial: number; readonly kcbMiddle: number },
  kcb: number,
): number {
  if (!(kcb >= crop.kcbInitial && kcb <= crop.kcbMiddle)) {
    throw new RangeError(`rootDepthWithKcbM requires Kcb ${crop.kcbInitial} to ${crop.kcbMiddle}: got ${kcb}`);
  }
  return crop.zrMinM + ((crop.zrMaxM - crop.zrMinM) * (kcb - crop.kcbInitial)) / (crop.kcbMiddle - crop.kcbInitial);
}
