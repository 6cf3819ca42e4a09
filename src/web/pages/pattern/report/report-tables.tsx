import type { CheckFound, LineHard, MinutesTaken, ModeFound, ReportCard, UnnamedFound } from "#station";
import { EmptyState, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { farOff, modeRows, sayMinutes, sayNone, sayNotPossible, sayOneIn, type ModeRow } from "./report-words.ts";
import { ToldOfLine } from "./told-of-line.tsx";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

/** What each check found; those that never did, with how rarely they may. */
export function ChecksTable({ checks }: { readonly checks: readonly CheckFound[] }) {
  const words = useWords("patternReport");
  const found = checks.filter((one) => one.found > 0).toSorted((one, other) => other.found - one.found);
  const never = checks
    .filter((one) => one.found === 0 && one.looks > 0)
    .toSorted((one, other) => other.looks - one.looks);
  return (
    <Section id="checks" title={words.checksFound()}>
      {found.length === 0 ? (
        <EmptyState title={never.length === 0 ? words.noneMade() : words.noneFound()} />
      ) : (
        <Table caption={words.foundTable()} columns={foundColumns(words)} rows={found} rowKey={keyOf} />
      )}
      {never.length > 0 && (
        <details className="kit-table">
          <summary>{words.neverCount({ count: never.length })}</summary>
          <p className="quiet">{words.neverMore()}</p>
          <Table caption={words.neverTable()} columns={neverColumns(words)} rows={never} rowKey={keyOf} />
        </details>
      )}
    </Section>
  );
}

const keyOf = ({ check }: CheckFound) => check.id;
const foundColumns = (words: Words["patternReport"]): readonly Column<CheckFound>[] => [
  { key: "check", head: words.check(), cell: ({ check }) => check.ask },
  { key: "found", head: words.foundSomething(), align: "figures", cell: ({ found }) => words.times({ count: found }) },
  { key: "looks", head: words.openings(), align: "figures", cell: ({ looks }) => looks },
];
const neverColumns = (words: Words["patternReport"]): readonly Column<CheckFound>[] => [
  { key: "check", head: words.check(), cell: ({ check }) => check.ask },
  { key: "looks", head: words.openings(), align: "figures", cell: ({ looks }) => looks },
  {
    key: "below",
    head: words.mayFind(),
    align: "figures",
    cell: ({ below = 1 }) => sayOneIn(below, words),
  },
];

interface ModesProps {
  readonly openings: number;
  readonly modes: readonly ModeFound[];
  readonly unnamed: UnnamedFound;
  readonly together: ReportCard["together"];
}

/** How each mode that ever was came to light. */
export function ModesTable({ openings, modes, unnamed, together }: ModesProps) {
  const words = useWords("patternReport");
  const rows = modeRows(modes, unnamed, words);
  const count = rows.reduce((sum, { byOwn, byAccident }) => sum + byOwn + byAccident, 0);
  return (
    <Section id="modes" title={words.wrong()}>
      {rows.length === 0 ? (
        <EmptyState title={sayNone({ openings }, words.nothingWrong(), words)} />
      ) : (
        <>
          <p>
            {words.findingsInAll({ count })} {together.starts > 0 && words.together(together)}
          </p>
          <Table
            caption={words.modesTable()}
            isCaptionHidden
            columns={modeColumns(words)}
            rows={rows}
            rowKey={({ name }) => name}
          />
        </>
      )}
    </Section>
  );
}

const modeColumns = (words: Words["patternReport"]): readonly Column<ModeRow>[] => [
  { key: "mode", head: words.mode(), cell: ({ name }) => name },
  { key: "own", head: words.byOwnCheck(), align: "figures", cell: ({ byOwn }) => words.times({ count: byOwn }) },
  {
    key: "accident",
    head: words.byAccident(),
    align: "figures",
    cell: ({ byAccident }) => words.times({ count: byAccident }),
  },
  {
    key: "where",
    head: words.whileDoing(),
    cell: ({ where }) =>
      where.length === 0
        ? words.noneByAccident()
        : where
            .map(({ what, times }) => words.whatTimes({ what, times: words.times({ count: times }) }))
            .join(words.between()),
  },
];

/** Lines that people could not do, or told of. */
export function LinesTable({ lines, openings }: Pick<ReportCard, "lines" | "openings">) {
  const words = useWords("patternReport");
  return (
    <Section id="lines" title={words.linesHard()}>
      {lines.length === 0 ? (
        <EmptyState title={sayNone({ openings }, words.noneHard(), words)} />
      ) : (
        <Table
          caption={words.lines()}
          isCaptionHidden
          columns={lineColumns(words)}
          rows={lines}
          rowKey={({ step }) => step.id}
        />
      )}
    </Section>
  );
}

const lineColumns = (words: Words["patternReport"]): readonly Column<LineHard>[] => [
  { key: "line", head: words.line(), cell: ({ step }) => `${step.line}. ${step.text}` },
  {
    key: "not",
    head: words.notPossible(),
    align: "figures",
    cell: (line) => sayNotPossible(line, words),
  },
  { key: "told", head: words.reported(), cell: (line) => <ToldOfLine line={line} /> },
];

/** So many of the furthest off are shown at once. */
const SHOWN = 8;

/** Minutes really taken beside those stated. */
export function MinutesTable({ minutes }: { readonly minutes: readonly MinutesTaken[] }) {
  const words = useWords("patternReport");
  const ordered = minutes.toSorted((one, other) => farOff(other) - farOff(one));
  const pauses = minutes.reduce((sum, one) => sum + one.pauses, 0);
  return (
    <Section id="minutes" title={words.minutesTaken()}>
      <p className="quiet">{words.minutesMore({ times: words.times({ count: pauses }) })}</p>
      {ordered.length === 0 ? (
        <EmptyState title={words.noneTimed()} />
      ) : (
        <Table
          caption={words.furthestFirst()}
          columns={minuteColumns(words)}
          rows={ordered.slice(0, SHOWN)}
          rowKey={({ step }) => step.id}
        />
      )}
      {ordered.length > SHOWN && (
        <details className="kit-table">
          <summary>{words.otherLines({ count: ordered.length - SHOWN })}</summary>
          <Table
            caption={words.otherLinesTable()}
            isCaptionHidden
            columns={minuteColumns(words)}
            rows={ordered.slice(SHOWN)}
            rowKey={({ step }) => step.id}
          />
        </details>
      )}
    </Section>
  );
}

/** Of both ends alike one. */
function sayMiddle([from = "", to = ""]: readonly string[], words: Words["patternReport"]): string {
  return from === to ? from : words.minutesFromTo({ from, to });
}

const minuteColumns = (words: Words["patternReport"]): readonly Column<MinutesTaken>[] => [
  { key: "line", head: words.line(), cell: ({ step }) => `${step.line}. ${step.text}` },
  { key: "stated", head: words.stated(), align: "figures", cell: ({ stated }) => sayMinutes(stated) },
  { key: "taken", head: words.halfLess(), align: "figures", cell: ({ median }) => sayMinutes(median) },
  {
    key: "between",
    head: words.middleHalf(),
    align: "figures",
    cell: ({ quartiles }) => sayMiddle(quartiles.map(sayMinutes), words),
  },
  { key: "times", head: words.timed(), align: "figures", cell: ({ times }) => words.times({ count: times }) },
];
