export { column, noRoots } from "../../packages/cli/src/truth/richards-column.js";
