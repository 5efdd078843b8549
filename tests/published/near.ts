import { expect } from "vitest";

/** Fails unless ours is within an absolute distance of theirs. */
export function expectWithin(ours: number, theirs: number, absolute: number, what: string): void {
  expect(Number.isFinite(ours), `${what} is finite`).toBe(true);
  expect(Math.abs(ours - theirs), `${what}: ours ${ours}, theirs ${theirs}`).toBeLessThanOrEqual(absolute);
}

/** Fails unless ours is within a share of theirs. */
export const expectRelative = (ours: number, theirs: number, share: number, what: string): void =>
  expectWithin(ours, theirs, share * Math.abs(theirs), what);
