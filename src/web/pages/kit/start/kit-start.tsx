import { sayDuration } from "#words";
import { StartBook, tonightOf, workingCurve, type KitStartRecord, type Tonight } from "#station";
import { useMemo, useState } from "react";
import { StartCurve } from "#web/drawing/start-curve.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { sayHidden, sayNext, sayRecord, sayRests, sayTonight, tenths } from "#web/kit-view/start-words.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { Demands } from "./demands.tsx";
import "./start.css";

/** Will it start? In words and a range, how that falls since it was proved, and what it rests on one tap away. */
export function KitStart({ at: { kit, view } }: { readonly at: KitAtHand }) {
  const [book] = useState(() => new StartBook());
  const record = useMemo(() => book.read(kit, view), [book, kit, view]);
  const tonight = useMemo(() => tonightOf(record, `${view.today}T12:00:00Z`), [record, view.today]);
  return (
    <div className="kit-trend">
      <h3>Will it start?</h3>
      {tonight && (
        <p>
          <strong>{sayTonight(tonight)}</strong>, {sayDuration(86_400 * tonight.days, "long")} after it was last proved.
        </p>
      )}
      <p>{sayRecord(record)}</p>
      <p>{sayNext(record)}</p>
      {tonight && <OverTime record={record} tonight={tonight} />}
      <details className="kit-table">
        <summary>What that rests on</summary>
        <p>{sayRests(record)}</p>
        <p>{sayHidden(record)}</p>
        <Demands demands={record.demands} />
      </details>
    </div>
  );
}

const YEARS = 2 * 365.25;

/** The curve to two years after the proof, or to a third beyond today. */
function OverTime({ record, tonight }: { readonly record: KitStartRecord; readonly tonight: Tonight }) {
  const points = useMemo(() => workingCurve(record, Math.max(YEARS, tonight.days * 1.33), 24), [record, tonight]);
  const label = `The chance that it works against the months since it was last proved. ${sayTonight(tonight)}, ${sayDuration(86_400 * tonight.days, "long")} after. All in the table below.`;
  return (
    <>
      <StartCurve label={label} points={points} today={tonight} todayWords="Today" />
      <p className="quiet">The line is the middle, the band holds nine times in ten.</p>
      <details className="kit-table">
        <summary>Chance since the last proof as a table</summary>
        <Table
          caption="Chance since the last proof"
          isCaptionHidden
          columns={COLUMNS}
          rows={points.filter((_, i) => i % 3 === 0)}
          rowKey={({ days }) => `${days}`}
        />
      </details>
    </>
  );
}

const COLUMNS: readonly Column<Tonight>[] = [
  { key: "after", head: "After", cell: ({ days }) => sayDuration(86_400 * days, "long") },
  { key: "works", head: "Starts, primes and delivers", cell: ({ working }) => tenths(working) },
];
