// Builds the example app of what the package ships, and serves it as a web server would, under a strict policy.
import { mkdtemp, readFile, rm } from "node:fs/promises";
import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { tmpdir } from "node:os";
import { extname, join } from "node:path";
import { build } from "vite";
import { root } from "../../data/reading/files";

const policy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:; base-uri 'none'; form-action 'none'";

const types: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
};

/** The app at an address. */
export interface Site {
  readonly address: string;
  readonly close: () => Promise<void>;
}

export async function site(): Promise<Site> {
  const outDir = await mkdtemp(join(tmpdir(), "vivary-example-"));
  const configFile = join(root, "docs/example-app/vite.config.ts");
  await build({ configFile, logLevel: "silent", build: { outDir, emptyOutDir: true } });
  const server = createServer(async (request, response) => {
    const name = new URL(request.url ?? "/", "http://localhost").pathname.replace(/\/$/, "/index.html");
    const text = await readFile(join(outDir, name)).catch(() => undefined);
    response.writeHead(text ? 200 : 404, {
      "content-type": types[extname(name)] ?? "text/plain",
      "content-security-policy": policy,
    });
    response.end(text);
  });
  await new Promise<void>((ready) => server.listen(0, "127.0.0.1", ready));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: async () => {
      server.closeAllConnections();
      server.close();
      await rm(outDir, { recursive: true });
    },
  };
}
