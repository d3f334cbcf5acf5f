import { AxeBuilder } from "@axe-core/playwright";
import { expect, test as base, type Page } from "@playwright/test";

export { expect };

/**
 * The project's `test`: while it runs, no request may leave the machine, nothing may break the page's content policy and
 * no error may be logged or go unhandled.
 */
export const test = base.extend<{ acquainted: void; savingAsDownload: void; stayingHome: void }>({
  // Hints for the first minutes come and go with what is done, and the Board makes room for them; `hints.spec.ts` looks at them.
  acquainted: [
    async ({ context }, use) => {
      await context.addInitScript(() => {
        try {
          const key = "groundstrap preferences";
          if (localStorage.getItem(key) === null)
            localStorage.setItem(key, JSON.stringify({ seen: ["words", "flick", "snag", "draw"] }));
        } catch {
          // A browser that keeps nothing shows the hints.
        }
      });
      await use();
    },
    { auto: true },
  ],

  // The browser's own dialog for saving can't be answered from here; without it files come as downloads.
  savingAsDownload: [
    async ({ context }, use) => {
      await context.addInitScript(() => Reflect.deleteProperty(window, "showSaveFilePicker"));
      await use();
    },
    { auto: true },
  ],
  stayingHome: [
    async ({ context }, use) => {
      const trouble: string[] = [];
      context.on("request", (request) => {
        const { protocol, hostname } = new URL(request.url());
        if (/^(https?|wss?):$/.test(protocol) && hostname !== "127.0.0.1") trouble.push(`asked for ${request.url()}`);
      });
      context.on("weberror", (error) => trouble.push(`unhandled: ${error.error().message}`));
      context.on("console", (message) => {
        if (message.type() === "error") trouble.push(message.text());
      });
      await use();
      expect(trouble, "requests to other hosts, policy violations and errors").toEqual([]);
    },
    { auto: true },
  ],
});

/**
 * Fails with the rules broken and the elements that break them; `rules` are all or some by name. The canvas has no elements to look
 * at: test its colours apart.
 */
export async function expectAccessible(page: Page, rules?: readonly string[]): Promise<void> {
  const axe = new AxeBuilder({ page }).setLegacyMode();
  if (rules === undefined) axe.withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"]);
  else axe.withRules([...rules]);
  const { violations } = await axe.analyze();
  const found = violations.map(({ id, help, nodes }) => ({ id, help, at: nodes.map((node) => node.target.join(" ")) }));
  expect(found).toEqual([]);
}
