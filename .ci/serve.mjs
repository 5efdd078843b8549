import { createReadStream, statSync } from "node:fs";
import { createServer } from "node:http";
import { extname, join, sep } from "node:path";

const types = {
  ".css": "text/css; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".webmanifest": "application/manifest+json",
  ".woff2": "font/woff2",
};

/** Serves a folder to this machine only, at the preferred port or, where it is taken, at any free one. */
export function serve(folder, preferredPort) {
  const server = createServer((request, response) => {
    const file = request.method === "GET" || request.method === "HEAD" ? fileOf(folder, request.url) : undefined;
    if (file === undefined) {
      response.writeHead(404, { "content-type": "text/plain" }).end("not found\n");
      return;
    }
    response.writeHead(200, { "content-type": types[extname(file)] ?? "application/octet-stream" });
    if (request.method === "HEAD") response.end();
    else createReadStream(file).pipe(response);
  });
  return new Promise((resolve, reject) => {
    server.on("error", (error) => {
      if (error.code === "EADDRINUSE" || error.code === "EACCES") server.listen(0, "127.0.0.1");
      else reject(error);
    });
    server.on("listening", () => {
      const { port } = server.address();
      console.log(`\nThe playground is at http://127.0.0.1:${port}/  (Ctrl+C ends it)`);
      resolve(server);
    });
    server.listen(preferredPort, "127.0.0.1");
  });
}

/** The file that a request means, never one outside the folder. */
function fileOf(folder, url) {
  try {
    const { pathname } = new URL(url, "http://localhost");
    const file = join(folder, decodeURIComponent(pathname.endsWith("/") ? `${pathname}index.html` : pathname));
    return file.startsWith(folder + sep) && statSync(file).isFile() ? file : undefined;
  } catch {
    return undefined;
  }
}
