/** One soil and one programme of a comparison file, as a scenario file under a name of its own. */
export function scenarioFileOf(comparison: object, soil: number, programme: number, name: string): object {
  const {
    remark: _,
    soils,
    programmes,
    ...common
  } = comparison as {
    readonly remark?: string;
    readonly soils: readonly object[];
    readonly programmes: readonly object[];
  };
  return { ...common, name, soil: soils[soil], programme: programmes[programme] };
}
