import { useEffect, useState } from "react";
import { demandOf, useOf } from "./spares-asked.ts";
import { type Stock, type StockPart } from "#readiness";
import type { StationView } from "#web/device/index.ts";
import { useAsk } from "#web/worker/index.ts";

/** How many of a part to hold, as the question `spares` has it. */
export interface Spare {
  readonly perYear: number;
  readonly stock: number;
  /** Counted as wanted several at a time. */
  readonly inLots: boolean;
}

/** Chance of no shortage that is asked for; common practice for parts that ground a kit. */
const TARGET = 0.95;

interface SparesAnswer {
  readonly items: readonly { readonly name: string; readonly stock: number }[];
}

/** Asked of every part whose use and lead time are on record; the others are not in the answer. */
export function useSpares(parts: readonly StockPart[], stock: Stock, view: StationView): ReadonlyMap<string, Spare> {
  const ask = useAsk();
  const [spares, setSpares] = useState<ReadonlyMap<string, Spare>>(new Map());
  const asked = JSON.stringify(itemsOf(parts, stock, view.today));
  useEffect(() => {
    const items = JSON.parse(asked) as ReturnType<typeof itemsOf>;
    if (items.length === 0) return undefined;
    let isOver = false;
    const take = ({ items: told }: SparesAnswer) => {
      if (isOver) return;
      setSpares(new Map(told.map(({ name, stock: least }, at) => [name, spareOf(least, items[at]!)])));
    };
    // Without an answer the column says that it is not known.
    ask("spares", { items, target: TARGET }).then(
      (answer) => take(answer as SparesAnswer),
      () => undefined,
    );
    return () => {
      isOver = true;
    };
  }, [ask, asked]);
  return spares;
}

function spareOf(stock: number, item: ReturnType<typeof itemsOf>[number]): Spare {
  return { stock, perYear: item.perYear, inLots: "lots" in item };
}

function itemsOf(parts: readonly StockPart[], stock: Stock, today: string) {
  return parts.flatMap((part) => demandOf(part, useOf(stock, part, today), today) ?? []);
}
