export { type LineLayout, lineLayout } from "./layout.js";
