import type { Default } from "./defaults.js";

/** Defaults of a programme's rule; those of its start and pulses are a run's own. */
export const ruleDefaults: {
  readonly amountsPer: Default<"day">;
  readonly useFactor: Default<number>;
} = {
  amountsPer: {
    value: "day",
    source: "our choice; no published value: watering cards give litres a day",
    published: "none",
  },
  useFactor: {
    value: 1,
    source: "what was used is given back, no more",
    published: "none",
  },
};
