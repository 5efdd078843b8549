export {
  exponentialSoil,
  haverkampSand,
  powerSoil,
  yoloLightClay,
} from "../../packages/cli/src/truth/richards-soils.js";
