/** One soil and one programme of a comparison file, as a scenario file under a name of its own. */
export function scenarioFileOf(comparison: object, soil: number, programme: number, name: string): object {
  const {
    remark: _,
    soils,
    programmes,
    ...common
  } = comparison as {
    readonly remark?: string;
    readonly soils: readonly Named[];
    readonly programmes: readonly Named[];
  };
  return { ...common, name, soil: alone(soils[soil]!), programme: alone(programmes[programme]!) };
}

interface Named {
  readonly name: string;
}

/** A name without the number or letter that told it apart from others. @example alone({ name: "A: daily" }).name // "daily" */
const alone = (part: Named): object => ({ ...part, name: part.name.replace(/^[1-4A-D]: /, "") });
