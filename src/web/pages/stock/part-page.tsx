import type { Words } from "#words";
import { partShelf, type PartShelf, type StockPart } from "#readiness";
import { mayWrite } from "#station";
import { useParams, useSearchParams } from "wouter";
import { useStation, type StationView } from "#web/device/index.ts";
import { sayThere, stockIn } from "#web/kit-view/stock-view.ts";
import { ButtonLink, ButtonRow, Notice, Page, sayDate, Section } from "#web/parts/index.ts";
import { PartFacts } from "./part-facts.tsx";
import { PlacePick } from "./place-pick.tsx";
import { ShelfActs } from "./shelf-acts.tsx";
import { ShelfLines } from "./shelf-lines.tsx";
import { NoSuchPart } from "./no-such-part.tsx";
import "./stock.css";
import { useWords } from "#web/language/index.ts";

/** One part: its shelf at a place, lot by lot, what may be done with it, and every line that made it so. */
export default function PartPage() {
  const frame = useWords("frame");
  const words = useWords("stockPart");
  const { part: wanted = "" } = useParams<{ readonly part: string }>();
  const [search, setSearch] = useSearchParams();
  const view = useStation();
  const stock = stockIn(view);
  const part = view.parts.find(({ id }) => id === wanted);
  if (!part) return <NoSuchPart />;
  const place = view.places.find(({ id }) => id === search.get("place")) ?? view.place;
  const shelf = partShelf(stock, part.id, place.id);
  return (
    <Page title={part.name} back={{ to: `/stock?place=${place.id}`, label: frame.stock() }}>
      {part.retired && <Notice title={words.offList({ reason: part.retired.reason })} />}
      {part.recalls.map((recall) => (
        <Notice key={recall.entry} tone="wrong" title={words.lotRecalled({ lot: recall.lot })}>
          <p>{recall.reason}</p>
          <ButtonLink to={`/stock/${part.id}/recall?lot=${encodeURIComponent(recall.lot)}`}>
            {words.holders()}
          </ButtonLink>
        </Notice>
      ))}
      <PlacePick
        label={words.shelfAt()}
        place={place.id}
        onChoose={(id) => setSearch({ place: id }, { replace: true })}
      />
      <Section title={words.onShelf()}>
        {view.early ? <p>{words.notHereYet()}</p> : <Shelf shelf={shelf} unit={part.unit} view={view} />}
      </Section>
      {part.retired === undefined && <ShelfActs part={part} place={place.id} shelf={shelf} />}
      <Section title={words.madeSo()}>
        {view.early ? <p>{words.notHereYet()}</p> : <ShelfLines view={view} shelf={shelf} part={part} />}
      </Section>
      <Section title={words.thePart()}>
        <PartFacts part={part} view={view} />
        <KeeperLinks part={part} view={view} />
      </Section>
    </Page>
  );
}

interface ShelfProps {
  readonly shelf: PartShelf;
  readonly unit: string;
  readonly view: StationView;
}

function Shelf({ shelf: { count, lots, counted }, unit, view }: ShelfProps) {
  const words = useWords("stockPart");
  const kitView = useWords("kitView");
  return (
    <>
      <p className={count < 0 ? "stock-wrong" : undefined}>
        <strong>{words.thereIn({ there: sayThere(count, kitView), unit })}</strong> {count < 0 && words.countShelf()}{" "}
        {counted === undefined ? words.neverCounted() : words.countedOn({ day: sayDate(counted.day) })}
      </p>
      {lots.length > 0 && (
        <ul className="stock-lots">
          {lots.map(({ lot, count: of, goodTo, recalled }) => (
            <li key={lot ?? ""}>
              {sayLot({ lot, count: of, goodTo }, words, kitView)}
              {goodTo !== undefined && goodTo < view.today && (
                <strong className="stock-wrong"> {words.pastDay()}</strong>
              )}
              {recalled !== undefined && <strong className="stock-wrong"> {words.recalledDoNotFit()}</strong>}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

interface LotThere {
  readonly lot: string | undefined;
  readonly count: number;
  readonly goodTo: string | undefined;
}

function sayLot({ lot, count, goodTo }: LotThere, words: Words["stockPart"], kitView: Words["kitView"]): string {
  const there = { hasLot: lot === undefined ? "no" : "yes", lot: lot ?? "", there: sayThere(count, kitView) };
  return goodTo === undefined ? words.lotThere(there) : words.lotGoodTo({ ...there, day: sayDate(goodTo) });
}

function KeeperLinks({ part, view: { me } }: { readonly part: StockPart; readonly view: StationView }) {
  const words = useWords("stockPart");
  if (!mayWrite(me.role, "part-set")) return null;
  return (
    <ButtonRow>
      <ButtonLink to={`/stock/${part.id}/setting`}>{words.changePart()}</ButtonLink>
      <ButtonLink to={`/stock/${part.id}/recall`}>{words.aLotRecalled()}</ButtonLink>
    </ButtonRow>
  );
}
