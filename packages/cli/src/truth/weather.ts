import {
  atmosphericPressureKPa,
  blackBodyMJPerM2Day,
  cloudTerm,
  dayLengthH,
  dayOfYear,
  dewPointC,
  eaFromPsychrometerKPa,
  eaFromRhMeanKPa,
  eaFromRhMinMaxKPa,
  et0PanMmPerDay,
  evaporationEquivalentMm,
  extraterrestrialRadiationMJPerM2Day,
  humidityTerm,
  inverseRelativeDistance,
  latitudeRad,
  meanSaturationVapourPressureKPa,
  mJPerM2DayPerWattPerM2,
  mJPerM2PerCalPerCm2,
  monthlySoilHeatFluxMJPerM2Day,
  netLongwaveMJPerM2Day,
  type PanSiting,
  panCoefficientFromTable,
  psychrometricConstantKPaPerC,
  saturationVapourPressureKPa,
  solarDeclinationRad,
  solarFromSunshineMJPerM2Day,
  solarFromTemperatureMJPerM2Day,
  sunsetHourAngleRad,
  windAt2mMPerS,
  windFactor,
} from "rootledger/weather";
import type { Evaluators } from "./evaluators.js";

const siting: Readonly<Record<string, PanSiting>> = { A: "green", B: "dry" };
const windMPerS: Readonly<Record<string, number>> = {
  "light <2": 1.5,
  "moderate 2-5": 3.5,
  "strong 5-8": 6.5,
  "very strong >8": 9,
};
const rhPct: Readonly<Record<string, number>> = { "<40": 30, "40-70": 55, ">70": 80 };

