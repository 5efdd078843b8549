import { type SoilCurve, sorptivityCmPerSqrtH, vanGenuchtenCurve } from "rootledger/ground";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";
import { column } from "./richards-column.js";
import { exponentialSoil, haverkampSand, powerSoil, yoloLightClay } from "./richards-soils.js";

const newMexico = vanGenuchtenCurve(
  "New Mexico soil",
  { thetaResidual: 0.102, thetaSaturated: 0.368, alphaPerCm: 0.0335, n: 2, kSatCmPerH: 0.00922 * 3600 },
  "Celia et al. (1990), from memory",
  "raw",
);

function soilOf(given: Given): SoilCurve {
  const name = given.text("soil");
  if (name === "haverkamp-sand") return haverkampSand;
  if (name === "yolo-light-clay") return yoloLightClay;
  if (name === "new-mexico") return newMexico;
  throw new Error(`no soil ${name}`);
}

const hours = (seconds: number): number => seconds / 3600;

/** Surface flux is the mean over this time before the end. */
const fluxSeconds = 36;

const shapeOf = (given: Given) => ({
  curve: soilOf(given),
  depthCm: given.number("depth_cm"),
  cells: given.number("cells"),
  startHeadCm: () => given.number("start_head_cm"),
  options: { thetaErrorPerStep: given.number("theta_error") },
});

/** Richards' equation against cases of the literature. */
export const richards: Evaluators = {
  "richards-held-heads": (given) => {
    const run = column({
      ...shapeOf(given),
      top: { headCm: given.number("top_head_cm") },
      bottom: { kind: "head", headCm: given.number("start_head_cm") },
    });
    run.runTo(hours(given.number("seconds") - fluxSeconds));
    const before = run.infiltratedCm();
    run.runTo(hours(given.number("seconds")));
    return {
      infiltrated_cm: run.infiltratedCm(),
      front_cm: given.numbers("front_head_cm").map(run.depthOfHead),
      head_10_cm: run.headAt(10),
      head_15_cm: run.headAt(15),
      flux_top_cm_s: (run.infiltratedCm() - before) / fluxSeconds,
    };
  },
  "richards-flux": (given) => {
    const shape = shapeOf(given);
    const run = column({ ...shape, top: { fluxCmPerH: given.number("flux_cm_h") }, bottom: { kind: "free-drainage" } });
    const rows = given.numbers("seconds").map((seconds) => {
      run.runTo(hours(seconds));
      const head = run.headAt(0);
      return { head, theta: shape.curve.thetaAt(head), front: run.depthOfTheta(given.number("front_theta")) };
    });
    return {
      theta_surface: rows.map(({ theta }) => theta),
      front_cm: rows.map(({ front }) => front),
      head_surface_cm: rows.map(({ head }) => head),
    };
  },
  "richards-wet-surface": (given) => {
    const top = { headCm: given.number("top_head_cm") };
    const run = column({ ...shapeOf(given), top, bottom: { kind: "free-drainage" } });
    const rows = given.numbers("seconds").map((seconds) => {
      run.runTo(hours(seconds));
      const infiltrated = run.infiltratedCm();
      return { infiltrated, front: run.depthOfTheta(given.number("front_theta")), s: infiltrated / Math.sqrt(seconds) };
    });
    return {
      infiltrated_cm: rows.map(({ infiltrated }) => infiltrated),
      front_cm: rows.map(({ front }) => front),
      sorptivity_cm_s05: rows.map(({ s }) => s),
    };
  },
  "richards-linear": (given) => {
    const [alphaPerCm, lengthCm] = [given.number("alpha_per_cm"), given.number("length_cm")];
    const kSatCmPerH = given.number("ks_cm_h");
    const limits = { thetaResidual: given.number("theta_r"), thetaSaturated: given.number("theta_s") };
    const before = given.number("flux_before_cm_h") / kSatCmPerH;
    const run = column({
      curve: exponentialSoil({ alphaPerCm, kSatCmPerH, ...limits }),
      depthCm: lengthCm,
      cells: 400,
      startHeadCm: (depthCm) =>
        Math.log(before + (1 - before) * Math.exp(-alphaPerCm * (lengthCm - depthCm))) / alphaPerCm,
      top: { fluxCmPerH: given.number("flux_cm_h") },
      bottom: { kind: "head", headCm: 0 },
      options: { thetaErrorPerStep: 1e-6, longestStepH: 0.01 },
    });
    const psi = given.numbers("hours").map((until) => {
      run.runTo(until);
      return given.numbers("height_cm").map((height) => run.headAt(lengthCm - height));
    });
    return { psi_cm: psi };
  },
  "richards-unit-gradient": (given) => {
    const parameters = {
      thetaResidual: given.number("theta_r"),
      thetaSaturated: given.number("theta_s"),
      alphaPerCm: given.number("alpha_per_cm"),
      n: given.number("n"),
      kSatCmPerH: given.number("ks_cm_d") / 24,
    };
    const run = column({
      curve: vanGenuchtenCurve("loam", parameters, "Carsel & Parrish (1988)", "raw"),
      depthCm: 50,
      cells: 50,
      startHeadCm: () => -100,
      top: { fluxCmPerH: given.number("flux_cm_d") / 24 },
      bottom: { kind: "free-drainage" },
      options: { longestStepH: 1000 },
    });
    run.runTo(24 * 3650);
    return { head_cm: run.headAt(25), theta: run.theta[25] };
  },
  "richards-rising": (given) => ({
    constant: given.numbers("n").map((n) => risingConstant(n, given.number("depth_cm"))),
  }),
  sorptivity: (given) => ({
    sorptivityCmPerSqrtS: sorptivityCmPerSqrtH(yoloLightClay, given.number("initialHeadCm")) / 60,
  }),
};

/** Steady evaporation from a water table under a very dry surface, as a share of a / L^n. */
function risingConstant(n: number, depthCm: number): number {
  const a = 1e-3 * depthCm ** n;
  const run = column({
    curve: powerSoil({ a, b: 0.002 * 10 ** n, n }),
    depthCm,
    cells: 400,
    startHeadCm: (z) => -(depthCm - z),
    top: { headCm: -9e6 },
    bottom: { kind: "head", headCm: 0 },
    options: { longestStepH: 1e4 },
  });
  run.runTo(1e5);
  const before = run.drainedCm();
  run.runTo(1.1e5);
  return (-(run.drainedCm() - before) * depthCm ** n) / (1e4 * a);
}
