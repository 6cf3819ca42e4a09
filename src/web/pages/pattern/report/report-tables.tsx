import type { CheckFound, LineHard, MinutesTaken, ModeFound } from "#station";
import { EmptyState, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { farOff, sayMinutes, sayOneIn, sayReports, sayTimes } from "./report-words.ts";

/** What each check found; those that never did, with how rarely they may. */
export function ChecksTable({ checks }: { readonly checks: readonly CheckFound[] }) {
  const found = checks.filter((one) => one.found > 0).toSorted((one, other) => other.found - one.found);
  const never = checks.filter((one) => one.found === 0).toSorted((one, other) => other.looks - one.looks);
  return (
    <Section id="checks" title="What the checks found">
      {found.length === 0 ? (
        <EmptyState title="No check has found anything yet" />
      ) : (
        <Table caption="Checks that found something" columns={FOUND} rows={found} rowKey={keyOf} />
      )}
      <details className="kit-table">
        <summary>{never.length} that never found anything</summary>
        <p className="quiet">
          None in n looks does not mean never: nineteen times in twenty fewer than about 3 in n would find something.
        </p>
        <Table caption="Checks that never found anything" columns={NEVER} rows={never} rowKey={keyOf} />
      </details>
    </Section>
  );
}

const keyOf = ({ check }: CheckFound) => check.id;
const FOUND: readonly Column<CheckFound>[] = [
  { key: "check", head: "Check", cell: ({ check }) => check.ask },
  { key: "found", head: "Found something", align: "figures", cell: ({ found }) => sayTimes(found) },
  { key: "looks", head: "Openings", align: "figures", cell: ({ looks }) => looks },
];
const NEVER: readonly Column<CheckFound>[] = [
  { key: "check", head: "Check", cell: ({ check }) => check.ask },
  { key: "looks", head: "Openings", align: "figures", cell: ({ looks }) => looks },
  {
    key: "below",
    head: "May find in fewer than",
    align: "figures",
    cell: ({ below }) => (below === undefined ? "not looked at" : sayOneIn(below)),
  },
];

/** How each mode that ever was came to light. */
export function ModesTable({ modes }: { readonly modes: readonly ModeFound[] }) {
  return (
    <Section id="modes" title="What was wrong, and how it came to light">
      {modes.length === 0 ? (
        <EmptyState title="Nothing was ever found wrong" />
      ) : (
        <Table caption="Modes found" isCaptionHidden columns={MODES} rows={modes} rowKey={({ mode }) => mode.id} />
      )}
    </Section>
  );
}

const MODES: readonly Column<ModeFound>[] = [
  { key: "mode", head: "Mode", cell: ({ mode }) => mode.name },
  { key: "own", head: "By its own check", align: "figures", cell: ({ byOwn }) => sayTimes(byOwn) },
  { key: "accident", head: "By accident", align: "figures", cell: ({ byAccident }) => sayTimes(byAccident) },
  {
    key: "where",
    head: "While doing what",
    cell: ({ where }) =>
      where.length === 0 ? "none by accident" : where.map(({ what, times }) => `${what} ${sayTimes(times)}`).join("; "),
  },
];

/** Lines that people could not do, or told of. */
export function LinesTable({ lines }: { readonly lines: readonly LineHard[] }) {
  return (
    <Section id="lines" title="Lines not possible, or reported">
      {lines.length === 0 ? (
        <EmptyState title="Every line was possible, and none was reported" />
      ) : (
        <Table caption="Lines" isCaptionHidden columns={LINES} rows={lines} rowKey={({ step }) => step.id} />
      )}
    </Section>
  );
}

const LINES: readonly Column<LineHard>[] = [
  { key: "line", head: "Line", cell: ({ step }) => `${step.line}. ${step.text}` },
  {
    key: "not",
    head: "Not possible",
    align: "figures",
    cell: ({ notPossible, asked }) => `${notPossible} of ${asked}`,
  },
  { key: "told", head: "Reported", cell: (line) => sayReports(line) || "never" },
];

/** So many of the furthest off are shown at once. */
const SHOWN = 8;

/** Minutes really taken beside those stated. */
export function MinutesTable({ minutes }: { readonly minutes: readonly MinutesTaken[] }) {
  const ordered = minutes.toSorted((one, other) => farOff(other) - farOff(one));
  const pauses = minutes.reduce((sum, one) => sum + one.pauses, 0);
  return (
    <Section id="minutes" title="Minutes taken">
      <p className="quiet">
        By the clocks of the entries, from the answer before. Left out: waits, runs and primes; what was typed up from a
        card; lines after another person or device; and pauses, where more than 20 minutes and four times what is stated
        went by ({sayTimes(pauses)}).
      </p>
      {ordered.length === 0 ? (
        <EmptyState title="No line was timed yet" />
      ) : (
        <Table
          caption="Furthest off first"
          columns={MINUTES}
          rows={ordered.slice(0, SHOWN)}
          rowKey={({ step }) => step.id}
        />
      )}
      {ordered.length > SHOWN && (
        <details className="kit-table">
          <summary>{ordered.length - SHOWN} other lines</summary>
          <Table
            caption="Other lines"
            isCaptionHidden
            columns={MINUTES}
            rows={ordered.slice(SHOWN)}
            rowKey={({ step }) => step.id}
          />
        </details>
      )}
    </Section>
  );
}

const MINUTES: readonly Column<MinutesTaken>[] = [
  { key: "line", head: "Line", cell: ({ step }) => `${step.line}. ${step.text}` },
  { key: "stated", head: "Stated", align: "figures", cell: ({ stated }) => sayMinutes(stated) },
  { key: "taken", head: "Half took less than", align: "figures", cell: ({ median }) => sayMinutes(median) },
  {
    key: "between",
    head: "Middle half",
    align: "figures",
    cell: ({ quartiles }) => [...new Set(quartiles.map(sayMinutes))].join(" to "),
  },
  { key: "times", head: "Timed", align: "figures", cell: ({ times }) => sayTimes(times) },
];
