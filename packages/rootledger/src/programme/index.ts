export { type EmitterSchedule, emitterSchedule, type LineDrain } from "./emitter-schedule.js";
export { type Programme, pulseHours, type Run, runSpanHours } from "./programme.js";
export { openHours, valveEvents } from "./valve-events.js";
