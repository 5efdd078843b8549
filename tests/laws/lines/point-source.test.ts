import fc from "fast-check";
import {
  buriedFront,
  type PointSource,
  scaledReachDown,
  scaledReachSideways,
  scaledTimeDown,
  scaledTimeSideways,
  steadyMatricFluxCm2PerH,
  steadyPointSource,
  surfaceFront,
  transientMatricFluxCm2PerH,
  transientPointSource,
} from "rootledger/lines";
import { describe, expect, test } from "vitest";
import { integrate } from "../../../packages/rootledger/src/numeric/integrate.js";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const near = (ours: number, theirs: number, relative: number): void =>
  expect(Math.abs(ours - theirs), `ours ${ours}, theirs ${theirs}`).toBeLessThanOrEqual(relative * Math.abs(theirs));

/** Over a plane: in polar rings, to where the steady potential has fallen by exp(-40). */
const overPlane = (potential: (radius: number) => number, depth: number, relative: number): number => {
  const far = Math.sqrt((Math.abs(depth) + 40) ** 2 - depth * depth);
  const ring = (radius: number): number => radius * potential(radius);
  return integrate(ring, 0, 1, relative) + integrate(ring, 1, 8, relative) + integrate(ring, 8, far, relative);
};

describe("water balance", () => {
  // alpha M - dM/dz = q with M the potential summed over a plane: M stays at q/alpha, which is 1 in scaled terms.
  test.each([0.01, 0.1, 0.5, 1, 3])("steady: every plane below the source passes the flow (depth %f)", (depth) => {
    for (const placement of ["surface", "buried"] as const) {
      near(
        overPlane((radius) => steadyPointSource(placement, radius, depth), depth, 1e-10),
        1,
        1e-8,
      );
    }
  });
  test.each([0.1, 1, 2])("steady: above a buried source what rises comes back (height %f)", (height) => {
    const ours = overPlane((radius) => steadyPointSource("buried", radius, -height), height, 1e-10);
    near(ours, Math.exp(-2 * height), 1e-8);
  });
  // alpha phi / k is the rise of theta: summed over the ground it is q t, in scaled terms 2 T.
  test.each([0.1, 1])("transient: the ground has gained what the source gave (time %f)", (time) => {
    const reach = 10 * Math.sqrt(time) + 2 * time;
    const gained = (placement: "surface" | "buried", from: number): number => {
      const plane = (depth: number): number =>
        integrate((radius) => radius * transientPointSource(placement, radius, depth, time), 0, reach, 1e-5);
      return integrate(plane, from, reach, 1e-5);
    };
    near(gained("surface", 0), 2 * time, 1e-4);
    near(gained("buried", -reach), 2 * time, 1e-4);
  });
});

describe("limits", () => {
  const place = fc.record({ radius: number(0.01, 5), depth: number(0, 5) });
  test("long time: steady", () => {
    fc.assert(
      fc.property(place, fc.constantFrom("surface" as const, "buried" as const), ({ radius, depth }, placement) => {
        const steady = steadyPointSource(placement, radius, depth);
        near(transientPointSource(placement, radius, depth, 400), steady, 1e-7);
      }),
      { numRuns: 50 },
    );
  });
  test("never above steady, never below 0, rising with time", () => {
    fc.assert(
      fc.property(place, number(0.01, 5), number(1.01, 3), ({ radius, depth }, time, factor) => {
        const early = transientPointSource("surface", radius, depth, time);
        const late = transientPointSource("surface", radius, depth, time * factor);
        expect(early).toBeGreaterThan(-1e-12);
        expect(late).toBeGreaterThanOrEqual(early - 1e-12);
        expect(late).toBeLessThanOrEqual(steadyPointSource("surface", radius, depth) * (1 + 1e-9) + 1e-12);
      }),
      { numRuns: 100 },
    );
  });
  test("close to the source gravity does not matter: 1/rho inside the ground, 2/rho at its surface", () => {
    near(steadyPointSource("buried", 1e-6, 1e-6), 1 / Math.hypot(1e-6, 1e-6), 1e-5);
    near(steadyPointSource("surface", 1e-6, 1e-6), 2 / Math.hypot(1e-6, 1e-6), 1e-4);
  });
  test("falls outward and downward", () => {
    fc.assert(
      fc.property(number(0.01, 5), number(0, 5), number(0.01, 1), (radius, depth, more) => {
        const here = steadyPointSource("surface", radius, depth);
        expect(steadyPointSource("surface", radius + more, depth)).toBeLessThan(here);
        expect(steadyPointSource("surface", 0, depth + 0.01 + more)).toBeLessThan(
          steadyPointSource("surface", 0, depth + 0.01),
        );
      }),
    );
  });
});

