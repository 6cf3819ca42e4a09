import type { ShelfCount } from "#station";
import {
  onShelf,
  partsFor,
  partShelf,
  stockOf,
  type Drawn,
  type KitState,
  type Stock,
  type StockPart,
} from "#readiness";
import { inWords, type Saying, type Words } from "#words";
import type { StationView } from "../device/index.ts";

/** Stock by the view it was worked out for. */
const workedOut = new WeakMap<StationView, Stock>();

/** What is on every shelf, as far as this device's lines go. Worked out where it is wanted, once for each view. */
export function stockIn(view: StationView): Stock {
  const known = workedOut.get(view);
  if (known) return known;
  const stock = stockOf(view.parts, [...view.kits, ...view.retired]);
  workedOut.set(view, stock);
  return stock;
}

/** How many of what a kit needs lie on its place's shelf, fit to be used; undefined where its item has no part. */
export function shelfCount(view: StationView): ShelfCount {
  return ({ item }, kit) => {
    const [part] = partsFor(view.parts, { id: kit.pattern.split("@", 1)[0]! }, item);
    return part && onShelf(stockIn(view), kit.place, [part.id], view.today)[0]?.usable;
  };
}

/** One way to say where a new part came from. */
export interface Source {
  readonly key: string;
  readonly said: Saying<"kitView">;
  /** Absent: from no shelf of the station. */
  readonly drawn?: Drawn;
}

/** The key of "from no shelf". */
export const NO_SHELF = "none";

/** The parts of an item with the lots of them at the kit's place, then from elsewhere; empty where it has no part. */
export function sourcesFor(view: StationView, stock: Stock, kit: KitState, item: string): readonly Source[] {
  const parts = partsFor(view.parts, { id: kit.pattern.split("@", 1)[0]! }, item);
  if (parts.length === 0) return [];
  const place = view.places.find(({ id }) => id === kit.place)?.name ?? kit.place;
  const shelves = parts.flatMap((part) => sourcesOf(part, stock, kit.place, place));
  return [...shelves, { key: NO_SHELF, said: { say: "noShelf" } }];
}

function sourcesOf(part: StockPart, stock: Stock, place: string, placeName: string): readonly Source[] {
  const { lots, count } = partShelf(stock, part.id, place);
  const from = { part: part.name, place: placeName };
  const marked = lots.filter((lot) => lot.lot !== undefined && lot.recalled === undefined && lot.count > 0);
  const named = marked.map(({ lot, count: there }) => ({
    key: `${part.id}/${lot}`,
    said: { say: "offShelfLot", of: { ...from, lot: lot!, count: there } } as const,
    drawn: { part: part.id, place, lot: lot! },
  }));
  const said: Saying<"kitView"> =
    marked.length > 0
      ? { say: "offShelfUnread", of: from }
      : { say: "offShelf", of: { ...from, there: thereToSay(count) } };
  return [...named, { key: part.id, said, drawn: { part: part.id, place } }];
}

/** What is taken without asking: the only shelf lot there is. Of several lots the person says which. */
export function plainSource(sources: readonly Source[]): string | undefined {
  const shelves = sources.filter(({ drawn }) => drawn !== undefined);
  if (shelves.length === 1) return shelves[0]!.key;
  const lots = shelves.filter(({ drawn }) => drawn?.lot !== undefined);
  return lots.length === 1 && shelves.length === 2 ? lots[0]!.key : undefined;
}

/** Where a part came from that nobody was asked about, such as one on a filled card: off the kit's own shelf, its lot not read. */
export function drawnByItself(view: StationView, kit: KitState, item: string): Drawn | undefined {
  const [part] = partsFor(view.parts, { id: kit.pattern.split("@", 1)[0]! }, item);
  return part && { part: part.id, place: kit.place };
}

/** "3 there"; below none it says what that means. */
export function sayThere(count: number, words: Words["kitView"]): string {
  return inWords(thereToSay(count), words);
}

function thereToSay(count: number): Saying<"kitView"> {
  if (count < 0) return { say: "thereLess", of: { count: sayCountOf(count), more: -count } };
  return count === 0 ? { say: "thereNone" } : { say: "there", of: { count } };
}

/** With a true minus sign. */
export function sayCountOf(count: number): string {
  return count < 0 ? `\u2212${-count}` : String(count);
}
