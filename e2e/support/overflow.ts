import type { Page } from "@playwright/test";

/**
 * What reaches beyond the sides of the screen where no scrolling brings it in, and what letters run out of their own box.
 * Described by tag, class and first words; empty is good.
 */
export function overflowing(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const describe = (element: Element) =>
      `${element.localName}.${element.getAttribute("class") ?? ""} "${(element.textContent ?? "").trim().slice(0, 40)}"`;
    const isScrolled = (element: Element): boolean => {
      for (let above = element.parentElement; above !== null && above !== document.body; above = above.parentElement) {
        if (/auto|scroll/.test(getComputedStyle(above).overflowX) && above.scrollWidth > above.clientWidth) return true;
      }
      return false;
    };
    const isShown = (element: Element) =>
      element.checkVisibility({ opacityProperty: true, visibilityProperty: true }) &&
      element.closest("[aria-hidden=true], .unseen, option") === null &&
      // What a picture holds is cut off at its frame.
      !element.parentElement?.closest("svg");
    const isBeyond = (element: Element) => {
      const { left, right, width } = element.getBoundingClientRect();
      return width > 1 && (left < -1 || right > innerWidth + 1);
    };
    /** Wider inside than outside, and not meant to be: no scroll bar, no "…". */
    const isBursting = (element: Element) => {
      const { overflowX, textOverflow, display } = getComputedStyle(element);
      if (display === "inline" || /auto|scroll/.test(overflowX) || textOverflow === "ellipsis") return false;
      return element.scrollWidth > element.clientWidth + 1 && element.clientWidth > 1;
    };
    const lettered = "button, h1, h2, h3, h4, label, legend, dt, dd, p, li";
    const all = [...document.body.querySelectorAll("*")].filter(isShown);
    return [
      ...all.filter((one) => isBeyond(one) && !isScrolled(one)).map((one) => `beyond the screen: ${describe(one)}`),
      ...all.filter((one) => one.matches(lettered) && isBursting(one)).map((one) => `out of its box: ${describe(one)}`),
    ];
  });
}
