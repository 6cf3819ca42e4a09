import { sayPercent } from "#words";
import { drawnIn, type Visit, type VisitedLine } from "#readiness";
import {
  reachOf,
  sayReach,
  visitResult,
  type VisitedKitResult,
  type VisitResult,
  sayKappa,
  sayCounted,
} from "#station";
import { useMemo } from "react";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { Notice, Section, Timestamp, sayCount } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { DifferedTable } from "./differed-table.tsx";

/** What a visit showed: how far both agree, what was missed, and each kit. */
export function ComparePanel({ visit }: { readonly visit: Visit }) {
  const view = useStation();
  const result = useMemo(() => visitResult(visit, view), [visit, view]);
  return (
    <div className="visit-form">
      <Agreement result={result} />
      <NotTurnedRound kits={result.kits} />
      <DifferedTable
        title="Missed by the keeper"
        about="Written as right, and found wrong in the visit. Something may have changed since it was written."
        lines={result.missed}
      />
      <DifferedTable
        title="False alarms"
        about="Stood as wrong in the log, and found right in the visit: prove the finding, then it closes."
        lines={result.falseAlarms}
      />
      <DifferedTable title="Right by both, and read otherwise" lines={result.readOtherwise} />
      <DifferedTable
        title="Not compared"
        lines={result.lines.filter(({ outcome }) => ["left", "not-possible", "not-at-hand"].includes(outcome))}
      />
      <Section title="Kit by kit">
        <Table caption="Kit by kit" isCaptionHidden columns={KITS} rows={result.kits} rowKey={({ id }) => id} />
      </Section>
      <Facts visit={visit} result={result} />
      <PaperLink href={`/api/paper/visit/${visit.id}.pdf`} name={`visit-${visit.begun.at.slice(0, 10)}`}>
        Report of this visit as PDF
      </PaperLink>
    </div>
  );
}

function Agreement({ result: { agreed, kappa, wrong, lines } }: { readonly result: VisitResult }) {
  if (!agreed) return <Notice title="Nothing could be compared" />;
  const count = (outcome: VisitedLine["outcome"]) => lines.filter((line) => line.outcome === outcome).length;
  const rows: readonly Called[] = [
    { keeper: "right", right: count("both-right"), wrong: count("missed") },
    { keeper: "wrong", right: count("false-alarm"), wrong: count("both-wrong") },
  ];
  return (
    <Section title="Agreement">
      <p className="visit-size">Both say the same on {sayCounted(agreed)}</p>
      <p>{sayKappa(kappa)}</p>
      {wrong && <p>Found wrong in the visit: {sayCounted(wrong)} of the lines looked at.</p>}
      <Table
        caption="Lines compared, by what each called them"
        columns={CALLED}
        rows={rows}
        rowKey={(row) => row.keeper}
      />
      <p className="quiet">
        In brackets from where to where it may lie, nineteen times in twenty, if lines were independent. Lines of one
        kit hang together, so it is a little wider.
      </p>
    </Section>
  );
}

interface Called {
  readonly keeper: "right" | "wrong";
  readonly right: number;
  readonly wrong: number;
}

const CALLED: readonly Column<Called>[] = [
  { key: "keeper", head: "Keeper", cell: ({ keeper }) => `Keeper wrote ${keeper}` },
  { key: "right", head: "Assessor saw right", align: "figures", cell: ({ right }) => right },
  { key: "wrong", head: "Assessor saw wrong", align: "figures", cell: ({ wrong }) => wrong },
];

function NotTurnedRound({ kits }: Pick<VisitResult, "kits">) {
  const left = kits.filter(({ isNotTurnedRound }) => isNotTurnedRound);
  if (left.length === 0) return null;
  return (
    <CautionBox signal="WARNING" hazard="Looked into, and by the log never opened">
      <p>
        {left.map(({ kit, id }) => kit?.name ?? id).join(", ")}: a pump that was looked into and not turned round may
        fail on the boat that needs it. Where a seal was broken, open the kit in the log, turn it round and seal it.
      </p>
    </CautionBox>
  );
}

const KITS: readonly Column<VisitedKitResult>[] = [
  { key: "kit", head: "Kit", cell: ({ kit, id }) => (kit ? <Link to={`/kit/${id}`}>{kit.name}</Link> : id) },
  {
    key: "with",
    head: "Compared with",
    cell: ({ id, turnaround, kit }) =>
      kit ? (
        <Link to={`/kit/${id}/turnaround/${turnaround}/record`}>{`Turnaround of ${dayOf(kit, turnaround)}`}</Link>
      ) : (
        ""
      ),
  },
  { key: "lines", head: "Lines", align: "figures", cell: ({ lines }) => lines.length },
  { key: "missed", head: "Missed", align: "figures", cell: (row) => countOf(row, "missed") },
  { key: "false", head: "False alarms", align: "figures", cell: (row) => countOf(row, "false-alarm") },
];

function dayOf(kit: NonNullable<VisitedKitResult["kit"]>, turnaround: string): string {
  return kit.turnarounds.find(({ id }) => id === turnaround)?.closed?.at.slice(0, 10) ?? "before";
}

function countOf({ lines }: VisitedKitResult, outcome: VisitedLine["outcome"]): number {
  return lines.filter((line) => line.outcome === outcome).length;
}

/** Who, when, the rule and the sample. */
function Facts({ visit, result }: { readonly visit: Visit; readonly result: VisitResult }) {
  const view = useStation();
  const { begun, ended } = visit;
  const drawn = begun.of.filter(({ lines }) => lines !== undefined).length;
  return (
    <Section title="How it was drawn">
      <p>
        Begun by {nameOf(view, begun.by)}, <Timestamp at={begun.at} />
        {ended && (
          <>
            ; ended by {nameOf(view, ended.by)}, <Timestamp at={ended.at} />
          </>
        )}
        . {ended?.reason !== undefined && `Lines were left out: ${ended.reason}`}
      </p>
      <p>
        {sayCount(drawn, "kit")} of {begun.of.length} and {sayCount(drawnIn(visit).length, "line")} in them were drawn.
        Asked for was to see at least one wrong with a chance of {sayPercent(begun.chance)} where{" "}
        {sayPercent(begun.share)} are.
      </p>
      <p>
        <strong>{sayReach(visit, reachOf(visit, result))}</strong>
      </p>
      <p>
        Seed <span className="visit-seed">{begun.seed}</span>. {DRAWN[result.drawnAgain]}
      </p>
    </Section>
  );
}

const DRAWN: Readonly<Record<VisitResult["drawnAgain"], string>> = {
  same: "Drawn again from the seed, it is the same sample.",
  other: "Drawn again from the seed, it is another sample: lines were struck since, or it was not drawn by this rule.",
  "not-known": "This device does not have all lines to draw it again.",
};
