import type { AdviceWords } from "./advice-words.js";

/** The advice in English. */
export const adviceEnglish: AdviceWords = {
  answer: {
    "same-for-both":
      "The same for both: nothing differs clearly from today's programme in thirst, air or water below the roots, pump starts at most.",
    "keep-today": "Keep today's programme: nothing that was tried is clearly better in anything.",
    choice:
      "A choice: each programme below is clearly better than today's in one thing and clearly worse in another. Which matters more is yours to say.",
    better: "Something is clearly better than today's programme in one thing or more and clearly worse in none.",
  },
  cause: {
    "as-today": "Today's programme.",
    "wetted-ground":
      "Wets $toShare of the ground, not $fromShare: between air and thirst it can lend $toWindow, not $fromWindow, and the tree wants $wanted a day.",
    "run-within-window":
      "Every $every, not every $from: a run of $run, less the $wanted that the tree draws on its day, fits the $window that the wetted ground can lend.",
    "run-beyond-window":
      "Every $every, not every $from: a run of $run is more than the $window that the wetted ground can lend and the $wanted of its day; the rest sinks or takes the air.",
    "run-within-day":
      "Every $every, not every $from: a run of $run is no more than the $wanted that the tree draws on its day, so little has to wait in the ground.",
    "water-amount": "$to a day, not $from; the tree wants $wanted.",
    "no-air-lost":
      "Openings in a run: $pulses, not $fromPulses. The roots keep their air either way; how deep the water goes and when it is there is what changes.",
    "gap-covers-recovery": "Pauses of $gap are longer than the $recovery that air takes to come back.",
    "gap-shorter-than-recovery":
      "Pauses of $gap are shorter than the $recovery that air takes to come back: each pulse takes air from the next.",
    "gap-never-covers": "Pauses of $gap are too short: air is mostly not back before the next opening.",
    "one-run": "One run, not $fromPulses pulses: pauses of $gap stood against $recovery that air takes to come back.",
    "one-run-never": "One run, not $fromPulses pulses: after pauses of $gap air was mostly not back.",
    "start-hour-fewer":
      "From $to, not $from: of the $wanted that the tree wants a day only $toWhileOpen fall into the run, not $fromWhileOpen; more has been drawn before it opens, and the soil has more room for the water.",
    "start-hour":
      "From $to, not $from: of the $wanted that the tree wants a day $toWhileOpen fall into the run, not $fromWhileOpen; what it draws then need not be held by the soil.",
  },
  caution: {
    "nitrogen-left-out": "Nitrogen is left out of the programmes: its dose per run has to be set anew.",
    "rain-skipped": "Days skipped for rain are skipped here too, by the weather of the file.",
    "today-cut": "Limits cut today's programme; its water is what is left.",
    "spade-decides":
      "Numbers are ranges from a model of one tree; the spade decides. Change one thing at a time and look again within days.",
    "no-yield":
      "No yield is promised. Water rights, tariffs, pumps and anything injected: local codes come first; guard against backflow.",
  },
  day: "day",
  days: "$count days",
};
