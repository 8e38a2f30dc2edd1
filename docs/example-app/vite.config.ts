import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

export default defineConfig({
  root: fileURLToPath(new URL(".", import.meta.url)),
  base: "./",
  cacheDir: "../../.cache/vite",
  build: { target: "es2022", outDir: "../../.cache/example-app", emptyOutDir: true },
});
