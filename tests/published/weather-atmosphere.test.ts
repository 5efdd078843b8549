import {
  atmosphericPressureKPa,
  evaporationEquivalentMm,
  mJPerM2DayPerWattPerM2,
  mJPerM2PerCalPerCm2,
  psychrometricConstantKPaPerC,
  windAt2mMPerS,
  windFactor,
} from "rootledger/weather";
import { expect, test } from "vitest";
import { publishedTopics, testTopic } from "./weather-data.js";

testTopic("units", {
  "fao56-ex01-evap-units": (given) => ({
    evaporation_mm_day: evaporationEquivalentMm(given.fraction * given.energy_MJ_m2_day),
  }),
  "fao56-tab03-radiation-units": () => ({
    MJ_m2_day_in_W_m2: 1 / mJPerM2DayPerWattPerM2,
    W_m2_in_MJ_m2_day: mJPerM2DayPerWattPerM2,
    cal_cm2_day_in_MJ_m2_day: mJPerM2PerCalPerCm2,
    MJ_m2_day_in_cal_cm2_day: 1 / mJPerM2PerCalPerCm2,
  }),
});

testTopic("atmosphere", {
  "fao56-ex02-atmosphere": (given) => {
    const pressureKPa = atmosphericPressureKPa(given.elevation_m);
    return { pressure_kPa: pressureKPa, gamma_kPa_C: psychrometricConstantKPaPerC(pressureKPa) };
  },
  "fao56-tab2-2-gamma": (given) => ({
    gamma_kPa_C: given.elevation_m.map((m: number) => psychrometricConstantKPaPerC(atmosphericPressureKPa(m))),
  }),
});

testTopic("wind", {
  "fao56-ex14-wind": (given) => ({ factor: windFactor(given.z_m), u2_m_s: windAt2mMPerS(given.uz_m_s, given.z_m) }),
});

test("every topic of the published weather checks has a test file", () => {
  expect(publishedTopics()).toEqual([
    "atmosphere",
    "pan",
    "radiation",
    "radiation-geometry",
    "reference-et",
    "units",
    "vapour-pressure",
    "wind",
  ]);
});
