import type { Page } from "@playwright/test";
import { EXAMPLES } from "../core/examples/index.ts";
import { AppPage } from "./support/app-page.ts";
import { BoardHand } from "./support/board-hand.ts";
import { expect, test } from "./support/fixtures.ts";

const demo = EXAMPLES.find(({ name }) => name === "awning-lamps")!;
const KEPT = "kept in this browser";

test("an edit is kept within a second, through a reload and the death of the tab", async ({ page }) => {
  await page.clock.install();
  const app = new AppPage(page);
  await app.openEmpty();
  await page.clock.pauseAt(Date.now() + 60_000);
  await app.add("Battery");
  await page.clock.runFor(1000);
  await expect(app.drawingName).toContainText(KEPT);
  await page.clock.resume();
  await page.reload();
  await expect(app.outlineItem("B1, battery")).toBeVisible();
  await app.add("Lamp");
  await expect(app.drawingName).toContainText(KEPT);
  const next = await dieAndComeBack(page);
  await expect(next.outlineItem("B1, battery")).toBeVisible();
  await expect(next.outlineItem("E1, lamp")).toBeVisible();
});

test("a tab that dies in the middle of a drag leaves the drawing as it was", async ({ page }) => {
  const app = new AppPage(page);
  const hand = new BoardHand(app);
  await app.open(`?example=${demo.name}`);
  await app.add("Lamp");
  await expect(app.drawingName).toContainText(KEPT);
  const before = await app.saved();
  await hand.look();
  const { x, y } = hand.sheet.place("la1");
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 60, y + 60, { steps: 3 });
  const next = await dieAndComeBack(page);
  await expect(next.outlineItem("LA1 Awning left, lamp")).toBeVisible();
  expect(await next.saved()).toEqual(before);
});

test("back and forward lose nothing, not even an edit made just before", async ({ page }) => {
  const app = new AppPage(page);
  await app.openEmpty();
  await app.add("Battery");
  await page.goBack();
  await page.goForward();
  await expect(app.outlineItem("B1, battery")).toBeVisible();
});

test("several drawings are kept side by side, renamed, deleted and brought back", async ({ page }) => {
  const app = new AppPage(page);
  const drawings = app.dialog("Drawings");
  await app.openEmpty();
  await app.add("Battery");
  await page.keyboard.press("Escape");
  await app.fill("Title", "First");
  await app.drawingName.click();
  await drawings.getByRole("button", { name: "New drawing" }).click();
  await expect(app.drawingName).toContainText("Untitled drawing");
  await app.add("Motor");
  await expect(app.drawingName).toContainText(KEPT);
  await app.drawingName.click();
  await drawings.getByRole("button", { name: /^First/ }).click();
  await expect(app.outlineItem("B1, battery")).toBeVisible();
  await expect(app.outlineItem("M1, motor")).toHaveCount(0);
  await app.drawingName.click();
  const other = drawings.getByRole("listitem").filter({ hasText: "Untitled drawing" });
  await other.getByRole("button", { name: "Rename" }).click();
  await page.keyboard.type("Second");
  await page.keyboard.press("Enter");
  const second = drawings.getByRole("listitem").filter({ hasText: /^Second/ });
  await second.getByRole("button", { name: "Delete" }).click();
  await expect(second).toHaveCount(0);
  await drawings.getByText("Deleted in the last 30 days (1)").click();
  await second.getByRole("button", { name: "Bring back" }).click();
  await second.getByRole("button", { name: /^Second/ }).click();
  await expect(app.outlineItem("M1, motor")).toBeVisible();
});

