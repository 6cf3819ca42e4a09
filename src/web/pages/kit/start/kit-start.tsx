import { sayDuration } from "#words";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { StartBook, tonightOf, workingCurve, type KitStartRecord, type Tonight } from "#station";
import { standingInWords } from "#readiness";
import { useMemo, useState } from "react";
import { StartCurve } from "#web/drawing/start-curve.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import {
  sayHidden,
  sayNext,
  sayNoChance,
  sayRecord,
  sayOneMore,
  sayRests,
  sayTonight,
  tenths,
} from "#web/kit-view/starts/start-words.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { ToldOf } from "#web/kit-view/starts/told-of.tsx";
import { Demands } from "./demands.tsx";
import "./start.css";

/** Will it start and give water? In words and a range, how that falls since it was proved, and what it rests on one tap away. */
export function KitStart({ at: { kit, view } }: { readonly at: KitAtHand }) {
  const words = useWords("starts");
  const [book] = useState(() => new StartBook());
  const record = useMemo(() => book.read(kit, view), [book, kit, view]);
  const standingWords = useWords("standing");
  const standing = view.standings.get(kit.id);
  const none = sayNoChance(standing && standingInWords(standing, standingWords), words);
  const told = useMemo(() => tonightOf(record, `${view.today}T12:00:00Z`), [record, view.today]);
  const tonight = none === undefined ? told : undefined;
  const oneMore = sayOneMore(record, words);
  return (
    <div className="kit-trend">
      <h3>{words.willItStart()}</h3>
      {none !== undefined && <p>{none}</p>}
      {tonight && (
        <p>
          <strong>{sayTonight(tonight, words)}</strong>
          {words.afterProof({ duration: sayDuration(86_400 * tonight.days, "long") })}
        </p>
      )}
      <p>{sayRecord(record, words)}</p>
      {none === undefined && (
        <p>
          {sayNext(record, words)} {sayRests(record, words)}
        </p>
      )}
      <ToldOf kits={[kit]} />
      {tonight && <OverTime record={record} tonight={tonight} />}
      <details className="kit-table">
        <summary>{words.restsOn()}</summary>
        {none !== undefined && <p>{sayRests(record, words)}</p>}
        {oneMore !== undefined && <p>{oneMore}</p>}
        <p>{sayHidden(record, words)}</p>
        <Demands demands={record.demands} />
      </details>
    </div>
  );
}

const YEARS = 2 * 365.25;

/** The curve to two years after the proof, or to a third beyond today. */
function OverTime({ record, tonight }: { readonly record: KitStartRecord; readonly tonight: Tonight }) {
  const words = useWords("starts");
  const points = useMemo(() => workingCurve(record, Math.max(YEARS, tonight.days * 1.33), 24), [record, tonight]);
  const duration = sayDuration(86_400 * tonight.days, "long");
  const label = words.curveOf({ tonight: sayTonight(tonight, words), duration });
  return (
    <>
      <StartCurve label={label} points={points} today={tonight} todayWords={words.today()} />
      <p className="quiet">{words.bandIs()}</p>
      <details className="kit-table">
        <summary>{words.curveTable()}</summary>
        <Table
          caption={words.curveCaption()}
          isCaptionHidden
          columns={columnsOf(words)}
          rows={points.filter((_, i) => i % 3 === 0)}
          rowKey={({ days }) => `${days}`}
        />
      </details>
    </>
  );
}

function columnsOf(words: Words["starts"]): readonly Column<Tonight>[] {
  return [
    { key: "after", head: words.after(), cell: ({ days }) => sayDuration(86_400 * days, "long") },
    { key: "works", head: words.works(), cell: ({ working }) => tenths(working, words) },
  ];
}