describe("travel times come from the steady flux", () => {
  const slope = (f: (x: number) => number, x: number): number => (f(x * (1 + 1e-5)) - f(x * (1 - 1e-5))) / (2e-5 * x);
  test("along the surface dT/dR = R^2 exp(R) = 2 / (-dPhi/dR)", () => {
    for (const radius of [0.1, 0.5, 1, 2, 4]) {
      const flux = -slope((r) => steadyPointSource("surface", r, 0), radius);
      near(2 / flux, radius * radius * Math.exp(radius), 1e-6);
      near(slope(scaledTimeSideways, radius), 2 / flux, 1e-6);
    }
  });
  test("straight down dT/dZ = Z^2/(1 + Z) = 2 / (2 Phi - dPhi/dZ)", () => {
    for (const depth of [0.1, 0.5, 1, 2, 4]) {
      const phi = (z: number): number => steadyPointSource("surface", 0, z);
      near(slope(scaledTimeDown, depth), 2 / (2 * phi(depth) - slope(phi, depth)), 1e-6);
    }
  });
  test("there and back, over twelve decades of time", () => {
    fc.assert(
      fc.property(number(-9, 4), (decade) => {
        const time = 10 ** decade;
        near(scaledTimeSideways(scaledReachSideways(time)), time, 1e-11);
        near(scaledTimeDown(scaledReachDown(time)), time, 1e-11);
      }),
    );
  });
  test("the series and the closed form meet", () => {
    near(scaledTimeSideways(1 - 1e-12), scaledTimeSideways(1), 1e-10);
    near(scaledTimeDown(0.25 - 1e-12), scaledTimeDown(0.25), 1e-10);
  });
});

const soil = fc.record({ volumeCm3: number(10, 1e5), thetaRise: number(0.02, 0.5), alphaPerCm: number(0.005, 0.5) });

describe("fronts", () => {
  test("more water wets farther; a wider rise less far", () => {
    fc.assert(
      fc.property(soil, number(1.01, 5), (source, factor) => {
        const less = surfaceFront(source);
        const more = surfaceFront({ ...source, volumeCm3: factor * source.volumeCm3 });
        expect(more.radiusCm).toBeGreaterThan(less.radiusCm);
        expect(more.depthCm).toBeGreaterThan(less.depthCm);
        const fuller = surfaceFront({ ...source, thetaRise: factor * source.thetaRise });
        expect(fuller.depthCm).toBeLessThan(less.depthCm);
      }),
    );
  });
  test("without gravity half a ball and a ball, and gravity always stretches it downward", () => {
    const small = { volumeCm3: 1000, thetaRise: 0.2, alphaPerCm: 1e-6 };
    const half = Math.cbrt((3 * 1000) / (2 * Math.PI * 0.2));
    near(surfaceFront(small).radiusCm, half, 1e-4);
    near(surfaceFront(small).depthCm, half, 1e-4);
    const whole = Math.cbrt((3 * 1000) / (4 * Math.PI * 0.2));
    near(buriedFront(small).upCm, whole, 1e-4);
    near(buriedFront(small).downCm, whole, 1e-4);
    fc.assert(
      fc.property(soil, (source) => {
        const ball = Math.cbrt((3 * source.volumeCm3) / (2 * Math.PI * source.thetaRise));
        const surface = surfaceFront(source);
        expect(surface.radiusCm).toBeLessThan(ball);
        expect(surface.depthCm).toBeGreaterThan(ball);
        const buried = buriedFront(source);
        expect(buried.upCm).toBeLessThan(buried.downCm);
      }),
    );
  });
});

describe("dimensions", () => {
  const source: PointSource = { placement: "surface", flowCm3PerH: 4000, alphaPerCm: 0.05 };
  test("no gravity in sight: phi = q / (2 pi r) at a surface source", () => {
    near(
      steadyMatricFluxCm2PerH({ ...source, alphaPerCm: 1e-7 }, { radiusCm: 10, depthCm: 0 }),
      4000 / 20 / Math.PI,
      1e-4,
    );
  });
  test("flow scales, time ends at steady", () => {
    const place = { radiusCm: 20, depthCm: 10 };
    const steady = steadyMatricFluxCm2PerH(source, place);
    near(steadyMatricFluxCm2PerH({ ...source, flowCm3PerH: 8000 }, place), 2 * steady, 1e-12);
    const late = transientMatricFluxCm2PerH(source, place, { hours: 5000, conductivityPerThetaCmPerH: 10 });
    near(late, steady, 1e-7);
  });
});

test("refused: the source itself, above the ground, no time", () => {
  expect(() => steadyPointSource("surface", 0, 0)).toThrow(/away from the source: got radius 0, depth 0/);
  expect(() => steadyPointSource("surface", 1, -1)).toThrow(/depth of at least 0 under a surface source: got -1/);
  expect(() => transientPointSource("buried", 1, 1, 0)).toThrow(/time above 0: got 0/);
  expect(() => transientPointSource("surface", 1, Number.NaN, 1)).toThrow(RangeError);
  expect(() => scaledTimeDown(-1)).toThrow(RangeError);
  expect(() => surfaceFront({ volumeCm3: -1, thetaRise: 0.2, alphaPerCm: 0.05 })).toThrow(
    "surfaceFront requires volumeCm3 above 0: got -1",
  );
});
