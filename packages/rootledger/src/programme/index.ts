export { type Programme, pulseHours, type Run, runSpanHours } from "./programme.js";
export { valveEvents } from "./valve-events.js";
