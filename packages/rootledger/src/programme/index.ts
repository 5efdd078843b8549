export type { Cut, CutReason, WateringBook } from "../water/watering-book.js";
export { type CutCount, cutCounts } from "./cut-counts.js";
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
export type { Asked, Morning } from "./morning.js";
export type {
  Programme,
  ProgrammeLines,
  Run,
} from "./programme.js";
export type { Amount, PumpLimits, RuleClock, RuleKind, WateringRule } from "./rule.js";
export { type CalendarDay, seasonCalendar } from "./season-calendar.js";
export { sensorCell } from "./sensor-cell.js";
export { type PulseNeeds, type ShortestPulse, shortestUsefulPulse } from "./shortest-pulse.js";
export { openHours, valveEvents } from "./valve-events.js";
