import { sayDuration } from "#words";
import type { CasualtyState } from "#readiness";
import { positionsTold, pumpTracks, timelineLines, writersOf, type PumpTrack, type TimelineLine } from "#station";
import { useMemo } from "react";
import { useParams } from "wouter";
import { useStation, type StationView } from "#web/device/index.ts";
import { EmptyState, Page, sayCount, Section, Timestamp } from "#web/parts/index.ts";
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
  const { id = "" } = useParams<{ readonly id: string }>();
  const view = useStation();
  const casualty = view.casualties.find((one) => one.id === id);
  if (!casualty) {
    return (
      <Page title="No such casualty" back={{ to: "/casualty", label: "Casualty" }}>
        <EmptyState title="This device knows no casualty at this address" />
      </Page>
    );
  }
  return (
    <Page title={`${casualty.name}: timeline`} back={{ to: `/casualty/${id}`, label: casualty.name }}>
      <Timeline key={id} view={view} casualty={casualty} />
    </Page>
  );
}

interface TimelineProps {
  readonly view: StationView;
  readonly casualty: CasualtyState;
}

function Timeline({ view, casualty }: TimelineProps) {
  const { units } = usePreferences();
  const held = useMemo(() => heldTimeline(view, casualty, units), [view, casualty, units]);
  const lines = useMemo(() => timelineLines(held), [held]);
  const said = useSaid(held.entries);
  return (
    <>
      <Facts view={view} held={held} casualty={casualty} />
      <PaperLink href={`/api/paper/casualty/${casualty.id}.pdf`} name="timeline">
        Timeline as PDF
      </PaperLink>
      {pumpTracks(casualty, lines).map((track) => (
        <PumpPart key={track.pump} view={view} track={track} />
      ))}
      <Section title="Line by line" beside={<SaidSoFar said={said} />}>
        <p className="quiet">
          What the page said upon a line is computed anew from the lines that its writer’s device had at that moment.
        </p>
        <Table caption="Line by line" isCaptionHidden columns={lineColumns(view, said)} rows={lines} rowKey={keyOf} />
      </Section>
    </>
  );
}

/** When, where and who. */
function Facts({ view, held, casualty }: TimelineProps & { readonly held: HeldTimeline }) {
  const { opened, closed } = casualty;
  const positions = positionsTold(held.lines);
  const writers = writersOf(held.lines);
  return (
    <dl className="kit-facts timeline-facts">
      <dt>Opened</dt>
      <dd>
        <Timestamp at={opened.at} /> by {nameOf(view, opened.by)}
      </dd>
      <dt>Closed</dt>
      <dd>
        {closed ? <Timestamp at={closed.at} /> : "not closed"}
        {closed && ` by ${nameOf(view, closed.by)}`}
      </dd>
      <dt>Position</dt>
      <dd>
        {positions.length === 0 && "not told"}
        {positions.map(({ at, position, by }) => (
          <span key={at} className="timeline-fact">
            <Timestamp at={at} as="time" /> {position} <span className="quiet">({nameOf(view, by)})</span>
          </span>
        ))}
      </dd>
      <dt>Written by</dt>
      <dd>{writers.map(({ by, lines }) => `${nameOf(view, by)}, ${sayCount(lines, "line")}`).join("; ")}</dd>
    </dl>
  );
}

/** One pump apart: start, stop, prime, refuelling, what was seen of it. */
function PumpPart({ view, track }: { readonly view: StationView; readonly track: PumpTrack }) {
  const { name, ran, lines } = track;
  return (
    <Section title={name} beside={<span className="quiet">{sayRan(ran)}</span>}>
      <Table caption={name} isCaptionHidden columns={pumpColumns(view)} rows={lines} rowKey={keyOf} />
    </Section>
  );
}

function sayRan(ran: number | undefined): string {
  if (ran === undefined) return "still running by the log";
  return ran === 0 ? "never ran" : `ran ${sayDuration(Math.max(60, ran), "minutes")} in all`;
}

function SaidSoFar({ said: { awaited } }: { readonly said: Said }) {
  const left = awaited.size;
  if (left === 0) return null;
  return <span className="quiet">{sayCount(left, "moment")} still to compute</span>;
}

function keyOf({ at, entry, words }: TimelineLine): string {
  return entry ?? `${at} ${words}`;
}

function pumpColumns(view: StationView): readonly Column<TimelineLine>[] {
  return [
    { key: "when", head: "When", cell: ({ at }) => <Timestamp at={at} as="time" /> },
    { key: "what", head: "What", cell: What },
    { key: "who", head: "By", cell: ({ by }) => nameOf(view, by) },
  ];
}

function lineColumns(view: StationView, said: Said): readonly Column<TimelineLine>[] {
  const [when, what, who] = pumpColumns(view);
  return [when!, what!, { key: "said", head: "The page said", cell: ({ entry }) => sayUpon(entry, said) }, who!];
}

/** What the page said upon a line; of a line upon which it said nothing else, that. */
function sayUpon(entry: string | undefined, { words, awaited }: Said): string {
  const said = words.get(entry ?? "");
  if (said !== undefined) return said;
  return awaited.has(entry ?? "") ? "being computed" : "nothing new";
}

function What({ words, isGrave }: TimelineLine) {
  return isGrave ? <strong>{words}</strong> : words;
}
