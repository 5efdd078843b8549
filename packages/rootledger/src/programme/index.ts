export { type EmitterSchedule, emitterSchedule, type LineDrain } from "./emitter-schedule.js";
export {
  type HandDose,
  type Injection,
  type InjectionAmount,
  type InjectionPlace,
  type InjectionSchedule,
  injectionSchedule,
  type NitrogenDoses,
} from "./injection.js";
export { type Programme, pulseHours, type Run, runSpanHours } from "./programme.js";
export { openHours, valveEvents } from "./valve-events.js";