const REFUSED: Readonly<Record<string, { readonly text: string | Uint8Array; readonly reason: RegExp }>> = {
  "rubbish.json": { text: "{ this is no circuit", reason: /JSON/ },
  "strange-part.json": {
    text: '{"format":"groundstrap","version":1,"parts":[{"id":"a","kind":"flux-capacitor"}],"wires":[]}',
    reason: /kind.*flux-capacitor/,
  },
  "loose-wire.json": {
    text: '{"format":"groundstrap","version":1,"parts":[],"wires":[{"id":"w1","from":"a.1","to":"b.2"}]}',
    reason: /w1|from/,
  },
  "newer.json": {
    text: '{"format":"groundstrap","version":99,"parts":[],"wires":[]}',
    reason: /99.*newer Groundstrap/,
  },
  "not-text.json": { text: new Uint8Array([0x7b, 0xff, 0xfe, 0x80]), reason: /UTF-8/ },
  "too-large.json": { text: bigFile(5_100_000), reason: /5 MB/ },
  "holiday.svg": { text: '<svg xmlns="http://www.w3.org/2000/svg"/>', reason: /carries no circuit/ },
};

test("a file that can't be used is refused with the reason, and the open drawing is untouched", async ({ page }) => {
  const app = new AppPage(page);
  await app.openEmpty();
  await app.add("Battery");
  for (const [name, { text, reason }] of Object.entries(REFUSED)) {
    await app.openFile({ name, text });
    await expect(page.getByRole("alert").filter({ hasText: name })).toContainText(reason);
    await expect(app.outlineItem("B1, battery")).toBeVisible();
  }
  await expect(app.undo).toBeEnabled();
});

test("a file of nearly 5 MB opens, and is itself again when saved", async ({ page }) => {
  const app = new AppPage(page);
  await app.open();
  await app.openFile({ name: "large.json", text: bigFile(4_900_000) });
  await expect(app.outlineItem("B1, battery")).toBeVisible();
  expect(await app.saved()).toMatchObject({ padding: { length: expect.any(Number) } });
});

test("a picture with a script in it opens as a drawing, and the script never runs", async ({ page }) => {
  const app = new AppPage(page);
  const script = "window.wasRun = true";
  const hostile = `<img src=x onerror="${script}"><script>${script}</script>`;
  const circuit = {
    ...demo.document,
    sheet: { title: hostile },
    parts: demo.document.parts.map((part) => ({ ...part, label: hostile })),
  };
  const json = JSON.stringify(circuit).replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`);
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" onload="${script}"><script>${script}</script>
    <metadata><circuit xmlns="urn:groundstrap:circuit:1">${json}</circuit></metadata></svg>`;
  await app.open();
  await app.openFile({ name: "hostile.svg", text: svg });
  await expect(app.drawingName).toContainText(hostile);
  await page.getByRole("button", { name: "Papers" }).click();
  await expect(app.dialog("Papers").getByRole("img").first()).toBeVisible();
  expect(await page.evaluate(() => "wasRun" in window)).toBe(false);
});

test("rubbish on the clipboard is refused with the reason, and nothing is added", async ({ page, context }) => {
  await context.grantPermissions(["clipboard-read", "clipboard-write"]);
  const app = new AppPage(page);
  await app.openEmpty();
  for (const rubbish of ["{[", "https://example.com", '{"format":"groundstrap","version":1,"parts":7,"wires":[]}']) {
    await page.evaluate((text) => navigator.clipboard.writeText(text), rubbish);
    await page.keyboard.press("Control+v");
    await expect(app.said).toContainText("The clipboard holds no parts");
    await expect(app.outline).toContainText("The drawing is empty");
  }
});

test("a second tab on the same drawing only looks, follows, and can take over", async ({ page, context }) => {
  const app = new AppPage(page);
  await app.openEmpty();
  await app.add("Battery");
  await expect(app.drawingName).toContainText(KEPT);
  const second = new AppPage(await context.newPage());
  await second.open(new URL(page.url()).search);
  await expect(second.page.getByRole("alert")).toContainText("being edited in another tab");
  await second.add("Motor");
  await expect(second.outlineItem("M1, motor")).toHaveCount(0);
  await app.add("Lamp");
  await expect(second.outlineItem("E1, lamp")).toBeVisible();
  await second.command("edit here and not in the other tab");
  await expect(page.getByRole("alert")).toContainText("being edited in another tab");
  await second.add("Motor");
  await expect(app.outlineItem("M1, motor")).toBeVisible();
});

