import { formatDate } from "#base";
import { partShelf, type PartShelf, type StockPart } from "#readiness";
import { mayWrite } from "#station";
import { useParams, useSearchParams } from "wouter";
import { useStation, type StationView } from "#web/device/index.ts";
import { sayThere, stockIn } from "#web/kit-view/stock-view.ts";
import { ButtonLink, ButtonRow, Notice, Page, Section } from "#web/parts/index.ts";
import { PartFacts } from "./part-facts.tsx";
import { PlacePick } from "./place-pick.tsx";
import { ShelfActs } from "./shelf-acts.tsx";
import { ShelfLines } from "./shelf-lines.tsx";
import { NoSuchPart } from "./no-such-part.tsx";
import "./stock.css";

/** One part: its shelf at a place, lot by lot, what may be done with it, and every line that made it so. */
export default function PartPage() {
  const { part: wanted = "" } = useParams<{ readonly part: string }>();
  const [search, setSearch] = useSearchParams();
  const view = useStation();
  const stock = stockIn(view);
  const part = view.parts.find(({ id }) => id === wanted);
  if (!part) return <NoSuchPart />;
  const place = view.places.find(({ id }) => id === search.get("place")) ?? view.place;
  const shelf = partShelf(stock, part.id, place.id);
  return (
    <Page title={part.name} back={{ to: `/stock?place=${place.id}`, label: "Parts" }}>
      {part.retired && <Notice title={`No longer on the list: ${part.retired.reason}`} />}
      {part.recalls.map((recall) => (
        <Notice key={recall.entry} tone="wrong" title={`Lot ${recall.lot} is recalled`}>
          <p>{recall.reason}</p>
          <ButtonLink to={`/stock/${part.id}/recall?lot=${encodeURIComponent(recall.lot)}`}>What holds it</ButtonLink>
        </Notice>
      ))}
      <PlacePick label="Shelf at" place={place.id} onChoose={(id) => setSearch({ place: id }, { replace: true })} />
      <Section title="On the shelf">
        <Shelf shelf={shelf} unit={part.unit} view={view} />
      </Section>
      {part.retired === undefined && <ShelfActs part={part} place={place.id} shelf={shelf} />}
      <Section title="What made it so">
        <ShelfLines view={view} shelf={shelf} part={part} />
      </Section>
      <Section title="The part">
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
  return (
    <>
      <p className={count < 0 ? "stock-wrong" : undefined}>
        <strong>
          {sayThere(count)}, in {unit}.
        </strong>{" "}
        {count < 0 && "Count the shelf: what lies there is the truth."}{" "}
        {counted === undefined ? "Never counted." : `Counted on ${formatDate(counted.day)}.`}
      </p>
      {lots.length > 0 && (
        <ul className="stock-lots">
          {lots.map(({ lot, count: of, goodTo, recalled }) => (
            <li key={lot ?? ""}>
              {lot === undefined ? "Of no lot that was read" : `Lot ${lot}`}: {sayThere(of)}
              {goodTo !== undefined && `, good to ${formatDate(goodTo)}`}
              {goodTo !== undefined && goodTo < view.today && <strong className="stock-wrong"> past its day</strong>}
              {recalled !== undefined && <strong className="stock-wrong"> recalled: do not fit it</strong>}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}

function KeeperLinks({ part, view: { me } }: { readonly part: StockPart; readonly view: StationView }) {
  if (!mayWrite(me.role, "part-set")) return null;
  return (
    <ButtonRow>
      <ButtonLink to={`/stock/${part.id}/setting`}>Change the part</ButtonLink>
      <ButtonLink to={`/stock/${part.id}/recall`}>A lot is recalled</ButtonLink>
    </ButtonRow>
  );
}
