import { sayDuration } from "#words";
import type { KitState, Run } from "#readiness";
import { Link } from "wouter";
import { Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { TREND_WORDS } from "../page/trend-words.ts";

type CasualtyRun = Run & { readonly casualty: NonNullable<Run["casualty"]> };

/** What it did on casualties, newest first: counted there, and not under the conditions of a proof run. */
export function CasualtyRuns({ kit }: { readonly kit: KitState }) {
  const runs = kit.runs.filter((run): run is CasualtyRun => run.casualty !== undefined).toReversed();
  if (runs.length === 0) return null;
  return (
    <div className="kit-trend">
      <h3>On casualties</h3>
      <p>From their sheets. Delivery is what the soundings there showed: an estimate, in no trend and no proof run.</p>
      <Table caption="Runs on casualties" isCaptionHidden columns={COLUMNS} rows={runs} rowKey={keyOf} />
    </div>
  );
}

const COLUMNS: readonly Column<CasualtyRun>[] = [
  {
    key: "who",
    head: "Casualty",
    cell: ({ casualty, at }) => (
      <>
        <Link to={`/casualty/${casualty.id}`}>{casualty.name}</Link> <Timestamp at={at} as="day" />
      </>
    ),
  },
  { key: "start", head: "Start", cell: sayStart },
  { key: "prime", head: "Prime", align: "figures", cell: sayPrime },
  { key: "ran", head: "Ran", align: "figures", cell: ({ ran }) => (ran === undefined ? "not told" : sayRan(ran)) },
  { key: "seen", head: "Delivery seen", cell: ({ seen }) => (seen ? saySeen(seen) : "not seen") },
];

function sayStart({ started, pulls }: Run): string {
  if (started === false) return "would not start";
  return pulls === undefined ? "started" : TREND_WORDS.pulls.say(pulls);
}

function sayPrime({ primeSeconds }: Run): string {
  return primeSeconds === undefined ? "not told" : TREND_WORDS.prime.say(primeSeconds);
}

/** Running time [s], to the minute. */
function sayRan(ran: number): string {
  return sayDuration(ran, "minutes");
}

function saySeen({ p05, p50, p95 }: NonNullable<Run["seen"]>): string {
  const [low, middle, high] = [p05, p50, p95].map((share) => Math.round(100 * share));
  return `about ${middle} % of stated (${low} to ${high})`;
}

function keyOf({ casualty }: CasualtyRun): string {
  return casualty.id;
}
