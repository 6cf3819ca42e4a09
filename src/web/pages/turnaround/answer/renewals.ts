import { itemNamed, type Item, type Step } from "#kit";
import type { Fitted } from "#readiness";
import type { OpenKit } from "../../../kit-view/at-hand.ts";
import { plainSource, sourcesFor, stockIn, type Source } from "../../../kit-view/stock-view.ts";

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

/** "Done, new ones fitted today: wrapping, bands"; the plain words where nothing is fitted with the answer. */
export function sayDone(items: readonly Item[]): string | undefined {
  if (items.length === 0) return undefined;
  return `Done, new today: ${items.map(({ name }) => name).join(", ")}`;
}
