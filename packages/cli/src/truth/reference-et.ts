import {
  asceSigmaMJPerK4M2Day,
  atmosphericPressureKPa,
  clearSkyMJPerM2,
  cloudTerm,
  dayLengthH,
  eaFromDewPointKPa,
  eaFromRhMinMaxKPa,
  et0AsceMmPerDay,
  et0HargreavesSamaniMmPerDay,
  et0PenmanMonteithMmPerDay,
  et0PenmanMonteithMmPerH,
  extraterrestrialRadiationMJPerM2,
  extraterrestrialRadiationMJPerM2Day,
  hourlySoilHeatFluxMJPerM2,
  hourNetLongwaveMJPerM2,
  hourNetRadiationMJPerM2,
  humidityTerm,
  inverseRelativeDistance,
  latestMonthSoilHeatFluxMJPerM2Day,
  latitudeRad,
  meanSaturationVapourPressureKPa,
  mPerSFromKmPerH,
  netLongwaveMJPerM2Day,
  netShortwaveMJPerM2,
  psychrometricConstantKPaPerC,
  saturationVapourPressureKPa,
  solarDeclinationRad,
  solarFromSunshineMJPerM2Day,
  solarFromTemperatureMJPerM2Day,
  solarTimeAngleRad,
  solarTimeCorrectionH,
  vapourPressureSlopeKPaPerC,
  windAt2mMPerS,
} from "rootledger/weather";
import type { Evaluator, Evaluators } from "./evaluators.js";

interface Sky {
  readonly ra: number;
  readonly daylightH: number;
  readonly rso: number;
}

const sky = (latitudeDeg: number, dayOfYear: number, elevationM: number): Sky => {
  const latitude = latitudeRad(latitudeDeg);
  const ra = extraterrestrialRadiationMJPerM2Day(latitude, dayOfYear);
  return { ra, daylightH: dayLengthH(latitude, dayOfYear), rso: clearSkyMJPerM2(ra, elevationM) };
};

interface Day {
  readonly tMinC: number;
  readonly tMaxC: number;
  readonly ea: number;
  readonly rs: number;
  readonly rso: number;
  readonly sigma?: number;
}

/** Net shortwave, net longwave and net radiation of a day. */
const radiation = ({ tMinC, tMaxC, ea, rs, rso, sigma }: Day): { rns: number; rnl: number; rn: number } => {
  const terms = { humidityTerm: humidityTerm(ea), cloudTerm: cloudTerm(rs / rso) };
  const rns = netShortwaveMJPerM2(rs);
  const rnl = netLongwaveMJPerM2Day({ tMinC, tMaxC, ...terms, ...(sigma === undefined ? {} : { sigma }) });
  return { rns, rnl, rn: rns - rnl };
};

const bangkok: Evaluator = (given) => {
  const { ra, daylightH, rso } = sky(given.number("lat_deg"), given.number("day_of_year"), given.number("elevation_m"));
  const rs = solarFromSunshineMJPerM2Day(ra, given.number("sunshine_h") / daylightH);
  const { rns, rnl, rn } = radiation({
    tMinC: given.number("tmin_C"),
    tMaxC: given.number("tmax_C"),
    ea: given.number("ea_kPa"),
    rs,
    rso,
  });
  const es = meanSaturationVapourPressureKPa(given.number("tmin_C"), given.number("tmax_C"));
  const gamma = psychrometricConstantKPaPerC(atmosphericPressureKPa(given.number("elevation_m")));
  const g = latestMonthSoilHeatFluxMJPerM2Day(given.number("tmean_prev_C"), given.number("tmean_C"));
  return {
    slope_kPa_C: vapourPressureSlopeKPaPerC(given.number("tmean_C")),
    gamma_kPa_C: gamma,
    e_tmax_kPa: saturationVapourPressureKPa(given.number("tmax_C")),
    e_tmin_kPa: saturationVapourPressureKPa(given.number("tmin_C")),
    es_kPa: es,
    vpd_kPa: es - given.number("ea_kPa"),
    ra_MJ_m2_day: ra,
    daylight_h: daylightH,
    rs_MJ_m2_day: rs,
    rso_MJ_m2_day: rso,
    rns_MJ_m2_day: rns,
    rnl_MJ_m2_day: rnl,
    rn_MJ_m2_day: rn,
    g_MJ_m2_day: g,
    eto_mm_day: et0PenmanMonteithMmPerDay({
      meanTempC: given.number("tmean_C"),
      saturationVapourPressureKPa: es,
      actualVapourPressureKPa: given.number("ea_kPa"),
      windAt2mMPerS: given.number("u2_m_s"),
      netRadiationMJPerM2: rn,
      soilHeatFluxMJPerM2: g,
      psychrometricConstantKPaPerC: gamma,
    }),
  };
};

