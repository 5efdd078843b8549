import { html, type TemplateResult } from "lit";

/** Something folded away whose code comes when it is first unfolded. */
export interface Folded {
  readonly summary: string;
  readonly open: boolean;
  readonly load: () => Promise<unknown>;
  readonly content: TemplateResult;
}

export function lazyDetails({ summary, open, load, content }: Folded): TemplateResult {
  const toggled = (event: Event): void => {
    if ((event.target as HTMLDetailsElement).open) void load();
  };
  return html`<details class="folded" ?open=${open} @toggle=${toggled}><summary>${summary}</summary>${content}</details>`;
}
