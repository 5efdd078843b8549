export type { Io } from "./io.js";
export { main } from "./run.js";
