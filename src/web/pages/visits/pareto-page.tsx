import { sayPercent, type Words } from "#words";
import { addDays } from "#base";
import {
  leftOutOf,
  neverFoundLines,
  paretoOf,
  type LeftOut,
  type NeverFoundLine,
  type ParetoBy,
  type ParetoRow,
} from "#station";
import { useMemo, useState } from "react";
import { useStation } from "#web/device/index.ts";
import { ParetoChart } from "#web/drawing/pareto-chart.tsx";
import { EmptyState, Page, Section } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { PickRow } from "#web/parts/pick-row.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import "./visits.css";
import { useReady, useWords } from "#web/language/index.ts";

/** So many bars are drawn; all are in the table. */
const MOST_BARS = 12;
const YEAR = 365;

/** Where findings fall, and lines that never found anything. */
export default function ParetoPage() {
  useReady("visits", "drawing");
  const words = useWords("visits");
  const { today } = useStation();
  const [by, setBy] = useState<ParetoBy>("item");
  const [from, setFrom] = useState<string | undefined>(() => addDays(today, -YEAR));
  const [to, setTo] = useState<string | undefined>(today);
  return (
    <Page title={words.whereFall()} back={{ to: "/visits", label: words.title() }}>
      <div className="visit-form">
        <PickRow
          label={words.countedBy()}
          options={BY.map((id) => ({ id, words: words[BY_WORDS[id]]() }))}
          picked={by}
          onPick={setBy}
        />
        <DateField
          label={words.from()}
          hint={words.fromHint()}
          value={from}
          onChange={setFrom}
          mayBeMonth={false}
          isPrinted={false}
        />
        <DateField
          label={words.to()}
          hint={words.toHint()}
          value={to}
          onChange={setTo}
          mayBeMonth={false}
          isPrinted={false}
        />
        {from !== undefined && to !== undefined && from <= to ? (
          <Findings by={by} from={from} to={to} />
        ) : (
          <p className="quiet">{words.writeDays()}</p>
        )}
        <NeverFound />
      </div>
    </Page>
  );
}

const BY: readonly ParetoBy[] = ["item", "mode", "place", "pattern"];
const BY_WORDS = { item: "byItem", mode: "byMode", place: "byPlace", pattern: "byPattern" } as const;

interface FindingsProps {
  readonly by: ParetoBy;
  readonly from: string;
  readonly to: string;
}

function Findings({ by, from, to }: FindingsProps) {
  const words = useWords("visits");
  const view = useStation();
  const rows = useMemo(() => paretoOf(view, by, { from, to }), [view, by, from, to]);
  const out = useMemo(() => leftOutOf(view, { from, to }), [view, from, to]);
  const all = rows.reduce((sum, { count }) => sum + count, 0);
  if (all === 0) {
    return (
      <>
        <EmptyState title={words.nothingFound()} />
        <LeftOutNote out={out} />
      </>
    );
  }
  const label = words.chart({ count: all, label: rows[0]?.label ?? "", most: rows[0]?.count ?? 0 });
  return (
    <Section title={words.findings({ count: all })}>
      <ParetoChart label={label} bars={rows.slice(0, MOST_BARS)} all={all} what={words.findingsUnit()} />
      {rows.length > MOST_BARS && <p className="quiet">{words.mostDrawn({ count: MOST_BARS })}</p>}
      <Table caption={words.table()} columns={columns(words)} rows={rows} rowKey={({ key }) => key} />
      <LeftOutNote out={out} />
      <p className="quiet">{words.tableMore()}</p>
    </Section>
  );
}

/** How many findings do not count here, and why. */
function LeftOutNote({ out }: { readonly out: LeftOut }) {
  const words = useWords("visits");
  const told = [
    out.robbed > 0 && words.outRobbed({ count: out.robbed }),
    out.recalled > 0 && words.outRecalled({ count: out.recalled }),
    out.drill > 0 && words.outDrill({ count: out.drill }),
  ].filter((one) => one !== false);
  if (told.length === 0) return null;
  return (
    <>
      <p>{words.leftOut({ count: out.robbed + out.recalled + out.drill })}</p>
      <ul>
        {told.map((one) => (
          <li key={one}>{one}</li>
        ))}
      </ul>
    </>
  );
}

const columns = (words: Words["visits"]): readonly Column<ParetoRow>[] => [
  { key: "what", head: words.whatHead(), cell: ({ label }) => label },
  { key: "count", head: words.findingsHead(), align: "figures", cell: ({ count }) => count },
  { key: "share", head: words.shareHead(), align: "figures", cell: ({ share }) => sayPercent(share) },
  { key: "upTo", head: words.upToHead(), align: "figures", cell: ({ upTo }) => sayPercent(upTo) },
];

function NeverFound() {
  const words = useWords("visits");
  const view = useStation();
  const [least, setLeast] = useState<number | undefined>(20);
  const lines = useMemo(() => (least === undefined ? [] : neverFoundLines(view, least)), [view, least]);
  return (
    <Section title={words.never()}>
      <NumberField label={words.neverLeast()} value={least} onChange={setLeast} least={1} most={100_000} />
      <p className="quiet">{words.neverMore()}</p>
      {lines.length === 0 ? (
        <EmptyState title={words.noSuchLine()} />
      ) : (
        <details>
          <summary>{words.neverLines({ count: lines.length })}</summary>
          <Table
            caption={words.never()}
            isCaptionHidden
            columns={neverColumns(words)}
            rows={lines}
            rowKey={({ pattern, check }) => `${pattern.id} ${check.id}`}
          />
        </details>
      )}
    </Section>
  );
}

const neverColumns = (words: Words["visits"]): readonly Column<NeverFoundLine>[] => [
  {
    key: "check",
    head: words.line(),
    cell: ({ check, line }) => (line === undefined ? check.ask : words.lineAsk({ line, ask: check.ask })),
  },
  { key: "pattern", head: words.byPattern(), cell: ({ pattern }) => pattern.name },
  { key: "looks", head: words.looks(), align: "figures", cell: ({ looks }) => looks },
  { key: "below", head: words.below(), cell: ({ below }) => words.belowShare({ share: sayPercent(below) }) },
];
