export { type StartWindow, type StartWindowOptions, startWindow } from "./start-window.js";