const brussels: Evaluator = (given) => {
  const { ra, daylightH, rso } = sky(given.number("lat_deg"), given.number("day_of_year"), given.number("elevation_m"));
  const day = { tMinC: given.number("tmin_C"), tMaxC: given.number("tmax_C") };
  const ea = eaFromRhMinMaxKPa({ ...day, rhMinPct: given.number("rhmin_pct"), rhMaxPct: given.number("rhmax_pct") });
  const rs = solarFromSunshineMJPerM2Day(ra, given.number("sunshine_h") / daylightH);
  const { rns, rnl, rn } = radiation({ ...day, ea, rs, rso });
  const es = meanSaturationVapourPressureKPa(given.number("tmin_C"), given.number("tmax_C"));
  const pressureKPa = atmosphericPressureKPa(given.number("elevation_m"));
  const gamma = psychrometricConstantKPaPerC(pressureKPa);
  const meanTempC = (given.number("tmin_C") + given.number("tmax_C")) / 2;
  const wind = windAt2mMPerS(mPerSFromKmPerH(given.number("wind_10m_km_h")), 10);
  return {
    u2_m_s: wind,
    pressure_kPa: pressureKPa,
    slope_kPa_C: vapourPressureSlopeKPaPerC(meanTempC),
    gamma_kPa_C: gamma,
    e_tmax_kPa: saturationVapourPressureKPa(given.number("tmax_C")),
    e_tmin_kPa: saturationVapourPressureKPa(given.number("tmin_C")),
    es_kPa: es,
    ea_kPa: ea,
    vpd_kPa: es - ea,
    ra_MJ_m2_day: ra,
    daylight_h: daylightH,
    rs_MJ_m2_day: rs,
    rso_MJ_m2_day: rso,
    rns_MJ_m2_day: rns,
    rnl_MJ_m2_day: rnl,
    rn_MJ_m2_day: rn,
    eto_mm_day: et0PenmanMonteithMmPerDay({
      meanTempC,
      saturationVapourPressureKPa: es,
      actualVapourPressureKPa: ea,
      windAt2mMPerS: wind,
      netRadiationMJPerM2: rn,
      soilHeatFluxMJPerM2: 0,
      psychrometricConstantKPaPerC: gamma,
    }),
  };
};

const ndiaye: Evaluator = (given) => {
  const latitude = latitudeRad(given.number("lat_deg"));
  const middleAngleRad = solarTimeAngleRad({
    clockMiddleH: given.number("t_mid_h"),
    longitudeDegWest: given.number("lon_m_degW"),
    zoneLongitudeDegWest: given.number("lon_z_degW"),
    dayOfYear: given.number("day_of_year"),
  });
  const period = { latitudeRad: latitude, dayOfYear: given.number("day_of_year"), middleAngleRad, lengthH: 1 };
  const ra = extraterrestrialRadiationMJPerM2(period);
  const rso = clearSkyMJPerM2(ra, given.number("elevation_m"));
  const es = saturationVapourPressureKPa(given.number("temperature_C"));
  const ea = (es * given.number("rh_pct")) / 100;
  const hour = {
    tempC: given.number("temperature_C"),
    actualVapourPressureKPa: ea,
    solarMJPerM2: given.number("rs_MJ_m2_h"),
    relativeShortwave: given.number("rs_MJ_m2_h") / rso,
  };
  const rn = hourNetRadiationMJPerM2(hour);
  const g = hourlySoilHeatFluxMJPerM2(rn, "day");
  const gamma = psychrometricConstantKPaPerC(atmosphericPressureKPa(given.number("elevation_m")));
  return {
    slope_kPa_C: vapourPressureSlopeKPaPerC(given.number("temperature_C")),
    gamma_kPa_C: gamma,
    es_kPa: es,
    ea_kPa: ea,
    dr: inverseRelativeDistance(given.number("day_of_year")),
    declination_rad: solarDeclinationRad(given.number("day_of_year")),
    Sc_h: solarTimeCorrectionH(given.number("day_of_year")),
    omega_rad: middleAngleRad,
    ra_MJ_m2_h: ra,
    rso_MJ_m2_h: rso,
    rns_MJ_m2_h: netShortwaveMJPerM2(given.number("rs_MJ_m2_h")),
    rnl_MJ_m2_h: hourNetLongwaveMJPerM2(hour),
    rn_MJ_m2_h: rn,
    g_MJ_m2_h: g,
    eto_mm_h: et0PenmanMonteithMmPerH({
      meanTempC: given.number("temperature_C"),
      saturationVapourPressureKPa: es,
      actualVapourPressureKPa: ea,
      windAt2mMPerS: given.number("u2_m_s"),
      netRadiationMJPerM2: rn,
      soilHeatFluxMJPerM2: g,
      psychrometricConstantKPaPerC: gamma,
    }),
  };
};

