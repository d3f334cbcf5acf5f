import { defineConfig } from "vitest/config";

// Started from the top folder with `-c`; the unit tests run in plain Node so that nothing in core can lean on a browser.
export default defineConfig({
  cacheDir: "node_modules/.vite-unit",
  test: {
    include: ["tests/**/*.test.ts", "tests/**/*.test.tsx"],
    environment: "node",
    pool: "threads",
    setupFiles: ["tests/support/random-seed.ts"],
    testTimeout: 60_000,
  },
});
