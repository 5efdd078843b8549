import { carselParrishCurve, defaultSoilCurve, type SoilCurve } from "rootledger/ground";
import { describe, expect, it } from "vitest";
import {
  type HeadCurves,
  headCurves,
  headOfTheta,
  thetaOfHead,
} from "../../packages/rootledger/src/water/richards-table.js";
import { headValues, lookUpByHead } from "../../packages/rootledger/src/water/richards-values.js";

const soils: readonly SoilCurve[] = [
  carselParrishCurve("sand"),
  carselParrishCurve("loam"),
  carselParrishCurve("clay"),
  defaultSoilCurve("sand", "ordinary"),
  defaultSoilCurve("clay loam", "ordinary"),
  defaultSoilCurve("clay", "crumbly"),
];

/** Heads that fall between the table's points, from almost full to far drier than any root. */
const heads = Array.from({ length: 400 }, (_, i) => -(10 ** (-3 + (9 * (i + 0.37)) / 400)));

function lookUp(curves: HeadCurves, at: readonly number[]) {
  const values = headValues(at.length);
  values.headCm.set(at);
  lookUpByHead(values, [curves], new Uint8Array(at.length));
  return values;
}

describe("curves by head", () => {
  for (const soil of soils) {
    const curves = headCurves(soil);

    it(`stay within 1e-6 of theta and 0.1 % of K: ${soil.name}`, () => {
      const values = lookUp(curves, heads);
      heads.forEach((head, i) => {
        expect(Math.abs(values.theta[i] - soil.thetaAt(head)), `theta at ${head}`).toBeLessThan(1e-6);
        const k = soil.conductivityAt(head);
        // Some curves turn a corner at -1 cm, which one piece of the table rounds off.
        const share = Math.abs(head + 1) < 0.02 ? 5e-3 : 1e-3;
        expect(Math.abs(values.conductivityCmPerH[i] - k), `K at ${head}`).toBeLessThan(share * k + 1e-18);
      });
    });

    it(`give derivatives that belong to their values: ${soil.name}`, () => {
      const step = 1e-6;
      const drier = lookUp(
        curves,
        heads.map((h) => h * (1 + step)),
      );
      const wetter = lookUp(
        curves,
        heads.map((h) => h * (1 - step)),
      );
      const values = lookUp(curves, heads);
      heads.forEach((head, i) => {
        const span = -2 * step * head;
        const near = (ours: number, difference: number, size: number): void => {
          expect(Math.abs(ours - difference / span), `at ${head}`).toBeLessThan(2e-3 * ours + (1e-9 * size) / span);
        };
        near(values.capacityPerCm[i], wetter.theta[i] - drier.theta[i], 1);
        near(
          values.conductivityByHeadPerH[i],
          wetter.conductivityCmPerH[i] - drier.conductivityCmPerH[i],
          values.conductivityCmPerH[i],
        );
        near(
          values.conductivityCmPerH[i],
          wetter.matricFluxCm2PerH[i] - drier.matricFluxCm2PerH[i],
          values.matricFluxCm2PerH[i],
        );
      });
    });

    it(`find the head of a theta again: ${soil.name}`, () => {
      for (const head of [-0.5, -5, -50, -500, -5000]) {
        const theta = thetaOfHead(curves, head);
        expect(Math.abs(thetaOfHead(curves, headOfTheta(curves, theta)) - theta)).toBeLessThan(1e-12);
      }
      expect(headOfTheta(curves, soil.thetaSaturated)).toBe(0);
    });
  }

  it("run straight from 0.001 cm of suction to full, at most 0.3 % off in K", () => {
    for (const soil of soils) {
      const wet = [-8e-4, -3e-4, -1e-5];
      const values = lookUp(headCurves(soil), wet);
      wet.forEach((head, i) => {
        const k = soil.conductivityAt(head);
        expect(Math.abs(values.conductivityCmPerH[i] / k - 1), `${soil.name} at ${head}`).toBeLessThan(3e-3);
        expect(Math.abs(values.theta[i] - soil.thetaAt(head))).toBeLessThan(1e-6);
      });
    }
  });

  it("refuse a curve that falls as it wets", () => {
    const falling: SoilCurve = {
      ...carselParrishCurve("loam"),
      name: "upside down",
      thetaAt: (head) => (head < -10 ? 0.4 : 0.1),
    };
    expect(() => headCurves(falling)).toThrow(/rising curve/);
  });
});
