import type { Words } from "#words";
import { itemNamed, type Item, type Step } from "#kit";
import type { Fitted } from "#readiness";
import type { Ask, Line } from "#web/act/lines.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { plainSource, sourcesFor, stockIn, type Source } from "#web/kit-view/stock-view.ts";

/**
 * What a step renews and this turnaround has not yet fitted, of which nobody has to say anything: it bears no printed
 * date, and there is one shelf lot that it can come from, or none.
 */
export function plainRenewals(open: OpenKit, step: Step): readonly Item[] {
  return step.renews
    .map((id) => itemNamed(open.pattern, id))
    .filter((item) => item !== undefined)
    .filter((item) => item.life.kind !== "printed")
    .filter((item) => open.kit.contents[item.id]?.turnaround !== open.turnaround.id)
    .filter((item) => {
      const sources = sourcesOf(open, item);
      return sources.length === 0 || plainSource(sources) !== undefined;
    });
}

/** True where nothing is left to be said of what a step renews: all of it is fitted, or is fitted with the answer. */
export function isPlainlyRenewed(open: OpenKit, step: Step): boolean {
  const plain = plainRenewals(open, step).map(({ id }) => id);
  return step.renews.every((id) => plain.includes(id) || open.kit.contents[id]?.turnaround === open.turnaround.id);
}

/** A new one fitted today, off the shelf lot that it can only have come from. */
export function fittedPlainly(open: OpenKit, item: Item) {
  const sources = sourcesOf(open, item);
  const drawn = sources.find(({ key }) => key === plainSource(sources))?.drawn;
  const fitted: Fitted = { item: item.id, fitted: open.view.today, quantity: item.quantity };
  return { ...fitted, ...(drawn?.lot !== undefined && { batch: drawn.lot }), ...(drawn && { drawn }) };
}

function sourcesOf({ view, kit }: OpenKit, { id }: Item): readonly Source[] {
  return sourcesFor(view, stockIn(view), kit, id);
}

/** ", new today: wrapping, bands", to follow the words of an answer; nothing where nothing is fitted with it. */
export function sayNew(items: readonly Item[], words: Words["turnaroundLine"]): string {
  return items.length === 0 ? "" : words.newToday({ items: items.map(({ name }) => name).join(", ") });
}

/** What is fitted with the answer to an ask: what its step renews, with the last thing that is asked there. */
export function renewedWith(open: OpenKit, { step, asks }: Line, group: readonly Ask[]): readonly Item[] {
  const isLast = asks.every((one) => one.answered || group.some(({ key }) => key === one.key));
  return isLast ? plainRenewals(open, step) : [];
}
