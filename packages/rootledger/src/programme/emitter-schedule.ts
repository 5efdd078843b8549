/** Driplines that empty through their lowest emitters when the valve closes. */
export interface LineDrain {
  /** Water in the full lines along one tree, L. */
  readonly contentLPerTree: number;
  /** Time in which full lines run empty, h; the outflow is even over it. */
  readonly drainHours: number;
  /** Share of the trees, at the low end, that receive all of it. */
  readonly lowTreesFraction: number;
}

/** What leaves the emitters, constant between moments; part i ends at `momentsH[i]` and the last part never ends. */
export interface EmitterSchedule {
  readonly momentsH: Float64Array;
  /** 1 while emitters run at their flow, 0 while the lines fill or the valve is closed. */
  readonly flowing: Float64Array;
  /** Water that drains out of the lines, L/h per tree as a mean over all trees. */
  readonly drainingLPerH: Float64Array;
}

/**
 * From openings and closings of the valve to what leaves the emitters. With lines that drain, every opening first fills
 * what has drained, at the valve's flow and with nothing at the emitters; every closing lets the lines empty. Valve litres =
 * emitter litres + drained litres + what is still in the lines.
 *
 * @param valveH on, off, on, off ... h, as `valveEvents` gives them
 * @param treeFlowLPerH flow of the valve for one tree
 * @throws RangeError if a quantity of the drain is not above 0.
 * @example emitterSchedule(Float64Array.of(6, 7), 32, { contentLPerTree: 1.6, drainHours: 2, lowTreesFraction: 0.1 }).momentsH // [6, 6.05, 7, 9]
 */
export function emitterSchedule(valveH: Float64Array, treeFlowLPerH: number, drain?: LineDrain): EmitterSchedule {
  if (drain === undefined) {
    const flowing = Float64Array.from({ length: valveH.length + 1 }, (_, i) => i & 1);
    return { momentsH: valveH, flowing, drainingLPerH: new Float64Array(valveH.length + 1) };
  }
  const { contentLPerTree, drainHours } = drain;
  if (!(contentLPerTree > 0 && drainHours > 0 && treeFlowLPerH > 0)) {
    throw new RangeError(
      `emitterSchedule requires flow, content and drain hours above 0: got ${treeFlowLPerH}, ${contentLPerTree}, ${drainHours}`,
    );
  }
  const drainLPerH = contentLPerTree / drainHours;
  const momentsH: number[] = [];
  const flowing: number[] = [];
  const drainingLPerH: number[] = [];
  const until = (atH: number, flow: 0 | 1, outLPerH: number): void => {
    if (momentsH.length > 0 && !(atH > momentsH[momentsH.length - 1])) return;
    momentsH.push(atH);
    flowing.push(flow);
    drainingLPerH.push(outLPerH);
  };
  let inLinesL = 0;
  let closedAtH = 0;
  for (let e = 0; e < valveH.length; e += 2) {
    const onH = valveH[e];
    const offH = valveH[e + 1];
    const emptyAtH = closedAtH + inLinesL / drainLPerH;
    if (emptyAtH < onH) {
      if (inLinesL > 0) until(emptyAtH, 0, drainLPerH);
      until(onH, 0, 0);
      inLinesL = 0;
    } else {
      until(onH, 0, drainLPerH);
      inLinesL -= (onH - closedAtH) * drainLPerH;
    }
    const fullAtH = onH + (contentLPerTree - inLinesL) / treeFlowLPerH;
    if (fullAtH < offH) {
      until(fullAtH, 0, 0);
      until(offH, 1, 0);
      inLinesL = contentLPerTree;
    } else {
      until(offH, 0, 0);
      inLinesL += (offH - onH) * treeFlowLPerH;
    }
    closedAtH = offH;
  }
  if (inLinesL > 0) until(closedAtH + inLinesL / drainLPerH, 0, drainLPerH);
  return {
    momentsH: Float64Array.from(momentsH),
    flowing: Float64Array.from([...flowing, 0]),
    drainingLPerH: Float64Array.from([...drainingLPerH, 0]),
  };
}
