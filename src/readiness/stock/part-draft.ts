import type { Entry } from "#log";
import { markOf } from "../draft.ts";
import { idOf } from "../subject-id.ts";
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

  /** A line that bears on a shelf, with the day on which it was done. */
  putLine(act: StockAct, day: string, entry: Entry): void {
    this.lines.push({ ...markOf(entry), day, ...act });
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
