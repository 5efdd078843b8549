import { type GridMatrix, multiplyInto } from "./grid-matrix.js";
import { factorInto, preconditionInto } from "./incomplete-lu.js";

/** Vectors the solver needs, all of the matrix's size. */
export interface SolverRoom {
  readonly inverseDiagonal: Float64Array;
  readonly residual: Float64Array;
  readonly shadow: Float64Array;
  readonly direction: Float64Array;
  readonly directionImage: Float64Array;
  readonly half: Float64Array;
  readonly halfImage: Float64Array;
  readonly smooth: Float64Array;
  readonly smoothHalf: Float64Array;
}

/** @example solverRoom(64).half.length // 64 */
export function solverRoom(points: number): SolverRoom {
  const room = (): Float64Array => new Float64Array(points);
  return {
    inverseDiagonal: room(),
    residual: room(),
    shadow: room(),
    direction: room(),
    directionImage: room(),
    half: room(),
    halfImage: room(),
    smooth: room(),
    smoothHalf: room(),
  };
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let p = 0; p < a.length; p++) sum += a[p] * b[p];
  return sum;
}

/**
 * Solves matrix x = right from x = 0 by BiCGStab with the incomplete factorisation as right preconditioner. Returns the
 * rounds it took, or -1 when the residual did not fall to `tolerance` times the right side within `most` rounds.
 * Source: van der Vorst (1992), SIAM J. Sci. Stat. Comput. 13:631-644.
 *
 * @example solveInto(x, matrix, right, room, { tolerance: 1e-6, most: 100 })
 */
export function solveInto(
  x: Float64Array,
  matrix: GridMatrix,
  right: Float64Array,
  room: SolverRoom,
  limits: { readonly tolerance: number; readonly most: number },
): number {
  const { inverseDiagonal, residual, shadow, direction, directionImage, half, halfImage, smooth, smoothHalf } = room;
  const points = right.length;
  factorInto(inverseDiagonal, matrix);
  x.fill(0);
  residual.set(right);
  shadow.set(right);
  direction.set(right);
  let rho = dot(right, right);
  const goal = limits.tolerance * limits.tolerance * rho;
  if (rho === 0) return 0;
  for (let round = 1; round <= limits.most; round++) {
    preconditionInto(smooth, matrix, inverseDiagonal, direction);
    multiplyInto(directionImage, matrix, smooth);
    const alpha = rho / dot(shadow, directionImage);
    let size = 0;
    for (let p = 0; p < points; p++) {
      const value = residual[p] - alpha * directionImage[p];
      half[p] = value;
      size += value * value;
    }
    if (size <= goal) {
      for (let p = 0; p < points; p++) x[p] += alpha * smooth[p];
      return round;
    }
    preconditionInto(smoothHalf, matrix, inverseDiagonal, half);
    multiplyInto(halfImage, matrix, smoothHalf);
    const omega = dot(halfImage, half) / dot(halfImage, halfImage);
    size = 0;
    for (let p = 0; p < points; p++) {
      x[p] += alpha * smooth[p] + omega * smoothHalf[p];
      const value = half[p] - omega * halfImage[p];
      residual[p] = value;
      size += value * value;
    }
    if (size <= goal) return round;
    const nextRho = dot(shadow, residual);
    const beta = (nextRho / rho) * (alpha / omega);
    if (!Number.isFinite(beta)) return -1;
    rho = nextRho;
    for (let p = 0; p < points; p++) {
      direction[p] = residual[p] + beta * (direction[p] - omega * directionImage[p]);
    }
  }
  return -1;
}
