import { defineConfig, devices } from "@playwright/test";
import { chromiumPath } from "./browser.mjs";

const address = "http://127.0.0.1:4273";
const executablePath = chromiumPath();

export default defineConfig({
  testDir: ".",
  outputDir: "../test-results",
  snapshotPathTemplate: "{testDir}/pictures/{testFilePath}/{arg}{ext}",
  fullyParallel: false,
  workers: 2,
  forbidOnly: Boolean(process.env["CI"]),
  reporter: [["list"]],
  timeout: 60_000,
  expect: { timeout: 7_000, toHaveScreenshot: { maxDiffPixelRatio: 0.001 } },
  use: {
    baseURL: address,
    serviceWorkers: "block",
    actionTimeout: 7_000,
    trace: "retain-on-failure",
    launchOptions: {
      ...(executablePath && { executablePath }),
      // The same letter shapes on every machine.
      args: ["--font-render-hinting=none", "--disable-lcd-text"],
    },
  },
  projects: [
    {
      name: "desktop",
      testMatch: "*.spec.ts",
      testIgnore: "*.touch.spec.ts",
      use: { ...devices["Desktop Chrome"], viewport: { width: 1280, height: 800 } },
    },
    { name: "touch", testMatch: "*.touch.spec.ts", use: { ...devices["Pixel 7"] } },
    {
      name: "bench",
      testMatch: "*.bench.ts",
      timeout: 300_000,
      use: { ...devices["Desktop Chrome"], viewport: { width: 1600, height: 900 }, trace: "off" },
    },
  ],
  webServer: {
    command: "npx vite preview app --port 4273 --strictPort",
    cwd: "..",
    url: address,
    reuseExistingServer: false,
  },
});
