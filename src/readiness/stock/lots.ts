import type { Pattern } from "#kit";
import type { Finding, FittedItem, KitState } from "../state.ts";
import type { Recall, StockPart } from "./part-state.ts";
import { isSameLot, type PartShelf, type Stock } from "./shelves.ts";

/** A kit that holds something of a lot, as one of its items. */
export interface LotInKit {
  readonly kit: KitState;
  readonly item: string;
  readonly fitted: FittedItem;
  /** The finding that a recall of it raised, open or put right. */
  readonly finding?: Finding;
}

/** Everything that holds a lot. */
export interface LotHolders {
  readonly kits: readonly LotInKit[];
  readonly shelves: readonly { readonly shelf: PartShelf; readonly count: number }[];
}

/** What holds a lot is asked of all of these. */
export interface LotAsked {
  readonly part: StockPart;
  readonly lot: string;
  readonly kits: readonly KitState[];
  readonly stock: Stock;
}

/** The parts that are fitted as an item of a pattern, of those that are not retired. */
export function partsFor(
  parts: readonly StockPart[],
  pattern: Pick<Pattern, "id">,
  item: string,
): readonly StockPart[] {
  return parts.filter((part) => part.retired === undefined && isFor(part, pattern.id, item));
}

/**
 * Every kit and every shelf that holds a lot. A kit holds it where the part came off a shelf with that lot, or where the
 * item that it is fitted as carries that batch. Kits that are away count too; kits taken off charge do not.
 */
export function holdersOf({ part, lot, kits, stock }: LotAsked): LotHolders {
  const shelves = [...(stock.get(part.id)?.values() ?? [])].flatMap((shelf) => {
    const found = shelf.lots.find((one) => one.lot !== undefined && isSameLot(one.lot, lot));
    return found ? [{ shelf, count: found.count }] : [];
  });
  const onCharge = kits.filter(({ retired }) => retired === undefined);
  return { kits: onCharge.flatMap((kit) => itemsOfLot(kit, part, lot)), shelves };
}

function itemsOfLot(kit: KitState, part: StockPart, lot: string): readonly LotInKit[] {
  return Object.values(kit.contents).flatMap((fitted) => {
    if (!isLot(kit, fitted, part, lot)) return [];
    const finding = kit.findings.findLast((one) => isAbout(one, fitted, part, lot));
    return [{ kit, item: fitted.item, fitted, ...(finding && { finding }) }];
  });
}

function isLot(kit: KitState, { drawn, batch, item }: FittedItem, part: StockPart, lot: string): boolean {
  const isDrawn = drawn?.part === part.id && drawn.lot !== undefined && isSameLot(drawn.lot, lot);
  const isItem = isFor(part, kit.pattern.split("@", 1)[0]!, item);
  return isDrawn || (isItem && (drawn?.part ?? part.id) === part.id && batch !== undefined && isSameLot(batch, lot));
}

/** Raised for this lot since the item was fitted: an older one was about what was there before. */
function isAbout({ item, note, raised }: Finding, fitted: FittedItem, part: StockPart, lot: string): boolean {
  const isSince = Date.parse(raised.at) >= Date.parse(fitted.mark.at);
  return item === fitted.item && isSince && note?.startsWith(recallWords(part, lot)) === true;
}

function isFor(part: StockPart, pattern: string, item: string): boolean {
  return part.items.some((one) => one.pattern === pattern && one.item === item);
}

/** How the note of a finding begins that a recall raised. */
export function recallWords({ name }: Pick<StockPart, "name">, lot: string): string {
  return `${name}, lot ${lot} recalled`;
}

/** True for a finding that a recall of a part raised: nobody found anything wrong with the kit. */
export function isOfRecall({ mode, note }: Finding, parts: readonly StockPart[]): boolean {
  if (mode !== "other" || note === undefined) return false;
  return parts.some((part) => part.recalls.some(({ lot }) => note.startsWith(recallWords(part, lot))));
}

/** A finding that a recall raises on a kit: in the recall's own words. */
export function recallNote(part: Pick<StockPart, "name">, { lot, reason }: Pick<Recall, "lot" | "reason">): string {
  return `${recallWords(part, lot)}: ${reason}`;
}
