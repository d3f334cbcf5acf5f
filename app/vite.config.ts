import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { contentPolicy } from "./tools/content-policy.ts";
import { offline } from "./tools/offline.ts";

export default defineConfig({
  base: "./",
  // Unknown addresses answer 404, so that a missing file fails loudly.
  appType: "mpa",
  cacheDir: "../node_modules/.vite",
  plugins: [react(), contentPolicy(), offline()],
  // What the PDF library never gets to use here stays out of the build, and so out of what is kept for offline work.
  resolve: {
    alias: Object.fromEntries(
      ["html2canvas", "canvg", "dompurify"].map((name) => [
        name,
        fileURLToPath(new URL("./papers/absent.ts", import.meta.url)),
      ]),
    ),
  },
  worker: { format: "es" },
  build: { target: "es2023", assetsInlineLimit: 0 },
  // An address in numbers answers wherever "localhost" happens to point. A service worker stays on its port: keep these our own.
  server: { host: "127.0.0.1", port: 4784 },
  preview: { host: "127.0.0.1", port: 4783 },
});
