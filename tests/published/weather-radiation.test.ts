import {
  blackBodyMJPerM2Day,
  cloudTerm,
  dayLengthH,
  dayOfYear,
  evaporationEquivalentMm,
  extraterrestrialRadiationMJPerM2Day,
  humidityTerm,
  inverseRelativeDistance,
  latitudeRad,
  monthlySoilHeatFluxMJPerM2Day,
  netLongwaveMJPerM2Day,
  solarDeclinationRad,
  solarFromSunshineMJPerM2Day,
  solarFromTemperatureMJPerM2Day,
  sunsetHourAngleRad,
} from "rootledger/weather";
import { testTopic } from "./weather-data.js";

testTopic("radiation-geometry", {
  "fao56-ex07-latitude": (given) => {
    const degrees = given.lat_deg_min.map(
      ([deg, min, side]: [number, number, string]) => (deg + min / 60) * (side === "S" ? -1 : 1),
    );
    return { lat_deg: degrees, lat_rad: degrees.map(latitudeRad) };
  },
  "fao56-ex08-ra": (given) => {
    const latitude = latitudeRad(given.lat_deg);
    const declination = solarDeclinationRad(given.day_of_year);
    const radiation = extraterrestrialRadiationMJPerM2Day(latitude, given.day_of_year);
    return {
      dr: inverseRelativeDistance(given.day_of_year),
      declination_rad: declination,
      sunset_hour_angle_rad: sunsetHourAngleRad(latitude, declination),
      sinphi_sindelta: Math.sin(latitude) * Math.sin(declination),
      cosphi_cosdelta: Math.cos(latitude) * Math.cos(declination),
      ra_MJ_m2_day: radiation,
      ra_mm_day: evaporationEquivalentMm(radiation),
    };
  },
  "fao56-tab2-5-doy": (given) => ({
    day_of_year: given.month_day.map(([month, day]: [number, number]) =>
      dayOfYear(`2025-${String(month).padStart(2, "0")}-${String(day).padStart(2, "0")}`),
    ),
  }),
});

testTopic("radiation", {
  "fao56-ex10-rs": (given) => {
    const latitude = latitudeRad(given.lat_deg);
    const extraterrestrial = extraterrestrialRadiationMJPerM2Day(latitude, given.day_of_year);
    const daylightH = dayLengthH(latitude, given.day_of_year);
    const sunshineH = given.sunshine_h_month / given.days;
    const solar = solarFromSunshineMJPerM2Day(extraterrestrial, sunshineH / daylightH, { as: given.as, bs: given.bs });
    return {
      ra_MJ_m2_day: extraterrestrial,
      daylight_h: daylightH,
      sunshine_h_day: sunshineH,
      rs_MJ_m2_day: solar,
      rs_mm_day: evaporationEquivalentMm(solar),
    };
  },
  "fao56-ex11-rnl": (given) => {
    const humidity = humidityTerm(given.ea_kPa);
    const cloud = cloudTerm(given.rs_MJ_m2_day / given.rso_MJ_m2_day);
    const longwave = netLongwaveMJPerM2Day({
      tMinC: given.tmin_C,
      tMaxC: given.tmax_C,
      humidityTerm: humidity,
      cloudTerm: cloud,
    });
    return {
      sigmaT4_max: blackBodyMJPerM2Day(given.tmax_C),
      sigmaT4_min: blackBodyMJPerM2Day(given.tmin_C),
      humidity_term: humidity,
      cloud_term: cloud,
      rnl_MJ_m2_day: longwave,
      rnl_mm_day: evaporationEquivalentMm(longwave),
    };
  },
  "fao56-ex13-g-month": (given) => {
    const heat = monthlySoilHeatFluxMJPerM2Day(given.tmean_prev_C, given.tmean_next_C);
    return { g_MJ_m2_day: heat, g_mm_day: evaporationEquivalentMm(heat) };
  },
  "fao56-ex15-rs-temperature": (given) => {
    const extraterrestrial = extraterrestrialRadiationMJPerM2Day(latitudeRad(given.lat_deg), given.day_of_year);
    const range = { tMinC: given.tmin_C, tMaxC: given.tmax_C };
    const solar = solarFromTemperatureMJPerM2Day(extraterrestrial, range, given.krs);
    return { ra_MJ_m2_day: extraterrestrial, rs_MJ_m2_day: solar, rs_mm_day: evaporationEquivalentMm(solar) };
  },
  "fao56-tab2-8-sigmaT4": (given) => ({
    sigmaT4_MJ_m2_day: given.temperature_C.map((tempC: number) => blackBodyMJPerM2Day(tempC)),
  }),
});