const lyon: Evaluator = (given) => {
  const { ra, rso } = sky(given.number("lat_deg"), given.number("day_of_year"), given.number("elevation_m"));
  const day = { tMinC: given.number("tmin_C"), tMaxC: given.number("tmax_C") };
  const ea = eaFromDewPointKPa(given.number("tmin_C"));
  const rs = solarFromTemperatureMJPerM2Day(ra, day, given.number("krs"));
  const { rns, rnl, rn } = radiation({ ...day, ea, rs, rso });
  const es = meanSaturationVapourPressureKPa(given.number("tmin_C"), given.number("tmax_C"));
  const meanTempC = (given.number("tmin_C") + given.number("tmax_C")) / 2;
  return {
    slope_kPa_C: vapourPressureSlopeKPaPerC(meanTempC),
    ea_kPa: ea,
    es_kPa: es,
    ra_MJ_m2_day: ra,
    rs_MJ_m2_day: rs,
    rso_MJ_m2_day: rso,
    rns_MJ_m2_day: rns,
    rnl_MJ_m2_day: rnl,
    rn_MJ_m2_day: rn,
    eto_mm_day: et0PenmanMonteithMmPerDay({
      meanTempC,
      saturationVapourPressureKPa: es,
      actualVapourPressureKPa: ea,
      windAt2mMPerS: given.number("u2_m_s"),
      netRadiationMJPerM2: rn,
      soilHeatFluxMJPerM2: 0,
      psychrometricConstantKPaPerC: psychrometricConstantKPaPerC(atmosphericPressureKPa(given.number("elevation_m"))),
    }),
  };
};

const lyonHargreaves: Evaluator = (given) => ({
  eto_mm_day: et0HargreavesSamaniMmPerDay({
    tMinC: given.number("tmin_C"),
    tMaxC: given.number("tmax_C"),
    extraterrestrialMJPerM2Day: extraterrestrialRadiationMJPerM2Day(
      latitudeRad(given.number("lat_deg")),
      given.number("day_of_year"),
    ),
  }),
});

const greeley: Evaluator = (given) => {
  const { rso } = sky(given.number("lat_deg"), given.number("day_of_year"), given.number("elevation_m"));
  const day = {
    tMinC: given.number("tmin_C"),
    tMaxC: given.number("tmax_C"),
    ea: given.number("ea_kPa"),
    rs: given.number("rs_MJ_m2_day"),
    rso,
  };
  const inputs = {
    meanTempC: (given.number("tmin_C") + given.number("tmax_C")) / 2,
    saturationVapourPressureKPa: meanSaturationVapourPressureKPa(given.number("tmin_C"), given.number("tmax_C")),
    actualVapourPressureKPa: given.number("ea_kPa"),
    windAt2mMPerS: windAt2mMPerS(given.number("wind_3m_m_s"), 3),
    netRadiationMJPerM2: radiation({ ...day, sigma: asceSigmaMJPerK4M2Day }).rn,
    soilHeatFluxMJPerM2: 0,
    psychrometricConstantKPaPerC: psychrometricConstantKPaPerC(atmosphericPressureKPa(given.number("elevation_m"))),
  };
  return { etos_mm_day: et0AsceMmPerDay(inputs, "short"), etrs_mm_day: et0AsceMmPerDay(inputs, "tall") };
};

/** Reference evapotranspiration by day, hour and month, worked out in full. */
export const referenceEt: Evaluators = {
  "fao56-ex17-eto-month": bangkok,
  "fao56-ex18-eto-day": brussels,
  "fao56-ex19-eto-hour-day": ndiaye,
  "fao56-ex20-eto-missing": lyon,
  "fao56-ex20-hargreaves": lyonHargreaves,
  "asce2005-greeley-2000-07-01": greeley,
  "asce2005-greeley-2000-07-03": greeley,
  "asce2005-greeley-2000-07-04": greeley,
  "asce2005-greeley-2000-07-06": greeley,
};