/** Units, air, vapour, sun and pan. */
export const weather: Evaluators = {
  "fao56-ex01-evap-units": (given) => ({
    evaporation_mm_day: evaporationEquivalentMm(given.number("fraction") * given.number("energy_MJ_m2_day")),
  }),
  "fao56-tab03-radiation-units": () => ({
    MJ_m2_day_in_W_m2: 1 / mJPerM2DayPerWattPerM2,
    W_m2_in_MJ_m2_day: mJPerM2DayPerWattPerM2,
    cal_cm2_day_in_MJ_m2_day: mJPerM2PerCalPerCm2,
    MJ_m2_day_in_cal_cm2_day: 1 / mJPerM2PerCalPerCm2,
  }),
  "fao56-ex02-atmosphere": (given) => {
    const pressureKPa = atmosphericPressureKPa(given.number("elevation_m"));
    return { pressure_kPa: pressureKPa, gamma_kPa_C: psychrometricConstantKPaPerC(pressureKPa) };
  },
  "fao56-tab2-2-gamma": (given) => ({
    gamma_kPa_C: given.numbers("elevation_m").map((m) => psychrometricConstantKPaPerC(atmosphericPressureKPa(m))),
  }),
  "fao56-ex14-wind": (given) => ({
    factor: windFactor(given.number("z_m")),
    u2_m_s: windAt2mMPerS(given.number("uz_m_s"), given.number("z_m")),
  }),
  "fao56-ex07-latitude": (given) => {
    const degrees = given.rows("lat_deg_min").map(([deg, min, side]) => {
      const size = Number(deg) + Number(min) / 60;
      return side === "S" ? -size : size;
    });
    return { lat_deg: degrees, lat_rad: degrees.map(latitudeRad) };
  },
  "fao56-ex08-ra": (given) => {
    const latitude = latitudeRad(given.number("lat_deg"));
    const declination = solarDeclinationRad(given.number("day_of_year"));
    const radiation = extraterrestrialRadiationMJPerM2Day(latitude, given.number("day_of_year"));
    return {
      dr: inverseRelativeDistance(given.number("day_of_year")),
      declination_rad: declination,
      sunset_hour_angle_rad: sunsetHourAngleRad(latitude, declination),
      sinphi_sindelta: Math.sin(latitude) * Math.sin(declination),
      cosphi_cosdelta: Math.cos(latitude) * Math.cos(declination),
      ra_MJ_m2_day: radiation,
      ra_mm_day: evaporationEquivalentMm(radiation),
    };
  },
  "fao56-tab2-5-doy": (given) => ({
    day_of_year: given.rows("month_day").map((cells) => {
      const [month = "", day = ""] = cells.map((cell) => String(cell).padStart(2, "0"));
      return dayOfYear(`2025-${month}-${day}`);
    }),
  }),
  "fao56-ex10-rs": (given) => {
    const latitude = latitudeRad(given.number("lat_deg"));
    const extraterrestrial = extraterrestrialRadiationMJPerM2Day(latitude, given.number("day_of_year"));
    const daylightH = dayLengthH(latitude, given.number("day_of_year"));
    const sunshineH = given.number("sunshine_h_month") / given.number("days");
    const solar = solarFromSunshineMJPerM2Day(extraterrestrial, sunshineH / daylightH, {
      as: given.number("as"),
      bs: given.number("bs"),
    });
    return {
      ra_MJ_m2_day: extraterrestrial,
      daylight_h: daylightH,
      sunshine_h_day: sunshineH,
      rs_MJ_m2_day: solar,
      rs_mm_day: evaporationEquivalentMm(solar),
    };
  },
  "fao56-ex11-rnl": (given) => {
    const humidity = humidityTerm(given.number("ea_kPa"));
    const cloud = cloudTerm(given.number("rs_MJ_m2_day") / given.number("rso_MJ_m2_day"));
    const longwave = netLongwaveMJPerM2Day({
      tMinC: given.number("tmin_C"),
      tMaxC: given.number("tmax_C"),
      humidityTerm: humidity,
      cloudTerm: cloud,
    });
    return {
      sigmaT4_max: blackBodyMJPerM2Day(given.number("tmax_C")),
      sigmaT4_min: blackBodyMJPerM2Day(given.number("tmin_C")),
      humidity_term: humidity,
      cloud_term: cloud,
      rnl_MJ_m2_day: longwave,
      rnl_mm_day: evaporationEquivalentMm(longwave),
    };
  },
  "fao56-ex13-g-month": (given) => {
    const heat = monthlySoilHeatFluxMJPerM2Day(given.number("tmean_prev_C"), given.number("tmean_next_C"));
    return { g_MJ_m2_day: heat, g_mm_day: evaporationEquivalentMm(heat) };
  },
  "fao56-ex15-rs-temperature": (given) => {
    const extraterrestrial = extraterrestrialRadiationMJPerM2Day(
      latitudeRad(given.number("lat_deg")),
      given.number("day_of_year"),
    );
    const range = { tMinC: given.number("tmin_C"), tMaxC: given.number("tmax_C") };
    const solar = solarFromTemperatureMJPerM2Day(extraterrestrial, range, given.number("krs"));
    return { ra_MJ_m2_day: extraterrestrial, rs_MJ_m2_day: solar, rs_mm_day: evaporationEquivalentMm(solar) };
  },
  "fao56-tab2-8-sigmaT4": (given) => ({
    sigmaT4_MJ_m2_day: given.numbers("temperature_C").map((tempC) => blackBodyMJPerM2Day(tempC)),
  }),
  "fao56-ex03-es": (given) => ({
    e_tmax_kPa: saturationVapourPressureKPa(given.number("tmax_C")),
    e_tmin_kPa: saturationVapourPressureKPa(given.number("tmin_C")),
    es_kPa: meanSaturationVapourPressureKPa(given.number("tmin_C"), given.number("tmax_C")),
    e_tmean_kPa: saturationVapourPressureKPa((given.number("tmin_C") + given.number("tmax_C")) / 2),
  }),
  "fao56-ex04-psychrometer": (given) => {
    const pressureKPa = atmosphericPressureKPa(given.number("elevation_m"));
    return {
      pressure_kPa: pressureKPa,
      e_twet_kPa: saturationVapourPressureKPa(given.number("twet_C")),
      ea_kPa: eaFromPsychrometerKPa({
        dryC: given.number("tdry_C"),
        wetC: given.number("twet_C"),
        pressureKPa,
        coefficientPerC: given.number("a_psy_per_C"),
      }),
    };
  },
  "fao56-ex05-ea-rh": (given) => {
    const day = { tMinC: given.number("tmin_C"), tMaxC: given.number("tmax_C") };
    return {
      e_tmin_kPa: saturationVapourPressureKPa(given.number("tmin_C")),
      e_tmax_kPa: saturationVapourPressureKPa(given.number("tmax_C")),
      ea_eq17_kPa: eaFromRhMinMaxKPa({
        ...day,
        rhMinPct: given.number("rhmin_pct"),
        rhMaxPct: given.number("rhmax_pct"),
      }),
      ea_eq19_kPa: eaFromRhMeanKPa({ ...day, rhMeanPct: (given.number("rhmin_pct") + given.number("rhmax_pct")) / 2 }),
    };
  },
  "fao56-tab2-3-es": (given) => ({ e_kPa: given.numbers("temperature_C").map(saturationVapourPressureKPa) }),
  "fao56-annex3-dewpoint": (given) => ({ tdew_C: dewPointC(given.number("ea_kPa")) }),
  "fao56-ex21-pan-table": (given) => {
    const pan = given.numbers("epan_mm_day");
    const mean = pan.reduce((sum, mm) => sum + mm, 0) / pan.length;
    const coefficient = panCoefficientFromTable({
      siting: "green",
      fetchM: given.number("fetch_m"),
      windAt2mMPerS: given.number("u2_m_s"),
      rhMeanPct: given.number("rhmean_pct"),
    });
    return { kp: coefficient, epan_mean_mm_day: mean, eto_mm_day: et0PanMmPerDay(mean, coefficient) };
  },
  "fao56-tab05-pan-cells": (given) => ({
    kp: given.rows("cells").map((cells) => {
      const [side = "", wind = "", rh = "", fetch = ""] = cells.map(String);
      return panCoefficientFromTable({
        siting: siting[side] ?? "green",
        fetchM: Number.parseFloat(fetch),
        windAt2mMPerS: windMPerS[wind] ?? Number.NaN,
        rhMeanPct: rhPct[rh] ?? Number.NaN,
      });
    }),
  }),
};
