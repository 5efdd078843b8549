/** Arms beside a comparison. */
export const armWords = {
  "as-asked": "as asked",
  "daily-single": "one run a day",
  "dose-above": "1.2 x what trees want",
  "dose-below": "0.8 x what trees want",
  "night-start": "from 22:00",
  "day-start": "from 10:00",
  "wet-spell": "with 5 days of 20 mm",
  tight: "tight soil",
  crumbly: "crumbly soil",
  "fast-engine": "14 days, fast engine",
  "slow-engine": "14 days, slow engine",
  "under-fed": "under-fed tree",
  "over-fed": "over-fed tree",
} as const;

export const armAbsenceWords = {
  "in-the-comparison": "already one of the programmes",
  "four-programmes": "left out, since the comparison has four programmes already",
  "unlike-runs": "left out, since the last programme has several kinds of run",
  "lines-stay-full": "the average tree, since lines stay full; block.lines.drainOut tells it apart",
  "no-texture": "left out, since no horizon's curve comes from a texture",
} as const;
