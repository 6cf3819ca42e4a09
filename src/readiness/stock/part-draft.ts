import { dayWritten } from "#base";
import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import type { StockBodies } from "../kinds/stock-kinds.ts";
import { idOf } from "../people-fold.ts";
import type { PartOrder, Recall, StockAct, StockLine, StockPart } from "./part-state.ts";

type Own = Omit<StockPart, "lines" | "orders" | "recalls">;

/** A part while its lines are folded in. What grows with the log is copied once for each reading, not for each line. */
export class PartDraft {
  own: Own;
  readonly lines: StockLine[];
  readonly orders: Map<string, PartOrder>;
  readonly recalls: Recall[];

  constructor(before: StockPart) {
    const { lines, orders, recalls, ...own } = before;
    this.own = own;
    this.lines = [...lines];
    this.orders = new Map(orders.map((order) => [order.id, order]));
    this.recalls = [...recalls];
  }

  /** The part as it stands; later lines leave it as it is. */
  release(): StockPart {
    return { ...this.own, lines: [...this.lines], orders: [...this.orders.values()], recalls: [...this.recalls] };
  }
}

/** A part of which nothing is known but a line that names it: stock that arrives before its part is still counted. */
export function blankPart(subject: string): StockPart {
  const id = idOf(subject);
  const lists = { keep: [], items: [], lines: [], orders: [], recalls: [] };
  return { id, number: "", name: id, unit: "piece", printed: false, ...lists };
}

/** True for a kind whose subject is a part. */
export function isStockKind(kind: string): kind is keyof StockBodies {
  return Object.hasOwn(FOLDS, kind);
}

/** Folds one more line into a part. */
export function applyToPart(draft: PartDraft, entry: Entry): void {
  if (!isStockKind(entry.kind)) return;
  const fold = FOLDS[entry.kind] as (draft: PartDraft, body: unknown, entry: Entry) => void;
  fold(draft, entry.body, entry);
}

type Folds = {
  readonly [Kind in keyof StockBodies]: (draft: PartDraft, body: StockBodies[Kind], entry: Entry) => void;
};

const FOLDS: Folds = {
  "part-set": (draft, body) => {
    draft.own = { id: draft.own.id, ...body };
  },
  "part-retired": (draft, { reason }, entry) => {
    draft.own = { ...draft.own, retired: { ...markOf(entry), reason } };
  },
  "stock-received": (draft, { note: _note, day, ...body }, entry) => {
    put(draft, { what: "received", ...body }, day, entry);
  },
  "stock-used": (draft, { note: because, day, ...body }, entry) => {
    put(draft, { what: "used", because, ...body }, day, entry);
  },
  "stock-counted": (draft, { place, found }, entry) => {
    put(draft, { what: "counted", place, found }, dayWritten(entry.at), entry);
  },
  "stock-scrapped": (draft, { reason: because, day, ...body }, entry) => {
    put(draft, { what: "scrapped", because, ...body }, day, entry);
  },
  "stock-moved": (draft, { from: place, day, ...body }, entry) => {
    put(draft, { what: "moved", place, ...body }, day, entry);
  },
  "stock-ordered": (draft, { order: id, ...body }, entry) => {
    const closed = draft.orders.get(id)?.closed;
    draft.orders.set(id, { ...markOf(entry), id, ...body, ...(closed && { closed }) });
  },
  "order-closed": (draft, { order: id, reason }, entry) => {
    const order = draft.orders.get(id) ?? { ...markOf(entry), id, place: "", count: 0, day: dayWritten(entry.at) };
    draft.orders.set(id, { ...order, closed: { ...markOf(entry), reason } });
  },
  "lot-recalled": (draft, body, entry) => {
    draft.recalls.push({ ...markOf(entry), ...body });
  },
};

function put(draft: PartDraft, act: StockAct, day: string, entry: Entry): void {
  draft.lines.push({ ...markOf(entry), day, ...act });
}
