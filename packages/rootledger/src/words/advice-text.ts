import type { AdviceCause } from "../advise/advice-cause.js";
import { litresPerGallon } from "../units.js";
import type { AdviceWords } from "./advice-words.js";
import { filledWords } from "./filled-words.js";
import type { SheetFormat } from "./sheet-text.js";

/** How numbers and water are written. */
export type AdviceFormat = Pick<SheetFormat, "number"> & { readonly units: Pick<SheetFormat["units"], "water"> };

/**
 * The sentence of one cause.
 *
 * @example causeText({ code: "water-amount", fromLPerDay: 90, toLPerDay: 120, wantedLPerDay: 118 }, adviceEnglish, { number: (value) => String(value), units: { water: "L" } }) // "120 L a day, not 90 L; the tree wants 118 L."
 */
export function causeText(cause: AdviceCause, words: AdviceWords, { number, units }: AdviceFormat): string {
  const litres = (l: number): string => `${number(units.water === "L" ? l : l / litresPerGallon, 3)} ${units.water}`;
  const hours = (h: number): string => `${number(h, 2)} h`;
  const share = (fraction: number): string => `${number(100 * fraction, 2)} %`;
  const days = (count: number): string => (count === 1 ? words.day : filledWords(words.days, { count: String(count) }));
  const say = (code: keyof AdviceWords["cause"], terms: Readonly<Record<string, string>> = {}): string =>
    filledWords(words.cause[code], terms);
  switch (cause.code) {
    case "as-today":
      return say(cause.code);
    case "wetted-ground":
      return say(cause.code, {
        ...{ fromShare: share(cause.fromShare), toShare: share(cause.toShare) },
        ...{
          fromWindow: litres(cause.fromWindowL),
          toWindow: litres(cause.toWindowL),
          wanted: litres(cause.wantedLPerDay),
        },
      });
    case "run-within-window":
    case "run-beyond-window":
      return say(cause.runL <= cause.wantedLPerDay ? "run-within-day" : cause.code, {
        ...{ every: days(cause.everyDays), from: days(cause.fromDays), run: litres(cause.runL) },
        ...{ window: litres(cause.windowL), wanted: litres(cause.wantedLPerDay) },
      });
    case "water-amount":
      return say(cause.code, {
        ...{ to: litres(cause.toLPerDay), from: litres(cause.fromLPerDay), wanted: litres(cause.wantedLPerDay) },
      });
    case "no-air-lost":
      return say(cause.code, { pulses: String(cause.pulses), fromPulses: String(cause.fromPulses) });
    case "gap-covers-recovery":
    case "gap-shorter-than-recovery":
      return cause.recoveryH === undefined
        ? say("gap-never-covers", { gap: hours(cause.gapH) })
        : say(cause.code, { gap: hours(cause.gapH), recovery: hours(cause.recoveryH) });
    case "one-run": {
      const terms = { fromPulses: String(cause.fromPulses), gap: hours(cause.gapH) };
      return cause.recoveryH === undefined
        ? say("one-run-never", terms)
        : say("one-run", { ...terms, recovery: hours(cause.recoveryH) });
    }
    case "start-hour":
      return say(cause.toWhileOpenL < cause.fromWhileOpenL ? "start-hour-fewer" : cause.code, {
        ...{ from: clockText(cause.fromH), to: clockText(cause.toH), wanted: litres(cause.wantedLPerDay) },
        ...{ fromWhileOpen: litres(cause.fromWhileOpenL), toWhileOpen: litres(cause.toWhileOpenL) },
      });
  }
}

/** Hours since midnight as a clock shows them; 25.5 is half past one. @example clockText(25.5) // "01:30" */
export function clockText(hours: number): string {
  const minutes = Math.round(hours * 60) % (24 * 60);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}
