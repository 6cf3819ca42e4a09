import { formatDate } from "#base";
import { orderList, type OrderLine, type Stock } from "#readiness";
import { mayWrite } from "#station";
import { useState } from "react";
import { Link } from "wouter";
import type { StationView } from "#web/device/index.ts";
import { Button, ButtonRow, Section } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { saveTable } from "#web/kit-view/sheet/save-table.ts";
import { OrderForm } from "./order-form.tsx";
import { sayWhy } from "./order-words.ts";

/** How far the list looks ahead [day]; common practice. */
const DAYS = 182;

/** What must be ordered by which day. */
export function ToOrder({ view, stock }: { readonly view: StationView; readonly stock: Stock }) {
  const [chosen, setChosen] = useState<OrderLine>();
  const lines = orderList({ ...view, stock, days: DAYS });
  const mayOrder = mayWrite(view.me.role, "stock-ordered");
  return (
    <Section title="To order">
      {lines.length === 0 ? (
        <p>Nothing falls short within half a year, with what is on the shelves and on order.</p>
      ) : (
        <>
          <Table
            caption="To order"
            isCaptionHidden
            columns={columns(view, mayOrder ? setChosen : undefined)}
            rows={lines}
            rowKey={({ part, place }) => `${part.id} ${place}`}
          />
          {chosen && (
            <OrderForm key={`${chosen.part.id} ${chosen.place}`} line={chosen} onDone={() => setChosen(undefined)} />
          )}
          <ButtonRow>
            <Button onPress={() => void saveTable("orders", view)}>The list as CSV</Button>
            <PaperLink href="/api/paper/orders.pdf" name={`orders-${view.today}`}>
              The list as PDF
            </PaperLink>
          </ButtonRow>
        </>
      )}
    </Section>
  );
}

function columns(view: StationView, choose: ((line: OrderLine) => void) | undefined): readonly Column<OrderLine>[] {
  const always: readonly Column<OrderLine>[] = [
    { key: "part", head: "Part", cell: ({ part }) => <Link to={`/stock/${part.id}`}>{part.name}</Link> },
    { key: "place", head: "For", cell: ({ place }) => view.places.find(({ id }) => id === place)?.name ?? place },
    { key: "count", head: "How many", align: "figures", cell: ({ count }) => count },
    {
      key: "by",
      head: "Order by",
      cell: ({ by }) =>
        by <= view.today ? <strong className="stock-wrong">Now: {formatDate(by)}</strong> : formatDate(by),
    },
    { key: "why", head: "Why", cell: sayWhy },
  ];
  if (!choose) return always;
  const order: Column<OrderLine> = {
    key: "order",
    isAct: true,
    head: "Order",
    cell: (line) => (
      <Button kind="quiet" label={`Ordered: ${line.part.name}`} onPress={() => choose(line)}>
        Ordered
      </Button>
    ),
  };
  return [...always, order];
}
