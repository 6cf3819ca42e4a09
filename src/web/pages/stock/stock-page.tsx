import { useState } from "react";
import { Link, useSearchParams } from "wouter";
import { onShelf, openOrders, partShelf, type Stock, type StockPart } from "#readiness";
import { mayWrite } from "#station";
import { useStation, type StationView } from "#web/device/index.ts";
import { sayThere, stockIn } from "#web/kit-view/stock-view.ts";
import { ButtonLink, ButtonRow, EmptyState, Notice, Page, TextField } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { BestBuys } from "./best-buys.tsx";
import { sayCountedOn, sayShelf } from "./line-words.ts";
import { OnOrder } from "./on-order.tsx";
import { PlacePick } from "./place-pick.tsx";
import { ToOrder } from "./to-order.tsx";
import { UnlistedParts } from "./unlisted-parts.tsx";
import { useSpares, type Spare } from "./use-spares.ts";
import "./stock.css";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

/** What is on the shelves of a place, what must be ordered by which day, and what is waited for. */
export default function StockPage() {
  const words = useWords("stock");
  // Here before a form opens, so that the page does not wait then.
  useWords("stockForms");
  const view = useStation();
  const stock = stockIn(view);
  const [search, setSearch] = useSearchParams();
  const place = view.places.find(({ id }) => id === search.get("place")) ?? view.place;
  const parts = view.parts.filter(({ retired }) => retired === undefined);
  return (
    <Page title={words.title()}>
      {view.early && (
        <Notice tone="attention" title={words.early()}>
          <p>{words.earlyMore()}</p>
        </Notice>
      )}
      {parts.length === 0 ? (
        <EmptyState title={words.noParts()}>
          <p>{words.noPartsMore()}</p>
        </EmptyState>
      ) : (
        <>
          <PlacePick
            label={words.shelvesAt()}
            place={place.id}
            onChoose={(id) => setSearch({ place: id }, { replace: true })}
          />
          <Shelves view={view} stock={stock} place={place.id} parts={parts} />
          {!view.early && (
            <>
              <ToOrder view={view} stock={stock} />
              <OnOrder view={view} orders={openOrders(view.parts)} />
              <BestBuys view={view} stock={stock} parts={parts} />
            </>
          )}
        </>
      )}
      {mayWrite(view.me.role, "part-set") && (
        <>
          <ButtonRow>
            <ButtonLink to="/stock/new">{words.putOnList()}</ButtonLink>
            <ButtonLink to={`/place/${place.id}/labels`}>{words.labels()}</ButtonLink>
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
  const words = useWords("stock");
  const [text, setText] = useState("");
  const spares = useSpares(parts, stock, view);
  const wanted = text.trim().toLowerCase();
  const found = parts.filter((part) => `${part.number} ${part.name}`.toLowerCase().includes(wanted));
  const rows = found.map((part) => rowOf(part, stock, place, view.today, spares.get(part.id)));
  return (
    <>
      {parts.length >= MANY && <TextField label={words.find()} type="search" value={text} onChange={setText} isShort />}
      <Table
        caption={words.shelves()}
        isCaptionHidden
        columns={columns(words, view.early !== undefined)}
        rows={rows}
        rowKey={({ part }) => part.id}
      />
      <p className="quiet">
        {words.spareMore()} {sayLots(rows, words)}
      </p>
    </>
  );
}

/** Which parts were counted as wanted several at a time; nothing where no least stock is told. */
function sayLots(rows: readonly Row[], words: Words["stock"]): string | undefined {
  if (rows.every(({ spare }) => spare === undefined)) return undefined;
  const names = rows.filter(({ spare }) => spare?.inLots).map(({ part }) => part.name);
  return words.spareLots({ parts: names.length, names: names.join(", ") });
}

function rowOf(part: StockPart, stock: Stock, place: string, today: string, spare: Spare | undefined): Row {
  const { count, usable } = onShelf(stock, place, [part.id], today)[0]!;
  const counted = partShelf(stock, part.id, place).counted?.day;
  const least = part.keep.find((one) => one.place === place)?.least ?? 0;
  return { part, count, usable, least, ...(counted !== undefined && { counted }), ...(spare && { spare }) };
}

const columns = (words: Words["stock"], early: boolean): readonly Column<Row>[] => [
  {
    key: "name",
    head: words.part(),
    cell: ({ part }) => (
      <>
        <Link to={`/stock/${part.id}`}>{part.name}</Link> <span className="quiet">{part.number}</span>
      </>
    ),
  },
  { key: "count", head: words.onShelf(), cell: (row) => <ShelfCount row={row} early={early} /> },
  { key: "keep", head: words.keep(), align: "figures", cell: ({ least }) => (least === 0 ? "-" : least) },
  {
    key: "spare",
    head: words.spare(),
    align: "figures",
    cell: ({ spare }) =>
      spare && !early
        ? words.spareIs({ count: spare.stock, perYear: spare.perYear.toPrecision(2) })
        : early
          ? words.notHereYet()
          : words.notKnown(),
  },
  { key: "counted", head: words.counted(), cell: ({ counted }) => sayCountedOn(counted, early, words) },
];

/** The count, marked where it is not what a shelf should hold. */
function ShelfCount({ row, early }: { readonly row: Row; readonly early: boolean }) {
  const words = useWords("stock");
  const kitView = useWords("kitView");
  if (row.count < 0 && !early) return <strong className="stock-wrong">{sayThere(row.count, kitView)}</strong>;
  const said = sayShelf(row, early, words);
  return early || row.usable >= row.least ? said : <strong className="stock-wrong">{said}</strong>;
}
