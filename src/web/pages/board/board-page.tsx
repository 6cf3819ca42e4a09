import { useMemo, useState, type ReactNode } from "react";
import { useWords } from "#web/language/index.ts";
import { Link, useSearchParams } from "wouter";
import { mayWrite } from "#station";
import { useStation, type StationView } from "#web/device/index.ts";
import { ButtonLink, ButtonRow, EmptyState, MoreOnPhone, Page, TextField } from "#web/parts/index.ts";
import { BoardAnswers, PlaceFilter, type PlaceFilterProps } from "./board-answers.tsx";
import { findLines, placeLines, type PlaceLines } from "#web/kit-view/board-lines.ts";
import { BandShelf } from "#web/kit-view/band-shelf.ts";
import { PlaceBoard } from "./place-board.tsx";
import { StartsContext, useStarts } from "./start/use-starts.ts";
import { YearSection } from "./year-section.tsx";
import { GoOn } from "#web/kit-view/go-on.tsx";
import { VisitOn } from "#web/kit-view/visit/visit-on.tsx";
import { placesAhead, type PlaceAhead } from "#web/kit-view/year-ahead.ts";
import { WorkShort } from "#web/kit-view/work-short.tsx";
import "./board.css";

/** From so many kits on, there is a box to find one by name. */
const MANY = 15;

/** Which kits are ready, until when and why; where strength falls short; then the year ahead. */
export default function BoardPage() {
  const words = useWords("board");
  const view = useStation();
  const [search, setSearch] = useSearchParams();
  const wanted = search.get("place");
  const chosen = view.places.find(({ id }) => id === wanted)?.id;
  const choose = (place: string | undefined) => setSearch(place === undefined ? {} : { place }, { replace: true });
  return (
    <Page title={view.stationName || words.title()}>
      <GoOn />
      <VisitOn />
      {view.kits.length === 0 ? <NoKits view={view} /> : <Board view={view} chosen={chosen} onChoose={choose} />}
      <RetiredKits kits={view.retired} />
    </Page>
  );
}

function Board({ view, chosen, onChoose }: { readonly view: StationView } & PlaceFilterProps) {
  const words = useWords("board");
  const [text, setText] = useState("");
  const places = useMemo(() => shownOf(placeLines(view), chosen), [view, chosen]);
  const ahead = useAhead(places, view);
  const found = findLines(places, text);
  const isMany = places.reduce((sum, { ready, notReady }) => sum + ready.length + notReady.length, 0) >= MANY;
  const starts = useStarts(view);
  return (
    <StartsContext value={starts}>
      <WorkShort place={chosen} />
      <BoardAnswers places={ahead} isSeveral={places.length > 1} />
      <PlaceFilter chosen={chosen} onChoose={onChoose} />
      {isMany && <TextField label={words.find()} type="search" value={text} onChange={setText} isShort />}
      {found.map((lines) => (
        <MoreWhere key={lines.place.id} isOne={found.length === 1 || text.trim() !== ""} lines={lines}>
          <PlaceBoard lines={lines} isSearch={text.trim() !== ""} />
        </MoreWhere>
      ))}
      {text.trim() !== "" && found.every(({ ready, notReady }) => ready.length + notReady.length === 0) && (
        <EmptyState title={words.foundNone()} />
      )}
      <MoreOnPhone title={words.year()} parts={["year"]}>
        <YearSection places={ahead} />
      </MoreOnPhone>
      <ButtonRow>
        <ButtonLink to="/label">{words.readLabel()}</ButtonLink>
        {mayWrite(view.me.role, "kit-enrolled") && <ButtonLink to="/enrol">{words.enrol()}</ButtonLink>}
      </ButtonRow>
    </StartsContext>
  );
}

interface MoreWhereProps {
  readonly lines: PlaceLines;
  /** The one place shown, or what was found: then its kits stand open. */
  readonly isOne: boolean;
  readonly children: ReactNode;
}

/** Among several places each one's kits lie behind a tap on a phone: who they are is said above, each a tap away. */
function MoreWhere({ lines: { place, notReady, ready }, isOne, children }: MoreWhereProps) {
  const words = useWords("board");
  if (isOne) return children;
  const title = words.place({ place: place.name, notReady: notReady.length, ready: ready.length });
  return <MoreOnPhone title={title}>{children}</MoreOnPhone>;
}

/** Kits taken off charge, whose pages still tell of them. */
function RetiredKits({ kits }: Readonly<{ kits: StationView["retired"] }>) {
  const words = useWords("board");
  if (kits.length === 0) return null;
  return (
    <details className="board-table">
      <summary>{words.retired({ count: kits.length })}</summary>
      <ul className="board-rows">
        {kits.map(({ id, name, serial, retired }) => (
          <li key={id}>
            <Link to={`/kit/${id}`}>{name}</Link> <span className="quiet">{serial}</span>, {retired?.reason}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** The year ahead; what bears on a kit is read anew only when that kit changes. */
function useAhead(places: readonly PlaceLines[], view: StationView): readonly PlaceAhead[] {
  const [shelf] = useState(() => new BandShelf());
  return useMemo(() => placesAhead(places, view, shelf), [places, view, shelf]);
}

function shownOf(places: readonly PlaceLines[], chosen: string | undefined): readonly PlaceLines[] {
  return chosen === undefined ? places : places.filter(({ place }) => place.id === chosen);
}

/** An empty station: what comes first. */
function NoKits({ view }: { readonly view: StationView }) {
  const words = useWords("board");
  return (
    <EmptyState title={words.noKits()}>
      <p>
        {mayWrite(view.me.role, "place-set")
          ? words.placesSoFar({ places: view.places.map(({ name }) => name).join(", ") })
          : words.keeperTakes()}
      </p>
      {mayWrite(view.me.role, "kit-enrolled") && (
        <ButtonRow>
          <ButtonLink to="/enrol">{words.enrol()}</ButtonLink>
          {mayWrite(view.me.role, "place-set") && <ButtonLink to="/settings">{words.places()}</ButtonLink>}
        </ButtonRow>
      )}
    </EmptyState>
  );
}
