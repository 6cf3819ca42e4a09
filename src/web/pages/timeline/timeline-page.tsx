import { useWords, withParts } from "#web/language/index.ts";
import { sayDuration, type Words } from "#words";
import type { CasualtyState } from "#readiness";
import { positionsTold, pumpTracks, timelineLines, writersOf, type PumpTrack, type TimelineLine } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useStation, type StationView } from "#web/device/index.ts";
import { EmptyState, Page, Section, Timestamp } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { heldTimeline, type HeldTimeline } from "./timeline-log.ts";
import { useSaid, type Said } from "./use-said.ts";
import "#web/kit-view/kit.css";
import "./timeline.css";

/** What happened on one casualty, afterwards: each pump apart, and every line with what the page said at that moment. */
export default function TimelinePage() {
  const words = useWords("timeline");
  const frame = useWords("frame");
  const { id = "" } = useParams<{ readonly id: string }>();
  const view = useStation();
  const casualty = view.casualties.find((one) => one.id === id);
  if (!casualty) {
    return (
      <Page title={words.noCasualty()} back={{ to: "/casualty", label: frame.casualty() }}>
        <EmptyState title={words.noCasualtyNews()} />
      </Page>
    );
  }
  return (
    <Page title={words.title({ casualty: casualty.name })} back={{ to: `/casualty/${id}`, label: casualty.name }}>
      <Timeline key={id} view={view} casualty={casualty} />
    </Page>
  );
}

type TimelineWords = Words["timeline"];

interface TimelineProps {
  readonly view: StationView;
  readonly casualty: CasualtyState;
}

function Timeline({ view, casualty }: TimelineProps) {
  const words = useWords("timeline");
  const { units } = usePreferences();
  const held = useMemo(() => heldTimeline(view, casualty, units), [view, casualty, units]);
  const lines = useMemo(() => timelineLines(held), [held]);
  const said = useSaid(held.entries, words);
  return (
    <>
      <Facts view={view} held={held} casualty={casualty} />
      <PaperLink href={`/api/paper/casualty/${casualty.id}.pdf`} name="timeline">
        {words.pdf()}
      </PaperLink>
      {pumpTracks(casualty, lines).map((track) => (
        <PumpPart key={track.pump} view={view} track={track} />
      ))}
      <Section title={words.lines()} beside={<SaidSoFar said={said} />}>
        <p className="quiet">{words.linesMore()}</p>
        <Table
          caption={words.lines()}
          isCaptionHidden
          columns={lineColumns(view, said, words)}
          rows={lines}
          rowKey={keyOf}
        />
      </Section>
    </>
  );
}

/** When, where and who. */
function Facts({ view, held, casualty }: TimelineProps & { readonly held: HeldTimeline }) {
  const words = useWords("timeline");
  const { opened, closed } = casualty;
  const positions = positionsTold(held.lines);
  const writers = writersOf(held.lines);
  return (
    <dl className="kit-facts timeline-facts">
      <dt>{words.opened()}</dt>
      <dd>{withParts(words.by, { at: <Timestamp at={opened.at} />, person: nameOf(view, opened.by) })}</dd>
      <dt>{words.closed()}</dt>
      <dd>
        {closed
          ? withParts(words.by, { at: <Timestamp at={closed.at} />, person: nameOf(view, closed.by) })
          : words.notClosed()}
      </dd>
      <dt>{words.position()}</dt>
      <dd>
        {positions.length === 0 && words.notTold()}
        {positions.map(({ at, position, by }) => (
          <span key={at} className="timeline-fact">
            <Timestamp at={at} as="time" /> {position} <span className="quiet">({nameOf(view, by)})</span>
          </span>
        ))}
      </dd>
      <dt>{words.writtenBy()}</dt>
      <dd>{writers.map(({ by, lines }) => words.linesBy({ count: lines, person: nameOf(view, by) })).join("; ")}</dd>
    </dl>
  );
}

/** One pump apart: start, stop, prime, refuelling, what was seen of it. */
function PumpPart({ view, track }: { readonly view: StationView; readonly track: PumpTrack }) {
  const words = useWords("timeline");
  const { name, ran, lines } = track;
  return (
    <Section title={name} beside={<span className="quiet">{sayRan(ran, words)}</span>}>
      <Table caption={name} isCaptionHidden columns={pumpColumns(view, words)} rows={lines} rowKey={keyOf} />
    </Section>
  );
}

function sayRan(ran: number | undefined, words: TimelineWords): string {
  if (ran === undefined) return words.running();
  return ran === 0 ? words.neverRan() : words.ran({ duration: sayDuration(Math.max(60, ran), "minutes") });
}

function SaidSoFar({ said: { awaited } }: { readonly said: Said }) {
  const words = useWords("timeline");
  const left = awaited.size;
  if (left === 0) return null;
  return <span className="quiet">{words.left({ count: left })}</span>;
}

function keyOf({ at, entry, words }: TimelineLine): string {
  return entry ?? `${at} ${words}`;
}

function pumpColumns(view: StationView, words: TimelineWords): readonly Column<TimelineLine>[] {
  return [
    { key: "when", head: words.when(), cell: ({ at }) => <Timestamp at={at} as="time" /> },
    { key: "what", head: words.what(), cell: What },
    { key: "who", head: words.who(), cell: ({ by }) => nameOf(view, by) },
  ];
}

function lineColumns(view: StationView, said: Said, words: TimelineWords): readonly Column<TimelineLine>[] {
  const [when, what, who] = pumpColumns(view, words);
  return [when!, what!, { key: "said", head: words.said(), cell: ({ entry }) => sayUpon(entry, said, words) }, who!];
}

/** What the page said upon a line; of a line upon which it said nothing else, that. */
function sayUpon(entry: string | undefined, { words: known, awaited }: Said, words: TimelineWords): string {
  const said = known.get(entry ?? "");
  if (said !== undefined) return said;
  return awaited.has(entry ?? "") ? words.computing() : words.nothingNew();
}

function What({ words, isGrave }: TimelineLine) {
  return isGrave ? <strong>{words}</strong> : words;
}
