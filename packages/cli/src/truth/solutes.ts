import { elementPerOxide, fertigationMgPerL } from "rootledger/lines";
import { burnsFraction, cellwiseFraction, scotterFraction } from "rootledger/water";
import type { Evaluators } from "./evaluators.js";
import type { Given } from "./given.js";

const leachingOf = (given: Given) => ({
  drainageCm: given.number("drainageCm"),
  thetaFieldCapacity: given.number("fieldCapacityPercent") / 100,
  depthCm: given.number("depthCm"),
});

/** Leaching of nitrate and the arithmetic of fertigation. */
export const solutes: Evaluators = {
  burns: (given) => ({ burns: burnsFraction(leachingOf(given)), scotter: scotterFraction(leachingOf(given)) }),
  "burns-cells": (given) => ({
    fraction: cellwiseFraction({ ...leachingOf(given), cellCm: given.number("cellCm") }),
  }),
  oxides: () => elementPerOxide,
  fertigation: (given) => {
    const water = { productKg: given.number("productKg"), waterM3: given.number("waterM3") };
    const potassium = (given.number("potashPercent") / 100) * elementPerOxide.potassium;
    return {
      nitrogenMgPerL: fertigationMgPerL({ ...water, nutrientFraction: given.number("nitrogenPercent") / 100 }),
      potassiumMgPerL: fertigationMgPerL({ ...water, nutrientFraction: potassium }),
    };
  },
};
