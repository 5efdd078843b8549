/** What the keys of a lesson do. */
export interface LessonActs {
  readonly move: (by: number) => void;
  readonly reveal: () => void;
  readonly dig: () => void;
  readonly readTension: () => void;
  readonly flip: () => void;
  readonly freeze: () => void;
  readonly startAgain: () => void;
  readonly step: (by: number) => void;
  readonly moveHour: (by: number) => void;
  readonly vote: (option: number) => void;
}

/** Carries out what a key asks for while the lesson has the focus; keys with a modifier are left to the browser. */
export function lessonKey(event: KeyboardEvent, options: number, acts: LessonActs): void {
  if (event.ctrlKey || event.metaKey || event.altKey) return;
  const inside = event.composedPath()[0];
  const onControl =
    inside instanceof HTMLButtonElement || inside instanceof HTMLInputElement || inside instanceof HTMLSelectElement;
  const onSlider = inside instanceof HTMLInputElement && inside.type === "range";
  const key = event.key.toLowerCase();
  const does: Readonly<Record<string, (() => void) | undefined>> = {
    arrowright: onControl ? undefined : () => acts.move(1),
    arrowleft: onControl ? undefined : () => acts.move(-1),
    " ": onControl && !onSlider ? undefined : acts.reveal,
    d: acts.dig,
    t: acts.readTension,
    s: acts.flip,
    f: acts.freeze,
    r: acts.startAgain,
    n: () => acts.step(1),
    p: () => acts.step(-1),
    ",": () => acts.moveHour(-1),
    ".": () => acts.moveHour(1),
  };
  const vote = Number(key) - 1;
  const act = vote >= 0 && vote < options ? () => acts.vote(vote) : does[key];
  if (act === undefined) return;
  event.preventDefault();
  act();
}
