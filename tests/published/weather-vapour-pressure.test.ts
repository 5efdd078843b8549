import {
  atmosphericPressureKPa,
  dewPointC,
  eaFromPsychrometerKPa,
  eaFromRhMeanKPa,
  eaFromRhMinMaxKPa,
  meanSaturationVapourPressureKPa,
  saturationVapourPressureKPa,
} from "rootledger/weather";
import { testTopic } from "./weather-data.js";

testTopic("vapour-pressure", {
  "fao56-ex03-es": (given) => ({
    e_tmax_kPa: saturationVapourPressureKPa(given.tmax_C),
    e_tmin_kPa: saturationVapourPressureKPa(given.tmin_C),
    es_kPa: meanSaturationVapourPressureKPa(given.tmin_C, given.tmax_C),
    e_tmean_kPa: saturationVapourPressureKPa((given.tmin_C + given.tmax_C) / 2),
  }),
  "fao56-ex04-psychrometer": (given) => {
    const pressureKPa = atmosphericPressureKPa(given.elevation_m);
    return {
      pressure_kPa: pressureKPa,
      e_twet_kPa: saturationVapourPressureKPa(given.twet_C),
      ea_kPa: eaFromPsychrometerKPa({
        dryC: given.tdry_C,
        wetC: given.twet_C,
        pressureKPa,
        coefficientPerC: given.a_psy_per_C,
      }),
    };
  },
  "fao56-ex05-ea-rh": (given) => {
    const day = { tMinC: given.tmin_C, tMaxC: given.tmax_C };
    return {
      e_tmin_kPa: saturationVapourPressureKPa(given.tmin_C),
      e_tmax_kPa: saturationVapourPressureKPa(given.tmax_C),
      ea_eq17_kPa: eaFromRhMinMaxKPa({ ...day, rhMinPct: given.rhmin_pct, rhMaxPct: given.rhmax_pct }),
      ea_eq19_kPa: eaFromRhMeanKPa({ ...day, rhMeanPct: (given.rhmin_pct + given.rhmax_pct) / 2 }),
    };
  },
  "fao56-tab2-3-es": (given) => ({ e_kPa: given.temperature_C.map(saturationVapourPressureKPa) }),
  "fao56-annex3-dewpoint": (given) => ({ tdew_C: dewPointC(given.ea_kPa) }),
});
