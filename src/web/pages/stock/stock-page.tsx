import { useState } from "react";
import { Link, useSearchParams } from "wouter";
import { onShelf, openOrders, partShelf, type Stock, type StockPart } from "#readiness";
import { mayWrite } from "#station";
import { useStation, type StationView } from "#web/device/index.ts";
import { sayCountOf, sayThere, stockIn } from "#web/kit-view/stock-view.ts";
import { ButtonLink, ButtonRow, EmptyState, Notice, Page, TextField } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { BestBuys } from "./best-buys.tsx";
import { OnOrder } from "./on-order.tsx";
import { PlacePick } from "./place-pick.tsx";
import { ToOrder } from "./to-order.tsx";
import { UnlistedParts } from "./unlisted-parts.tsx";
import { useSpares, type Spare } from "./use-spares.ts";
import "./stock.css";

/** What is on the shelves of a place, what must be ordered by which day, and what is waited for. */
export default function StockPage() {
  const view = useStation();
  const stock = stockIn(view);
  const [search, setSearch] = useSearchParams();
  const place = view.places.find(({ id }) => id === search.get("place")) ?? view.place;
  const parts = view.parts.filter(({ retired }) => retired === undefined);
  return (
    <Page title="Parts and stock">
      {view.early && (
        <Notice tone="attention" title="Not all lines are on this device yet">
          <p>What is on a shelf is right once they are.</p>
        </Notice>
      )}
      {parts.length === 0 ? (
        <EmptyState title="No part is on the list yet">
          <p>A keeper puts a part on the list once, then receives and counts it. Patterns name some of them, below.</p>
        </EmptyState>
      ) : (
        <>
          <PlacePick
            label="Shelves at"
            place={place.id}
            onChoose={(id) => setSearch({ place: id }, { replace: true })}
          />
          <Shelves view={view} stock={stock} place={place.id} parts={parts} />
          <ToOrder view={view} stock={stock} />
          <OnOrder view={view} orders={openOrders(view.parts)} />
          <BestBuys view={view} stock={stock} parts={parts} />
        </>
      )}
      {mayWrite(view.me.role, "part-set") && (
        <>
          <ButtonRow>
            <ButtonLink to="/stock/new">Put a part on the list</ButtonLink>
            <ButtonLink to={`/place/${place.id}/labels`}>Labels and shelves</ButtonLink>
          </ButtonRow>
          <UnlistedParts view={view} />
        </>
      )}
    </Page>
  );
}

interface ShelvesProps {
  readonly view: StationView;
  readonly stock: Stock;
  readonly place: string;
  readonly parts: readonly StockPart[];
}

interface Row {
  readonly part: StockPart;
  readonly count: number;
  readonly usable: number;
  readonly least: number;
  readonly counted?: string;
  readonly spare?: Spare;
}

const MANY = 12;

function Shelves({ view, stock, place, parts }: ShelvesProps) {
  const [text, setText] = useState("");
  const spares = useSpares(parts, stock, view);
  const wanted = text.trim().toLowerCase();
  const found = parts.filter((part) => `${part.number} ${part.name}`.toLowerCase().includes(wanted));
  const rows = found.map((part) => rowOf(part, stock, place, view.today, spares.get(part.id)));
  return (
    <>
      {parts.length >= MANY && (
        <TextField label="Find a part by number or name" type="search" value={text} onChange={setText} isShort />
      )}
      <Table caption="Shelves" isCaptionHidden columns={COLUMNS} rows={rows} rowKey={({ part }) => part.id} />
      <p className="quiet">
        Least for 95&nbsp;%: how many to hold of each so that nobody waits for one in 95 of 100 lead times, from how
        many the log says were used in a year at all places. An estimate; what was counted is beside it.
      </p>
    </>
  );
}

function rowOf(part: StockPart, stock: Stock, place: string, today: string, spare: Spare | undefined): Row {
  const { count, usable } = onShelf(stock, place, [part.id], today)[0]!;
  const counted = partShelf(stock, part.id, place).counted?.day;
  const least = part.keep.find((one) => one.place === place)?.least ?? 0;
  return { part, count, usable, least, ...(counted !== undefined && { counted }), ...(spare && { spare }) };
}

const COLUMNS: readonly Column<Row>[] = [
  {
    key: "name",
    head: "Part",
    cell: ({ part }) => (
      <>
        <Link to={`/stock/${part.id}`}>{part.name}</Link> <span className="quiet">{part.number}</span>
      </>
    ),
  },
  { key: "count", head: "On the shelf", cell: (row) => <ShelfCount row={row} /> },
  { key: "keep", head: "Keep", align: "figures", cell: ({ least }) => (least === 0 ? "-" : least) },
  {
    key: "spare",
    head: "Least for 95 %",
    align: "figures",
    cell: ({ spare }) => (spare ? `${spare.stock} (${spare.perYear.toPrecision(2)} a year)` : "not known"),
  },
  { key: "counted", head: "Counted", cell: ({ counted }) => counted ?? "never" },
];

/** The count, in words where it is not what a shelf should hold. */
function ShelfCount({ row: { count, usable, least } }: { readonly row: Row }) {
  if (count < 0) return <strong className="stock-wrong">{sayThere(count)}</strong>;
  const isLow = usable < least;
  const words = usable === count ? sayCountOf(count) : `${count}, of these ${sayCountOf(usable)} fit to use`;
  return isLow ? <strong className="stock-wrong">{words}: low</strong> : words;
}
