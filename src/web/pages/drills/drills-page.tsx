import { sayPercent, type Words } from "#words";
import { checkChances, drillsOf, type CheckChance, type KitDrill } from "#station";
import { useMemo } from "react";
import { Link } from "wouter";
import { useCarryOut, useStation } from "#web/device/index.ts";
import {
  Button,
  ButtonLink,
  ButtonRow,
  EmptyState,
  ErrorBox,
  Page,
  Section,
  Timestamp,
  useDoing,
} from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { missedNote, reportMissed, type MissedWhat } from "./missed-report.ts";
import { FoundMark, sayResult } from "./results.tsx";
import { FaultWords } from "./fault-list.tsx";
import "./drills.css";
import { useWords, withParts } from "#web/language/index.ts";

/** Drills of the station: those that are on, what the others showed, and how often each check found what was planted. */
export default function DrillsPage() {
  const frame = useWords("frame");
  const words = useWords("drills");
  const view = useStation();
  const { on, over } = useMemo(() => drillsOf(view), [view]);
  const chances = useMemo(() => checkChances(view), [view]);
  return (
    <Page title={words.title()} back={{ to: "/people", label: frame.people() }}>
      <p>{words.what()}</p>
      <Section title={words.now()}>
        {on.length === 0 ? (
          <EmptyState title={words.noneOn()} />
        ) : (
          <ul className="drill-faults">
            {on.map((one) => (
              <DrillNow key={one.drill.id} one={one} />
            ))}
          </ul>
        )}
      </Section>
      <Section title={words.past()}>
        {over.length === 0 ? (
          <EmptyState title={words.noneYet()} />
        ) : (
          over.map((one) => <Past key={one.drill.id} one={one} />)
        )}
      </Section>
      <Checks chances={chances} />
      <Missed chances={chances} />
    </Page>
  );
}

function DrillNow({ one: { kit, drill } }: { readonly one: KitDrill }) {
  const words = useWords("drills");
  return (
    <li>
      <span>
        {withParts(words.asideSince, { kit: <strong>{kit.name}</strong>, at: <Timestamp at={drill.begun.at} /> })}
      </span>
      <ButtonLink to={`/kit/${kit.id}/drill`}>{words.goTo()}</ButtonLink>
    </li>
  );
}

function Past({ one }: { readonly one: KitDrill }) {
  const words = useWords("drills");
  const view = useStation();
  const { kit, drill, comparison, pattern } = one;
  const { faults } = comparison;
  const who = drill.begun.trainees.map((id) => nameOf(view, id)).join(", ");
  const isCompared = drill.ended?.how === "compared";
  return (
    <details className="drill-past">
      <summary>
        {withParts((mark) => words.pastLine({ ...mark, kit: kit.name, who }), {
          day: <Timestamp at={drill.begun.at} as="day" />,
          result: <strong>{isCompared ? sayResult(comparison, words) : words.notCompared()}</strong>,
        })}
      </summary>
      {!isCompared && <p>{drill.ended?.reason}</p>}
      <ol className="drill-faults">
        {faults.map((fault) => (
          <li key={`${fault.plant} ${fault.number}`}>
            <FaultWords pattern={pattern} fault={fault} />
            <FoundMark at={{ view }} fault={fault} />
          </li>
        ))}
      </ol>
      <p>
        <Link to={`/kit/${kit.id}`}>{words.pageOf({ kit: kit.name })}</Link>
      </p>
    </details>
  );
}

function Checks({ chances }: { readonly chances: readonly CheckChance[] }) {
  const words = useWords("drills");
  if (chances.length === 0) return null;
  return (
    <Section title={words.checks()}>
      <p className="quiet">{words.checksMore()}</p>
      <Table
        caption={words.foundByCheck()}
        isCaptionHidden
        columns={columns(words)}
        rows={chances}
        rowKey={({ pattern, check }) => `${pattern.id} ${check.id}`}
      />
    </Section>
  );
}

const columns = (words: Words["drills"]): readonly Column<CheckChance>[] => [
  { key: "check", head: words.check(), cell: ({ check }) => check.ask },
  { key: "line", head: words.line(), cell: ({ pattern, line }) => words.lineOf({ pattern: pattern.name, line }) },
  { key: "found", head: words.found(), cell: ({ found, planted }) => words.foundOf({ found, planted }) },
  {
    key: "between",
    head: words.findsIt(),
    cell: ({ told: { interval } }) => words.between({ low: sayPercent(interval[0]), high: sayPercent(interval[1]) }),
  },
];

/** Lines most often missed, to be told to the pattern's owner. */
function Missed({ chances }: { readonly chances: readonly CheckChance[] }) {
  const words = useWords("drills");
  const missed = chances.filter(({ found, planted }) => found < planted).slice(0, 5);
  if (missed.length === 0) return null;
  return (
    <Section title={words.missedLines()}>
      <p>{words.missedLinesMore()}</p>
      <ul className="drill-faults">
        {missed.map((one) => (
          <MissedLine key={`${one.pattern.id} ${one.check.id}`} one={one} />
        ))}
      </ul>
    </Section>
  );
}

function whats(words: Words["drills"]): readonly { readonly what: MissedWhat; readonly said: string }[] {
  return [
    { what: "wrong", said: words.lineWrong() },
    { what: "impossible", said: words.lineImpossible() },
    { what: "unclear", said: words.lineUnclear() },
  ];
}

function MissedLine({ one }: { readonly one: CheckChance }) {
  const { pattern, check, line, found, planted } = one;
  const words = useWords("drills");
  const carryOut = useCarryOut();
  const { error, isBusy, run } = useDoing();
  const view = useStation();
  const note = missedNote(one);
  const isTold = view.entriesOf(`pattern:${pattern.id}`).some(({ body }) => (body as { note?: string }).note === note);
  const tell = (what: MissedWhat) => run(() => carryOut((at) => reportMissed(at, one, what)));
  return (
    <li>
      <span>
        {withParts(({ line: mark }) => words.missedOf({ line: mark, missed: planted - found, planted }), {
          line: <strong>{words.lineOf({ pattern: pattern.name, line })}</strong>,
        })}{" "}
        {check.ask}
      </span>
      {isTold ? (
        <span>{words.reported()}</span>
      ) : (
        <details>
          <summary>{words.reportLine({ line, pattern: pattern.name })}</summary>
          <ButtonRow>
            {whats(words).map(({ what, said }) => (
              <Button key={what} isBusy={isBusy} onPress={() => void tell(what)}>
                {said}
              </Button>
            ))}
          </ButtonRow>
        </details>
      )}
      <ErrorBox error={error} title={words.notReported()} />
    </li>
  );
}
