import { sayPercent } from "#words";
import { addDays } from "#base";
import { neverFoundLines, paretoOf, type NeverFoundLine, type ParetoBy, type ParetoRow } from "#station";
import { useMemo, useState } from "react";
import { useStation } from "#web/device/index.ts";
import { ParetoChart } from "#web/drawing/pareto-chart.tsx";
import { EmptyState, Page, Section, sayCount } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { PickRow } from "#web/parts/pick-row.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import "./visits.css";

/** So many bars are drawn; all are in the table. */
const MOST_BARS = 12;
const YEAR = 365;

/** Where findings fall, and lines that never found anything. */
export default function ParetoPage() {
  const { today } = useStation();
  const [by, setBy] = useState<ParetoBy>("item");
  const [from, setFrom] = useState<string | undefined>(() => addDays(today, -YEAR));
  const [to, setTo] = useState<string | undefined>(today);
  return (
    <Page title="Where findings fall" back={{ to: "/visits", label: "Visits" }}>
      <div className="visit-form">
        <PickRow label="Counted by" options={BY} picked={by} onPick={setBy} />
        <DateField
          label="From"
          hint="The first day that counts."
          value={from}
          onChange={setFrom}
          mayBeMonth={false}
          isPrinted={false}
        />
        <DateField
          label="To"
          hint="The last day that counts."
          value={to}
          onChange={setTo}
          mayBeMonth={false}
          isPrinted={false}
        />
        {from !== undefined && to !== undefined && from <= to ? (
          <Findings by={by} from={from} to={to} />
        ) : (
          <p className="quiet">Write a first day and a last day that is not before it.</p>
        )}
        <NeverFound />
      </div>
    </Page>
  );
}

const BY: readonly { readonly id: ParetoBy; readonly words: string }[] = [
  { id: "item", words: "Item" },
  { id: "mode", words: "What was wrong" },
  { id: "place", words: "Place" },
  { id: "pattern", words: "Pattern" },
];

interface FindingsProps {
  readonly by: ParetoBy;
  readonly from: string;
  readonly to: string;
}

function Findings({ by, from, to }: FindingsProps) {
  const view = useStation();
  const rows = useMemo(() => paretoOf(view, by, { from, to }), [view, by, from, to]);
  const all = rows.reduce((sum, { count }) => sum + count, 0);
  if (all === 0) return <EmptyState title="Nothing was found on these days" />;
  const label = `${sayCount(all, "finding")}; most often ${rows[0]?.label ?? ""}, ${rows[0]?.count ?? 0} of them.`;
  return (
    <Section title={sayCount(all, "finding")}>
      <ParetoChart label={label} bars={rows.slice(0, MOST_BARS)} all={all} what="findings" />
      {rows.length > MOST_BARS && (
        <p className="quiet">Drawn are the {MOST_BARS} most often found; the table has all.</p>
      )}
      <Table caption="Findings, most often first" columns={ROWS} rows={rows} rowKey={({ key }) => key} />
      <p className="quiet">
        Findings of a drill are left out unless they were real. A place is where the kit is now. Few findings say
        little: the order may be chance.
      </p>
    </Section>
  );
}

const ROWS: readonly Column<ParetoRow>[] = [
  { key: "what", head: "What", cell: ({ label }) => label },
  { key: "count", head: "Findings", align: "figures", cell: ({ count }) => count },
  { key: "share", head: "Share", align: "figures", cell: ({ share }) => sayPercent(share) },
  { key: "upTo", head: "Up to here", align: "figures", cell: ({ upTo }) => sayPercent(upTo) },
];

function NeverFound() {
  const view = useStation();
  const [least, setLeast] = useState<number | undefined>(20);
  const lines = useMemo(() => (least === undefined ? [] : neverFoundLines(view, least)), [view, least]);
  return (
    <Section title="Lines that never found anything">
      <NumberField label="Looked at so many times or more" value={least} onChange={setLeast} least={1} most={100_000} />
      <p className="quiet">
        Never so far does not mean never: nineteen times in twenty such a line finds something in fewer looks than the
        last column says. Where nothing else finds what grounds a kit, it stays.
      </p>
      {lines.length === 0 ? (
        <EmptyState title="No such line" />
      ) : (
        <details>
          <summary>{sayCount(lines.length, "line")}</summary>
          <Table
            caption="Lines that never found anything"
            isCaptionHidden
            columns={NEVER}
            rows={lines}
            rowKey={({ pattern, check }) => `${pattern.id} ${check.id}`}
          />
        </details>
      )}
    </Section>
  );
}

const NEVER: readonly Column<NeverFoundLine>[] = [
  {
    key: "check",
    head: "Line",
    cell: ({ check, line }) => (line === undefined ? check.ask : `Line ${line}: ${check.ask}`),
  },
  { key: "pattern", head: "Pattern", cell: ({ pattern }) => pattern.name },
  { key: "looks", head: "Looks", align: "figures", cell: ({ looks }) => looks },
  { key: "below", head: "Finds something in fewer than", cell: ({ below }) => `${sayPercent(below)} of looks` },
];
