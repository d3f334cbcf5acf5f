import { readFileSync } from "node:fs";
import { EXAMPLES } from "../core/examples/index.ts";
import { readCircuitFile } from "../core/file/index.ts";
import { circuitPayload } from "../core/papers/index.ts";
import { AppPage } from "./support/app-page.ts";
import { expect, test } from "./support/fixtures.ts";
import { readPdf } from "./support/read-pdf.ts";

// A5 landscape in points: 210 and 148 mm (ISO 216) at 72 / 25.4 points a millimetre.
const A5_POINTS = [0, 0, (210 * 72) / 25.4, (148 * 72) / 25.4];

test("the card as a PDF is true to size, can be searched, and opens again as the drawing", async ({ page }) => {
  const app = new AppPage(page);
  await app.open("?example=awning-lamps");
  await app.command("papers");
  const saved = page.waitForEvent("download");
  await app.dialog("Papers").getByRole("button", { name: "Save as PDF" }).click();
  const path = await (await saved).path();
  const { pages, attachments } = await readPdf(path);
  expect(pages.length).toBeGreaterThan(1);
  for (const { box } of pages) box.forEach((edge, at) => expect(edge).toBeCloseTo(A5_POINTS[at]!, 1));
  expect(pages[0]!.text).toContain("Battery negative off first, fuse in last.");
  expect(pages.map(({ text }) => text).join("\n")).toContain("Ω");
  const read = readCircuitFile(attachments["circuit.json"]!);
  if ("error" in read) throw new Error(read.error);
  await page.keyboard.press("Escape");
  await app.newDrawing();
  await app.openFile({ name: "card.pdf", text: readFileSync(path) });
  await expect(app.drawingName).toContainText(read.document.sheet!.title!);
});

test("all papers come as one PDF, and can be called off", async ({ page }) => {
  test.slow();
  const app = new AppPage(page);
  await app.open("?example=camper-put-right");
  await app.command("papers");
  const papers = app.dialog("Papers");
  const all = papers.getByRole("button", { name: "Save all papers as one PDF" });
  await all.click();
  await expect(papers.getByRole("progressbar")).toBeVisible();
  // Not waiting for it to hold still: the line grows while pages are made, and a person presses it all the same.
  await papers.getByRole("button", { name: "Cancel" }).click({ force: true });
  await expect(all).toBeVisible();
  const saved = page.waitForEvent("download");
  await all.click();
  const { pages } = await readPdf(await (await saved).path());
  for (const title of ["Vehicle card", "Cut list", "Test sheet", "Change log"])
    expect(pages.some(({ text }) => text.startsWith(title))).toBe(true);
});

test("what the typeface lacks shows as a box, and is told", async ({ page }) => {
  const app = new AppPage(page);
  await app.open("?example=awning-lamps-put-right");
  const drawing = await app.saved();
  await app.openFile({ name: "a.json", text: JSON.stringify({ ...drawing, sheet: { title: "Лампа 灯 µΩ²°" } }) });
  await app.command("papers");
  const saved = page.waitForEvent("download");
  await app.dialog("Papers").getByRole("button", { name: "Save as PDF" }).click();
  const { pages } = await readPdf(await (await saved).path());
  expect(pages[0]!.text).toContain("µΩ²°".normalize("NFKC"));
  await expect(page.getByText(/typeface lacks Л а м п/)).toBeVisible();
});

test("a scanned card opens from a link, from a paste and from its field; a damaged one is refused and nothing is lost", async ({
  page,
}) => {
  const app = new AppPage(page);
  const lamps = EXAMPLES[0]!.document;
  const payload = circuitPayload(lamps);
  await app.open(`#${payload}`);
  await expect(app.drawingName).toContainText(lamps.sheet!.title!);
  expect(new URL(page.url()).hash).toBe("");
  await app.newDrawing();
  await app.command("papers");
  const papers = app.dialog("Papers");
  await papers.getByText("Open from a code").click();
  const field = papers.getByLabel(/Text of a scanned card/);
  await field.fill(payload.slice(0, -9));
  await papers.getByRole("button", { name: "Open the drawing" }).click();
  await expect(page.getByText(/damaged or cut short/)).toBeVisible();
  await field.fill(payload);
  await papers.getByRole("button", { name: "Open the drawing" }).click();
  await expect(app.drawingName).toContainText(lamps.sheet!.title!);
  expect((await app.saved()).wires).toEqual(lamps.wires);
  await app.newDrawing();
  await page.evaluate((text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData("text/plain", text);
    document.body.dispatchEvent(new ClipboardEvent("paste", { clipboardData, bubbles: true, cancelable: true }));
  }, payload);
  await expect(app.drawingName).toContainText(lamps.sheet!.title!);
});
