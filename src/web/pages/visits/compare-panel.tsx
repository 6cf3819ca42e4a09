import { sayPercent, type Words } from "#words";
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
import { Notice, Section, Timestamp } from "#web/parts/index.ts";
import { PaperLink } from "#web/parts/paper-link.tsx";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { DifferedTable } from "./differed-table.tsx";
import { useWords, withParts } from "#web/language/index.ts";

/** What a visit showed: how far both agree, what was missed, and each kit. */
export function ComparePanel({ visit }: { readonly visit: Visit }) {
  const words = useWords("visit");
  const view = useStation();
  const result = useMemo(() => visitResult(visit, view), [visit, view]);
  return (
    <div className="visit-form">
      <Agreement result={result} />
      <NotTurnedRound kits={result.kits} />
      <DifferedTable title={words.missedByKeeper()} about={words.missedMore()} lines={result.missed} />
      <DifferedTable title={words.falseAlarms()} about={words.falseMore()} lines={result.falseAlarms} />
      <DifferedTable title={words.readOtherwise()} lines={result.readOtherwise} />
      <DifferedTable
        title={words.notCompared()}
        lines={result.lines.filter(({ outcome }) => ["left", "not-possible", "not-at-hand"].includes(outcome))}
      />
      <Section title={words.kitByKit()}>
        <Table
          caption={words.kitByKit()}
          isCaptionHidden
          columns={kitColumns(words)}
          rows={result.kits}
          rowKey={({ id }) => id}
        />
      </Section>
      <Facts visit={visit} result={result} />
      <PaperLink href={`/api/paper/visit/${visit.id}.pdf`} name={`visit-${visit.begun.at.slice(0, 10)}`}>
        {words.report()}
      </PaperLink>
    </div>
  );
}

function Agreement({ result: { agreed, kappa, wrong, lines } }: { readonly result: VisitResult }) {
  const words = useWords("visit");
  if (!agreed) return <Notice title={words.nothingCompared()} />;
  const count = (outcome: VisitedLine["outcome"]) => lines.filter((line) => line.outcome === outcome).length;
  const rows: readonly Called[] = [
    { keeper: "right", right: count("both-right"), wrong: count("missed") },
    { keeper: "wrong", right: count("false-alarm"), wrong: count("both-wrong") },
  ];
  return (
    <Section title={words.agreement()}>
      <p className="visit-size">{words.bothSay({ agreed: sayCounted(agreed) })}</p>
      <p>{sayKappa(kappa)}</p>
      {wrong && <p>{words.foundWrong({ wrong: sayCounted(wrong) })}</p>}
      <Table caption={words.called()} columns={calledColumns(words)} rows={rows} rowKey={(row) => row.keeper} />
      <p className="quiet">{words.calledMore()}</p>
    </Section>
  );
}

interface Called {
  readonly keeper: "right" | "wrong";
  readonly right: number;
  readonly wrong: number;
}

const calledColumns = (words: Words["visit"]): readonly Column<Called>[] => [
  {
    key: "keeper",
    head: words.keeper(),
    cell: ({ keeper }) => (keeper === "right" ? words.keeperRight() : words.keeperWrong()),
  },
  { key: "right", head: words.assessorRight(), align: "figures", cell: ({ right }) => right },
  { key: "wrong", head: words.assessorWrong(), align: "figures", cell: ({ wrong }) => wrong },
];

function NotTurnedRound({ kits }: Pick<VisitResult, "kits">) {
  const words = useWords("visit");
  const left = kits.filter(({ isNotTurnedRound }) => isNotTurnedRound);
  if (left.length === 0) return null;
  return (
    <CautionBox signal="WARNING" hazard={words.notTurned()}>
      <p>{words.notTurnedMore({ kits: left.map(({ kit, id }) => kit?.name ?? id).join(", ") })}</p>
    </CautionBox>
  );
}

const kitColumns = (words: Words["visit"]): readonly Column<VisitedKitResult>[] => [
  { key: "kit", head: words.kit(), cell: ({ kit, id }) => (kit ? <Link to={`/kit/${id}`}>{kit.name}</Link> : id) },
  {
    key: "with",
    head: words.comparedWith(),
    cell: ({ id, turnaround, kit }) =>
      kit ? <Link to={`/kit/${id}/turnaround/${turnaround}/record`}>{sayTurnaround(kit, turnaround, words)}</Link> : "",
  },
  { key: "lines", head: words.linesCompared(), align: "figures", cell: ({ compared }) => compared },
  { key: "missed", head: words.missed(), align: "figures", cell: (row) => countOf(row, "missed") },
  { key: "false", head: words.falseAlarms(), align: "figures", cell: (row) => countOf(row, "false-alarm") },
];

function sayTurnaround(kit: NonNullable<VisitedKitResult["kit"]>, turnaround: string, words: Words["visit"]): string {
  const day = kit.turnarounds.find(({ id }) => id === turnaround)?.closed?.at.slice(0, 10);
  return day === undefined ? words.turnaroundBefore() : words.turnaroundOf({ day });
}

function countOf({ lines }: VisitedKitResult, outcome: VisitedLine["outcome"]): number {
  return lines.filter((line) => line.outcome === outcome).length;
}

/** Who, when, the rule and the sample. */
function Facts({ visit, result }: { readonly visit: Visit; readonly result: VisitResult }) {
  const words = useWords("visit");
  const { begun, ended } = visit;
  const drawn = begun.of.filter(({ lines }) => lines !== undefined).length;
  return (
    <Section title={words.howDrawn()}>
      <p>
        <BegunEnded visit={visit} /> {ended?.reason !== undefined && words.linesLeftOut({ reason: ended.reason })}
      </p>
      <p>
        {words.drawn({
          kits: drawn,
          all: begun.of.length,
          lines: drawnIn(visit).length,
          chance: sayPercent(begun.chance),
          share: sayPercent(begun.share),
        })}
      </p>
      <p>
        <strong>{sayReach(visit, reachOf(visit, result))}</strong>
      </p>
      <p>
        {withParts(words.seed, { seed: <span className="visit-seed">{begun.seed}</span> })}{" "}
        {words[DRAWN[result.drawnAgain]]()}
      </p>
    </Section>
  );
}

function BegunEnded({ visit: { begun, ended } }: { readonly visit: Visit }) {
  const words = useWords("visit");
  const view = useStation();
  const who = nameOf(view, begun.by);
  const at = <Timestamp at={begun.at} />;
  if (!ended) return withParts((mark) => words.begunBy({ ...mark, who }), { at });
  const ender = nameOf(view, ended.by);
  return withParts((marks) => words.begunEndedBy({ ...marks, who, ender }), { at, ended: <Timestamp at={ended.at} /> });
}

const DRAWN = {
  same: "drawnSame",
  other: "drawnOther",
  "not-known": "drawnNotKnown",
} as const satisfies Record<VisitResult["drawnAgain"], keyof Words["visit"]>;
