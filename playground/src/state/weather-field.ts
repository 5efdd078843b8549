import type { Field } from "./fields.js";
import { type OwnWeather, weatherMark } from "./own-weather.js";
import type { Scene } from "./scene.js";

/**
 * The weather of a link. It does not travel with it: a device that has another one, or none, keeps its own and says so. A link made
 * under the example's weather names none.
 */
export function weatherField(initial: Scene, weather: OwnWeather | undefined): Field {
  const own = weather === undefined ? "" : weatherMark(weather);
  return {
    key: "weather",
    rule: "weather",
    textOf: (scene) => (scene === initial ? "" : own),
    readInto: (scene, text) => (text === own ? scene : undefined),
  };
}
