import type { Field } from "./fields.js";
import type { Scene } from "./scene.js";

/** Version of the link format; older links are read by their own rules. */
const linkFormat = "1";

/** What a link held that could not be used. */
export interface LinkFault {
  readonly key: string;
  readonly received: string;
  /** Undefined where the key itself is unknown. */
  readonly rule: string | undefined;
}

/** The part after `#`: only what differs from the initial scene. @example linkOf(scene, initial, fields) // "v=1&a.pulses=3" */
export function linkOf(scene: Scene, initial: Scene, fields: readonly Field[]): string {
  const parts = new URLSearchParams();
  for (const field of fields) {
    const text = field.textOf(scene);
    if (text !== field.textOf(initial)) parts.set(field.key, text);
  }
  const rest = parts.toString();
  return rest === "" ? "" : `v=${linkFormat}&${rest}`;
}

/** The initial scene with everything usable from a link; what is not usable is reported and left as it was. */
export function sceneFromLink(
  hash: string,
  initial: Scene,
  fields: readonly Field[],
): { readonly scene: Scene; readonly faults: readonly LinkFault[] } {
  const faults: LinkFault[] = [];
  let scene = initial;
  for (const [key, text] of new URLSearchParams(hash.replace(/^#/, "").slice(0, 4000))) {
    if (key === "v") {
      if (text !== linkFormat) faults.push({ key, received: short(text), rule: linkFormat });
      continue;
    }
    const field = fields.find((candidate) => candidate.key === key);
    const next = field?.readInto(scene, text);
    if (next === undefined) faults.push({ key: short(key), received: short(text), rule: field?.rule });
    else scene = next;
  }
  return { scene, faults };
}

const short = (text: string): string => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
