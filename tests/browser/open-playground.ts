import { accessSync, constants, existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { type BrowserContextOptions, chromium, type Page } from "playwright";
import { preview } from "vite";

const playground = fileURLToPath(new URL("../../playground", import.meta.url));

/** The built playground in Chromium, served on a free port of this machine. */
export interface Opened {
  /** Address of the page, with its closing slash. */
  readonly url: string;
  /** A page of a fresh context: no storage, no cache. */
  newPage(options?: BrowserContextOptions): Promise<Watched>;
  close(): Promise<void>;
}

/** A page and what went wrong in it: console errors, uncaught errors, failed or foreign requests. */
export interface Watched {
  readonly page: Page;
  readonly troubles: readonly string[];
}

export async function openPlayground(): Promise<Opened> {
  if (!existsSync(`${playground}/dist/index.html`)) {
    throw new Error("the browser tests require the built playground: npm run build");
  }
  const server = await preview({
    root: playground,
    logLevel: "error",
    preview: { host: "127.0.0.1", port: 0, strictPort: true, open: false },
  });
  const url = server.resolvedUrls?.local[0];
  if (url === undefined) throw new Error("the playground was served at no local address");
  const browser = await chromium.launch({ executablePath: browserPath(), args: launchArguments });
  return {
    url,
    async newPage(options) {
      const context = await browser.newContext(options);
      const page = await context.newPage();
      const troubles: string[] = [];
      page.on("console", (message) => {
        if (message.type() === "error") troubles.push(`console: ${message.text()}`);
      });
      page.on("pageerror", (error) => troubles.push(`error: ${error.message}`));
      page.on("requestfailed", (request) => {
        // A page that is left or loaded anew gives up what was still on its way.
        const reason = request.failure()?.errorText;
        if (reason !== "net::ERR_ABORTED") troubles.push(`failed: ${request.url()} ${reason}`);
      });
      page.on("request", (request) => {
        if (!request.url().startsWith(url) && !/^(data|blob):/.test(request.url())) {
          troubles.push(`foreign: ${request.url()}`);
        }
      });
      return { page, troubles };
    },
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

/** Root may not use the sandbox; the rest keeps Chromium from calling home while tests run. */
export const launchArguments = [
  "--no-sandbox",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-default-apps",
  "--disable-quic",
  "--disable-sync",
];

export function browserPath(): string {
  const usual = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable"];
  const paths = [process.env.CHROMIUM, ...usual.map((name) => `/usr/bin/${name}`)];
  const found = paths.find((path) => path !== undefined && path !== "" && isProgram(path));
  if (found === undefined) throw new Error("the browser tests require Chromium: npm test installs it, or set CHROMIUM");
  return found;
}

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
