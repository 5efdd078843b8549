import type { SoilColours } from "./soil-painter.js";

/** The theme's colours as canvas can use them. */
export function soilColours(): SoilColours {
  return {
    dry: resolved("--water-dry"),
    middle: resolved("--water-mid"),
    full: resolved("--water-full"),
    halo: resolved("--on-water-halo"),
    thirsty: resolved("--on-water-thirsty"),
    airless: resolved("--on-water-airless"),
    root: resolved("--on-water-root"),
  };
}

function resolved(token: string): string {
  const probe = document.createElement("span");
  probe.style.color = `var(${token})`;
  document.body.append(probe);
  const colour = getComputedStyle(probe).color;
  probe.remove();
  return colour;
}

const darkDevice = matchMedia("(prefers-color-scheme: dark)");
const printing = matchMedia("print");

/** Calls back whenever the colours may have changed. Returns the undoing of it. */
export function onColoursChanged(then: () => void): () => void {
  const watcher = new MutationObserver(then);
  watcher.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
  darkDevice.addEventListener("change", then);
  printing.addEventListener("change", then);
  return () => {
    watcher.disconnect();
    darkDevice.removeEventListener("change", then);
    printing.removeEventListener("change", then);
  };
}
