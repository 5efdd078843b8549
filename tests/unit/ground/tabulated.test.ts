import { defaultSoilCurve, type SoilCurve, tabulateSoil, withTrappedAir } from "rootledger/ground";
import { describe, expect, test } from "vitest";

/**
 * A soil whose saturation and conductivity are both exp(a h) (Gardner 1958, Soil Sci. 85:228-232, from memory): at saturation S its head is
 * ln(S) / a, its conductivity kSat S and its matric flux potential kSat S / a, all exact.
 */
const a = 0.02;
const exponential = (change: Partial<SoilCurve> = {}): SoilCurve => {
  const own = { name: "exponential", source: "Gardner 1958", thetaResidual: 0.05, thetaSaturated: 0.45, kSatCmPerH: 3 };
  return {
    ...own,
    thetaAt: (headCm) => (headCm >= 0 ? 0.45 : 0.05 + 0.4 * Math.exp(a * headCm)),
    capacityAt: (headCm) => (headCm >= 0 ? 0 : 0.4 * a * Math.exp(a * headCm)),
    conductivityAt: (headCm) => (headCm >= 0 ? 3 : 3 * Math.exp(a * headCm)),
    ...change,
  };
};

describe("a tabulated soil", () => {
  test("has the head, conductivity and flux potential that Gardner's soil has at each saturation", () => {
    const table = tabulateSoil(exponential(), 64);
    expect([table.intervals, table.headCm.length, table.conductivityCmPerH.length]).toEqual([64, 65, 65]);
    expect([table.thetaResidual, table.thetaSaturated, table.kSatCmPerH]).toEqual([0.05, 0.45, 3]);
    for (let k = 1; k < 64; k++) {
      const saturation = k / 64;
      expect(table.headCm[k]! / (Math.log(saturation) / a)).toBeCloseTo(1, 4);
      expect(table.conductivityCmPerH[k]! / (3 * saturation)).toBeCloseTo(1, 4);
      expect(table.matricFluxCm2PerH[k]! / ((3 * saturation) / a)).toBeCloseTo(1, 4);
    }
  });

  test("ends at rest in dry soil and at kSat in full soil, its potential rising to the end", () => {
    const { headCm, conductivityCmPerH, matricFluxCm2PerH } = tabulateSoil(exponential(), 64);
    expect([headCm[0], conductivityCmPerH[0], matricFluxCm2PerH[0]]).toEqual([-2e5, 0, 0]);
    expect([headCm[64], conductivityCmPerH[64]]).toEqual([0, 3]);
    expect(matricFluxCm2PerH[64]! / (3 / a)).toBeCloseTo(1, 4);
    for (let k = 1; k <= 64; k++) {
      expect(headCm[k]!).toBeGreaterThan(headCm[k - 1]!);
      expect(matricFluxCm2PerH[k]!).toBeGreaterThan(matricFluxCm2PerH[k - 1]!);
    }
    expect(tabulateSoil(exponential()).intervals).toBe(2048);
  });

  test("bears a curve that is full above an air entry: beyond it the last stretch leads to full", () => {
    const flat = exponential({
      thetaAt: (headCm) => (headCm >= -10 ? 0.45 : 0.05 + 0.4 * Math.exp(a * (headCm + 10))),
      conductivityAt: (headCm) => (headCm >= -10 ? 3 : 3 * Math.exp(a * (headCm + 10))),
    });
    const table = tabulateSoil(flat, 64);
    for (let k = 1; k < 64; k++) expect(table.headCm[k]).toBeCloseTo(Math.log(k / 64) / a - 10, 1);
    // 10 cm at kSat and the integral below.
    expect(table.matricFluxCm2PerH[64]).toBeCloseTo(3 * 10 + 3 / a, 1);
  });

  test("refuses a curve that falls as it gets wetter, or is no number", () => {
    for (const change of [
      { thetaAt: (headCm: number) => 0.4 + 1e-4 * Math.min(0, -headCm - 500) },
      { conductivityAt: (headCm: number) => (headCm > -50 ? 0.1 : 1) },
    ]) {
      expect(() => tabulateSoil(exponential(change))).toThrow('a rising curve: "exponential" falls near head -');
    }
    for (const change of [{ thetaAt: () => Number.NaN }, { conductivityAt: () => Number.POSITIVE_INFINITY }]) {
      expect(() => tabulateSoil(exponential(change))).toThrow('a finite curve: "exponential" is not finite at head -');
    }
  });
});

describe("trapped air", () => {
  const loam = defaultSoilCurve("loam");
  const pores = loam.thetaSaturated - loam.thetaResidual;

  test("keeps its share of the pores from filling, and leaves drier soil as it was", () => {
    const trapped = withTrappedAir(loam, 0.1);
    const most = loam.thetaSaturated - 0.1 * pores;
    expect(trapped.thetaSaturated).toBeCloseTo(most, 12);
    expect([trapped.thetaAt(0), trapped.thetaAt(-1)]).toEqual([expect.closeTo(most, 12), expect.closeTo(most, 12)]);
    expect([trapped.capacityAt(0), trapped.capacityAt(-1)]).toEqual([0, 0]);
    for (const headCm of [-300, -1000, -15000]) {
      expect(trapped.thetaAt(headCm)).toBe(loam.thetaAt(headCm));
      expect(trapped.capacityAt(headCm)).toBe(loam.capacityAt(headCm));
    }
    for (const headCm of [0, -1, -300]) expect(trapped.conductivityAt(headCm)).toBe(loam.conductivityAt(headCm));
    expect(trapped.name).toBe(`${loam.name}, 10 % of pores trapped`);
    expect(trapped.thetaResidual).toBe(loam.thetaResidual);
  });

  test("may be none, and never half", () => {
    expect(withTrappedAir(loam, 0).thetaAt(0)).toBeCloseTo(loam.thetaSaturated, 12);
    for (const share of [-0.01, 0.5, Number.NaN]) {
      expect(() => withTrappedAir(loam, share)).toThrow(`withTrappedAir requires share in [0, 0.5): got ${share}`);
    }
  });
});
