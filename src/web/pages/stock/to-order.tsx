import type { Words } from "#words";
import { orderList, type OrderLine, type Stock } from "#readiness";
import { mayWrite } from "#station";
import { useState } from "react";
import { Link } from "wouter";
import type { StationView } from "#web/device/index.ts";
import { Button, ButtonRow, sayDate, Section } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { saveTable } from "#web/kit-view/sheet/save-table.ts";
import { OrderForm } from "./order-form.tsx";
import { sayNothingShort, sayWhy } from "./order-words.ts";
import { ToMove } from "./moves/to-move.tsx";
import { unlistedParts } from "./unlisted-parts.tsx";
import { useWords } from "#web/language/index.ts";

/** How far the list looks ahead [day]; common practice. */
const DAYS = 182;

/** What must be ordered by which day. */
export function ToOrder({ view, stock }: { readonly view: StationView; readonly stock: Stock }) {
  const words = useWords("stock");
  const [chosen, setChosen] = useState<OrderLine>();
  const asked = { ...view, stock, days: DAYS };
  const lines = orderList(asked);
  const mayOrder = mayWrite(view.me.role, "stock-ordered");
  return (
    <Section title={words.toOrder()}>
      {lines.length === 0 ? (
        <p>{sayNothingShort(unlistedParts(view).length, words)}</p>
      ) : (
        <>
          <div className="stock-acts">
            <Table
              caption={words.toOrder()}
              isCaptionHidden
              columns={columns(view, words, mayOrder ? setChosen : undefined)}
              rows={lines}
              rowKey={({ part, place }) => `${part.id} ${place}`}
            />
          </div>
          {chosen && (
            <OrderForm key={`${chosen.part.id} ${chosen.place}`} line={chosen} onDone={() => setChosen(undefined)} />
          )}
          <ToMove view={view} asked={asked} lines={lines} />
          <ButtonRow>
            <Button onPress={() => void saveTable("orders", view)}>{words.listCsv()}</Button>
            <PaperLink href="/api/paper/orders.pdf" name={`orders-${view.today}`}>
              {words.listPdf()}
            </PaperLink>
          </ButtonRow>
        </>
      )}
    </Section>
  );
}

function columns(
  view: StationView,
  words: Words["stock"],
  choose: ((line: OrderLine) => void) | undefined,
): readonly Column<OrderLine>[] {
  const always: readonly Column<OrderLine>[] = [
    { key: "part", head: words.part(), cell: ({ part }) => <Link to={`/stock/${part.id}`}>{part.name}</Link> },
    { key: "place", head: words.for(), cell: ({ place }) => view.places.find(({ id }) => id === place)?.name ?? place },
    { key: "count", head: words.howMany(), align: "figures", cell: ({ count }) => count },
    {
      key: "by",
      head: words.orderBy(),
      cell: ({ by }) => (by <= view.today ? <strong className="stock-wrong">{words.orderNow()}</strong> : sayDate(by)),
    },
    { key: "why", head: words.why(), cell: (line) => sayWhy(line, words) },
  ];
  if (!choose) return always;
  const order: Column<OrderLine> = {
    key: "order",
    isAct: true,
    head: words.order(),
    cell: (line) => (
      <Button kind="quiet" label={words.orderedPart({ part: line.part.name })} onPress={() => choose(line)}>
        {words.ordered()}
      </Button>
    ),
  };
  return [...always, order];
}
