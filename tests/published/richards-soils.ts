export {
  exponentialSoil,
  haverkampSand,
  yoloLightClay,
} from "../../packages/cli/src/truth/richards-soils.js";
