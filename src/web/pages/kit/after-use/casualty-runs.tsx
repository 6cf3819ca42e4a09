import { sayDuration, type Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { KitState, Run } from "#readiness";
import { Link } from "wouter";
import { Timestamp } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayPrimed } from "../page/trend-words.ts";

type CasualtyRun = Run & { readonly casualty: NonNullable<Run["casualty"]> };

/** What it did on casualties, newest first: counted there, and not under the conditions of a proof run. */
export function CasualtyRuns({ kit }: { readonly kit: KitState }) {
  const words = useWords("trends");
  const runs = kit.runs.filter((run): run is CasualtyRun => run.casualty !== undefined).toReversed();
  if (runs.length === 0) return null;
  return (
    <div className="kit-trend">
      <h3>{words.onCasualties()}</h3>
      <p>{words.onCasualtiesMore()}</p>
      <Table caption={words.casualtyRuns()} isCaptionHidden columns={columnsOf(words)} rows={runs} rowKey={keyOf} />
    </div>
  );
}

function columnsOf(words: Words["trends"]): readonly Column<CasualtyRun>[] {
  return [
    {
      key: "who",
      head: words.casualty(),
      cell: ({ casualty, at }) => (
        <>
          <Link to={`/casualty/${casualty.id}`}>{casualty.name}</Link> <Timestamp at={at} as="day" />
        </>
      ),
    },
    { key: "start", head: words.start(), cell: (run) => sayStart(run, words) },
    { key: "prime", head: words.prime(), align: "figures", cell: (run) => sayPrime(run, words) },
    {
      key: "ran",
      head: words.ran(),
      align: "figures",
      cell: ({ ran }) => (ran === undefined ? words.notTold() : sayRan(ran)),
    },
    { key: "seen", head: words.deliverySeen(), cell: ({ seen }) => (seen ? saySeen(seen, words) : words.notSeen()) },
  ];
}

function sayStart({ started, pulls }: Run, words: Words["trends"]): string {
  if (started === false) return words.wouldNotStart();
  return pulls === undefined ? words.started() : words.sayPulls({ count: pulls });
}

function sayPrime({ primeSeconds }: Run, words: Words["trends"]): string {
  return primeSeconds === undefined ? words.notTold() : sayPrimed(primeSeconds);
}

/** Running time [s], to the minute. */
function sayRan(ran: number): string {
  return sayDuration(ran, "minutes");
}

function saySeen({ p05, p50, p95 }: NonNullable<Run["seen"]>, words: Words["trends"]): string {
  const [low = 0, middle = 0, high = 0] = [p05, p50, p95].map((share) => Math.round(100 * share));
  return words.seen({ low, middle, high });
}

function keyOf({ casualty }: CasualtyRun): string {
  return casualty.id;
}
