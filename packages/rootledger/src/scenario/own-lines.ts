import type { Programme } from "../programme/programme.js";
import type { Block } from "./scenario.js";

/**
 * The block as one programme finds it: with the programme's own driplines, if it names any. Emitters stand as far apart as
 * before and each line holds as much water as before; roots are those that such lines grow.
 *
 * @example withOwnLines(block, { lines: { offsetsM: [-0.8, 0, 0.8] } }).lines.offsetsM.length // 3
 */
export function withOwnLines(block: Block, { lines: own }: Pick<Programme, "lines">): Block {
  if (own === undefined) return block;
  const { offsetsM, drainOut, ...lines } = block.lines;
  const content = own.offsetsM.length / offsetsM.length;
  const drains =
    drainOut === undefined ? {} : { drainOut: { ...drainOut, contentLPerTree: drainOut.contentLPerTree * content } };
  return { ...block, lines: { ...lines, offsetsM: own.offsetsM, ...drains } };
}