test("two tabs that both edit never overwrite each other", async ({ page, context }) => {
  await context.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, "locks"));
  const app = new AppPage(page);
  await app.openEmpty();
  await app.add("Battery");
  await expect(app.drawingName).toContainText(KEPT);
  const second = new AppPage(await context.newPage());
  await second.open(new URL(page.url()).search);
  await second.add("Motor");
  await expect(second.drawingName).toContainText(KEPT);
  await app.add("Lamp");
  await expect(app.drawingName).toContainText("NOT kept: changed in another tab");
  await page.getByRole("alert").getByRole("button", { name: "Go on with a copy" }).click();
  await expect(app.drawingName).toContainText(KEPT);
  await expect(app.outlineItem("E1, lamp")).toBeVisible();
  await second.page.reload();
  await expect(second.outlineItem("M1, motor")).toBeVisible();
  await expect(second.outlineItem("E1, lamp")).toHaveCount(0);
});

const REFUSALS: Readonly<Record<string, { readonly refuse: () => void; readonly reason: string }>> = {
  "a browser without a database": {
    refuse: () => {
      IDBFactory.prototype.open = () => {
        throw new DOMException("denied", "SecurityError");
      };
    },
    reason: "refuses to keep anything",
  },
  "a full disk": {
    refuse: () => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException("full", "QuotaExceededError");
      };
    },
    reason: "no room left",
  },
};

for (const [name, { refuse, reason }] of Object.entries(REFUSALS)) {
  test(`${name} is said, and the file is offered`, async ({ page }) => {
    await page.addInitScript(refuse);
    const app = new AppPage(page);
    await app.openEmpty();
    await app.add("Battery");
    await expect(app.drawingName).toContainText("NOT kept");
    const alert = page.getByRole("alert").filter({ hasText: reason });
    const [download] = await Promise.all([
      page.waitForEvent("download"),
      alert.getByRole("button", { name: "Save to a file" }).click(),
    ]);
    expect(download.suggestedFilename()).toBe("untitled-drawing.json");
    await expect(app.outlineItem("B1, battery")).toBeVisible();
    const asked = page.waitForEvent("dialog");
    await page.close({ runBeforeUnload: true });
    expect((await asked).type(), "it asks before it lets the drawing go").toBe("beforeunload");
  });
}

test("a browser that keeps nothing at all still opens the app", async ({ page }) => {
  await page.addInitScript(() => {
    Object.defineProperty(window, "localStorage", {
      get: () => {
        throw new DOMException("denied", "SecurityError");
      },
    });
  });
  await page.addInitScript(REFUSALS["a browser without a database"]!.refuse);
  const app = new AppPage(page);
  await app.openEmpty();
  await app.add("Battery");
  await expect(app.outlineItem("B1, battery")).toBeVisible();
});

/** A circuit with so much in a key nobody knows that the file has about this many bytes. */
function bigFile(bytes: number): string {
  const lines = Array.from({ length: Math.ceil(bytes / 9000) }, () => "x".repeat(8997));
  const parts = [{ id: "b1", kind: "battery" }];
  return JSON.stringify({ format: "groundstrap", version: 1, parts, wires: [], padding: lines });
}

/** The tab's process dies without another word; a new one opens the app as it finds it. */
async function dieAndComeBack(page: Page): Promise<AppPage> {
  const context = page.context();
  const session = await context.newCDPSession(page);
  const crashed = page.waitForEvent("crash");
  session.send("Page.crash").catch(() => undefined);
  await crashed;
  const next = new AppPage(await context.newPage());
  await next.open();
  return next;
}
