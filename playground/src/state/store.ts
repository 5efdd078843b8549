import type { Field } from "./fields.js";
import { keepWork } from "./kept-work.js";
import { type LinkFault, linkOf, sceneFromLink } from "./link.js";
import type { Scene } from "./scene.js";

/** Browsers refuse an address that is written too often; while a slider moves it is written so often at most. */
const betweenWritesMs = 300;

/** Holds the scene, tells listeners of changes and keeps the address bar in step. The only place that reads the link. */
export class Store extends EventTarget {
  readonly initial: Scene;
  readonly fields: readonly Field[];
  scene: Scene;
  faults: readonly LinkFault[];
  #timer = 0;
  #nextWriteMs = 0;
  #written: string;

  constructor(initial: Scene, fields: readonly Field[]) {
    super();
    this.initial = initial;
    this.fields = fields;
    this.#written = location.hash;
    ({ scene: this.scene, faults: this.faults } = sceneFromLink(location.hash, initial, fields));
    addEventListener("hashchange", () => this.#readLink());
  }

  change(edit: (scene: Scene) => Scene): void {
    this.scene = edit(this.scene);
    this.dispatchEvent(new Event("scene-changed"));
    clearTimeout(this.#timer);
    const waitMs = this.#nextWriteMs - performance.now();
    if (waitMs <= 0) this.#writeLink();
    else this.#timer = window.setTimeout(() => this.#writeLink(), waitMs);
  }

  /** A change that the back button undoes. */
  go(edit: (scene: Scene) => Scene): void {
    clearTimeout(this.#timer);
    this.#writeLink();
    this.scene = edit(this.scene);
    this.#written = this.linkTo(this.scene);
    history.pushState(null, "", this.#written === "" ? location.pathname + location.search : this.#written);
    this.dispatchEvent(new Event("scene-changed"));
  }

  /** The part of the address that reopens a scene, `#` included; empty for the scene that needs none. */
  linkTo(scene: Scene): string {
    const link = linkOf(scene, this.initial, this.fields);
    return link === "" ? "" : `#${link}`;
  }

  /** Loads the page anew at the same scene, with one key of the link left out. */
  reloadWithout(key: string): void {
    clearTimeout(this.#timer);
    const parts = new URLSearchParams(this.linkTo(this.scene).replace(/^#/, ""));
    parts.delete(key);
    history.replaceState(null, "", `${location.pathname}${location.search}${parts.size > 0 ? `#${parts}` : ""}`);
    location.reload();
  }

  forgetFaults(): void {
    this.faults = [];
    this.dispatchEvent(new Event("scene-changed"));
  }

  #writeLink(): void {
    this.#nextWriteMs = performance.now() + betweenWritesMs;
    this.#written = this.linkTo(this.scene);
    keepWork(this.#written);
    history.replaceState(null, "", this.#written === "" ? location.pathname + location.search : this.#written);
  }

  #readLink(): void {
    if (location.hash === this.#written) return;
    this.#written = location.hash;
    ({ scene: this.scene, faults: this.faults } = sceneFromLink(location.hash, this.initial, this.fields));
    this.dispatchEvent(new Event("scene-changed"));
  }
}
