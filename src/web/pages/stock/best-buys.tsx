import { onShelf, usedPerYear, type Stock, type StockPart } from "#readiness";
import { useEffect, useState } from "react";
import { Link } from "wouter";
import type { StationView } from "#web/device/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { ErrorBox, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { useAsk } from "#web/worker/index.ts";
import { askedOf, leftOut, sayBeside, sayBought, sayLeftOut, worthBuying, type BuysAnswer } from "./buys-words.ts";

interface BestBuysProps {
  readonly view: StationView;
  readonly stock: Stock;
  readonly parts: readonly StockPart[];
}

interface Row {
  readonly part: StockPart;
  readonly item: BuysAnswer["items"][number];
}

/** What a sum of money is best spent on, beside what lies on all shelves today, and how many kits are robbed less often. */
export function BestBuys({ view, stock, parts }: BestBuysProps) {
  const [budget, setBudget] = useState<number>();
  const { items, missing } = known(view, stock, parts);
  const { answer, error } = useBuys(items, budget);
  const { worth, idle } = answer ? worthBuying(answer) : NOTHING;
  const rows = worth.flatMap((item) => parts.filter(({ id }) => id === item.name).map((part) => ({ part, item })));
  const words = sayLeftOut(missing);
  return (
    <Section id="buys" title="Best buys for a sum">
      {items.length === 0 ? (
        <p>Too little to tell: no part has its price, its time to come and 90 days of use on record.</p>
      ) : (
        <NumberField
          label="What may be spent, in the currency of the prices"
          hint="Nothing is ordered by this."
          value={budget}
          onChange={setBudget}
          isWhole={false}
          least={0}
          most={1_000_000_000}
        />
      )}
      <ErrorBox error={error} title="Not told" />
      {answer && <p>{sayBought(answer)}</p>}
      {answer && <p>{sayBeside(idle)}</p>}
      {rows.length > 0 && (
        <Table caption="Best buys" isCaptionHidden columns={COLUMNS} rows={rows} rowKey={({ part }) => part.id} />
      )}
      {words && <p className="quiet">{words}</p>}
    </Section>
  );
}

const NOTHING = { worth: [], idle: 0 } as const;

const COLUMNS: readonly Column<Row>[] = [
  { key: "part", head: "Part", cell: ({ part }) => <Link to={`/stock/${part.id}`}>{part.name}</Link> },
  { key: "now", head: "Fit to use now", align: "figures", cell: ({ item }) => item.stock - (item.toBuy ?? 0) },
  { key: "buy", head: "Buy", align: "figures", cell: ({ item }) => item.toBuy ?? 0 },
  {
    key: "cost",
    head: "Cost",
    align: "figures",
    cell: ({ part, item }) => ((part.cost ?? 0) * (item.toBuy ?? 0)).toFixed(2),
  },
  {
    key: "empty",
    head: "Shelf empty when wanted, a year",
    align: "figures",
    cell: ({ item: { emptyPerYear } }) =>
      emptyPerYear ? `${emptyPerYear.now.toFixed(1)} now, then ${emptyPerYear.after.toFixed(1)}` : "not known",
  },
];

/** What is asked of each part whose price, use and time to come are on record, and what is left out for want of them. */
function known(view: StationView, stock: Stock, parts: readonly StockPart[]) {
  const read = parts.map((part) => {
    const perYear = usedPerYear([...(stock.get(part.id)?.values() ?? [])], view.today);
    const usable = view.places.map(({ id }) => onShelf(stock, id, [part.id], view.today)[0]?.usable ?? 0);
    const held = usable.reduce((sum, one) => sum + Math.max(0, one), 0);
    return { part, item: askedOf(part, perYear, held, view.today) };
  });
  return {
    items: read.flatMap(({ item }) => item ?? []),
    missing: read.flatMap(({ part, item }) => (item ? [] : leftOut(part))),
  };
}

function useBuys(items: readonly object[], budget: number | undefined) {
  const ask = useAsk();
  const [told, setTold] = useState<{
    readonly asked: string;
    readonly answer?: BuysAnswer;
    readonly error?: unknown;
  }>();
  const asked = budget === undefined || items.length === 0 ? undefined : JSON.stringify({ items, budget });
  useEffect(() => {
    if (asked === undefined) return undefined;
    let isOver = false;
    ask("spares", JSON.parse(asked)).then(
      (answer) => isOver || setTold({ asked, answer: answer as BuysAnswer }),
      (error: unknown) => isOver || setTold({ asked, error }),
    );
    return () => {
      isOver = true;
    };
  }, [ask, asked]);
  const isOfNow = told !== undefined && told.asked === asked;
  return { answer: isOfNow ? told.answer : undefined, error: isOfNow ? told.error : undefined };
}
