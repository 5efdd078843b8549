import type { ReactiveController, ReactiveControllerHost } from "lit";
import { nextTurn } from "./turn.js";

/** Width of an element and size of its letters, px; asks for an update when either changes, first drawings one by one. */
export class SizeController implements ReactiveController {
  width = 0;
  /** Px of the page's root letter size. */
  em = 16;
  #observer: ResizeObserver | undefined;
  readonly #host: ReactiveControllerHost & HTMLElement;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    host.addController(this);
  }

  hostConnected(): void {
    this.#observer = new ResizeObserver(() => this.#measure());
    this.#observer.observe(this.#host);
  }

  hostDisconnected(): void {
    this.#observer?.disconnect();
  }

  #measure(): void {
    const width = Math.round(this.#host.clientWidth);
    const em = Number.parseFloat(getComputedStyle(document.documentElement).fontSize);
    if (width === this.width && em === this.em) return;
    const first = this.width === 0;
    this.width = width;
    this.em = em;
    if (first) void nextTurn().then(() => this.#host.requestUpdate());
    else this.#host.requestUpdate();
  }
}
