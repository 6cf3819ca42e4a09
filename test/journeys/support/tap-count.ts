import type { BrowserContext, Page } from "playwright-core";

/** What hands did on a device since counting began. */
export interface Hands {
  /** Taps on buttons, links, choices and boxes to tick; the tap into a field, and keys of its own, are the field's. */
  readonly taps: number;
  /** Fields something was typed into, each counted once for every time its page was shown. */
  readonly fields: number;
  /** Each tap as "where it stood: what was tapped", in order. */
  readonly tapped: readonly string[];
  /** Each field as "where it stood: its label", in order. */
  readonly filled: readonly string[];
}

const NOTHING: Hands = { taps: 0, fields: 0, tapped: [], filled: [] };

/** Counts in every page of a device, also over reloads and closed pages. */
export async function countHands(device: BrowserContext): Promise<void> {
  await device.addInitScript(`{
    const read = () => JSON.parse(localStorage.getItem("test.hands") ?? '{"tapped":[],"filled":[]}');
    const keep = (hands) => localStorage.setItem("test.hands", JSON.stringify(hands));
    const nameOf = (box) => {
      const label = box.labels?.[0]?.textContent ?? box.getAttribute("aria-label") ?? "?";
      const group = box.closest("fieldset")?.querySelector("legend")?.textContent;
      return location.pathname + location.search + ": " + (group ?? label);
    };
    const lineNow = () => /^Line \\d+/.exec(document.querySelector("h1")?.innerText ?? "")?.[0] ?? location.pathname;
    const TAPPED = "button, a, summary, label:has([type=radio], [type=checkbox])";
    const fill = (name) => {
      const hands = read();
      if (hands.filled.at(-1) !== name) keep({ ...hands, filled: [...hands.filled, name] });
    };
    document.addEventListener("click", ({ target }) => {
      if (target.closest(".number-keys")) return fill(lineNow() + ": " + nameOf(target));
      const control = target.closest(TAPPED);
      if (!control) return;
      const name = control.getAttribute("aria-label") ?? control.innerText?.trim() ?? "";
      keep({ ...read(), tapped: [...read().tapped, lineNow() + ": " + (name || nameOf(control))] });
    }, true);
    document.addEventListener("input", ({ target }) => {
      if (!["text", "textarea", "number", "search"].includes(target.type)) return;
      fill(nameOf(target));
    }, true);
  }`);
}

/** What was counted on this page's device. */
export async function handsOf(page: Page): Promise<Hands> {
  const kept = await page.evaluate(() => localStorage.getItem("test.hands"));
  if (kept === null) return NOTHING;
  const counted = JSON.parse(kept) as Pick<Hands, "tapped" | "filled">;
  return { ...counted, taps: counted.tapped.length, fields: counted.filled.length };
}
