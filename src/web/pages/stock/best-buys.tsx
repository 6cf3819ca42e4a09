import { stationHolding, type StationHolding, type Stock, type StockPart } from "#readiness";
import { useEffect, useState } from "react";
import { Link } from "wouter";
import type { StationView } from "#web/device/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { ErrorBox, Section } from "#web/parts/index.ts";
import { sayCost } from "#web/kit-view/say-cost.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { useAsk } from "#web/worker/index.ts";
import {
  askedOf,
  boughtOf,
  ENOUGH,
  leftOut,
  sayBought,
  sayEmpty,
  sayHeld,
  sayLeftOut,
  type BuysAnswer,
} from "./buys-words.ts";
import { useOf } from "./spares-asked.ts";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

interface BestBuysProps {
  readonly view: StationView;
  readonly stock: Stock;
  readonly parts: readonly StockPart[];
}

interface Row {
  readonly part: StockPart;
  readonly held: StationHolding;
  readonly item: BuysAnswer["items"][number];
}

/** What a sum of money is best spent on, beside what lies on all shelves today, and how many kits are robbed less often. */
export function BestBuys({ view, stock, parts }: BestBuysProps) {
  const words = useWords("stock");
  const [budget, setBudget] = useState<number>();
  const { items, missing } = known(view, stock, parts, words);
  const { answer, error } = useBuys(items, budget);
  const bought = answer && boughtOf(answer);
  const rows = (bought?.rows ?? []).flatMap((item) =>
    parts.filter(({ id }) => id === item.name).map((part) => ({ part, item, held: heldOf(part, view, stock) })),
  );
  const left = sayLeftOut(missing, words);
  return (
    <Section id="buys" title={words.buys()}>
      {items.length === 0 ? (
        <p>{words.buysTooLittle()}</p>
      ) : (
        <NumberField
          label={words.mayBeSpent()}
          hint={sayMoney(view.policy.currency, words)}
          value={budget}
          onChange={setBudget}
          isWhole={false}
          least={0}
          most={1_000_000_000}
        />
      )}
      <ErrorBox error={error} title={words.notTold()} />
      {answer && <p>{words.wantedFirst()}</p>}
      {bought && <p>{sayBought(answer, bought, { words, currency: view.policy.currency })}</p>}
      {rows.length > 0 && (
        <Table
          caption={words.bestBuys()}
          isCaptionHidden
          columns={columns(words, view.policy.currency)}
          rows={rows}
          rowKey={({ part }) => part.id}
        />
      )}
      {answer && <p className="quiet">{words.enoughIs()}</p>}
      {left !== undefined && <p className="quiet">{left}</p>}
    </Section>
  );
}

/** In which currency; where the station has not said, that is said here once. */
function sayMoney(currency: string | undefined, words: Words["stock"]): string {
  return `${currency === undefined ? words.ownMoney() : words.inCurrency({ currency })} ${words.nothingOrdered()}`;
}

const columns = (words: Words["stock"], currency: string | undefined): readonly Column<Row>[] => [
  { key: "part", head: words.part(), cell: ({ part }) => <Link to={`/stock/${part.id}`}>{part.name}</Link> },
  { key: "now", head: words.fitNow(), align: "figures", cell: ({ held }) => sayHeld(held, words) },
  { key: "buy", head: words.buy(), align: "figures", cell: ({ item }) => item.toBuy ?? 0 },
  {
    key: "cost",
    head: words.cost(),
    align: "figures",
    cell: ({ part, item }) => sayCost((part.cost ?? 0) * (item.toBuy ?? 0), currency),
  },
  {
    key: "empty",
    head: words.emptyAYear(),
    align: "figures",
    cell: ({ item: { emptyPerYear } }) =>
      emptyPerYear
        ? words.nowThen({ now: sayEmpty(emptyPerYear.now), after: sayEmpty(emptyPerYear.after) })
        : words.notKnown(),
  },
];

/** What is asked of each part whose price, use and time to come are on record, and what is left out for want of them. */
function known(view: StationView, stock: Stock, parts: readonly StockPart[], words: Words["stock"]) {
  const read = parts.map((part) => ({
    part,
    item: askedOf(part, useOf(stock, part, view.today), heldOf(part, view, stock), view.today),
  }));
  return {
    items: read.flatMap(({ item }) => item ?? []),
    missing: read.flatMap(({ part, item }) => (item ? [] : leftOut(part, words))),
  };
}

function heldOf(part: StockPart, { places, today }: StationView, stock: Stock): StationHolding {
  const ids = places.map(({ id }) => id);
  return stationHolding(stock, part, ids, today);
}

function useBuys(items: readonly object[], budget: number | undefined) {
  const ask = useAsk();
  const [told, setTold] = useState<{
    readonly asked: string;
    readonly answer?: BuysAnswer;
    readonly error?: unknown;
  }>();
  const asked =
    budget === undefined || items.length === 0 ? undefined : JSON.stringify({ items, budget, enough: ENOUGH });
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
