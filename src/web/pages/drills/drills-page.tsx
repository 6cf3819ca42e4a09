import { sayPercent } from "#words";
import { checkChances, drillsOf, reportStep, type CheckChance, type KitDrill } from "#station";
import { patternKey } from "#kit";
import { useMemo } from "react";
import { Link } from "wouter";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ButtonLink, EmptyState, ErrorBox, Page, Section, Timestamp, useDoing } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { nameOf } from "#web/kit-view/at-hand.ts";
import { FoundMark, sayResult } from "./results.tsx";
import { FaultWords } from "./fault-list.tsx";
import "./drills.css";

/** Drills of the station: those that are on, what the others showed, and how often each check found what was planted. */
export default function DrillsPage() {
  const view = useStation();
  const { on, over } = useMemo(() => drillsOf(view), [view]);
  const chances = useMemo(() => checkChances(view), [view]);
  return (
    <Page title="Drills" back={{ to: "/people", label: "People" }}>
      <p>
        Somebody plants faults in a kit that is set aside, others look for them in a turnaround. What checks find of
        what was planted shows how far they can be trusted. A drill is begun on the page of a kit.
      </p>
      <Section title="Now">
        {on.length === 0 ? (
          <EmptyState title="No drill is on" />
        ) : (
          <ul className="drill-faults">
            {on.map((one) => (
              <DrillNow key={one.drill.id} one={one} />
            ))}
          </ul>
        )}
      </Section>
      <Section title="Past drills">
        {over.length === 0 ? <EmptyState title="None yet" /> : over.map((one) => <Past key={one.drill.id} one={one} />)}
      </Section>
      <Checks chances={chances} />
      <Missed chances={chances} />
    </Page>
  );
}

function DrillNow({ one: { kit, drill } }: { readonly one: KitDrill }) {
  return (
    <li>
      <span>
        <strong>{kit.name}</strong>, set aside since <Timestamp at={drill.begun.at} />
      </span>
      <ButtonLink to={`/kit/${kit.id}/drill`}>Go to this drill</ButtonLink>
    </li>
  );
}

function Past({ one }: { readonly one: KitDrill }) {
  const view = useStation();
  const { kit, drill, comparison, pattern } = one;
  const { faults, wrong, real } = comparison;
  const who = drill.begun.trainees.map((id) => nameOf(view, id)).join(", ");
  const isCompared = drill.ended?.how === "compared";
  return (
    <details className="drill-past">
      <summary>
        <Timestamp at={drill.begun.at} as="day" />, {kit.name}, {who}:{" "}
        <strong>{isCompared ? sayResult(faults, wrong, real) : "not compared"}</strong>
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
        <Link to={`/kit/${kit.id}`}>The page of {kit.name}</Link>
      </p>
    </details>
  );
}

function Checks({ chances }: { readonly chances: readonly CheckChance[] }) {
  if (chances.length === 0) return null;
  return (
    <Section title="What each check finds">
      <p className="quiet">
        Of faults planted that a check can find, where it was made. The range holds the truth nine times in ten; few
        faults make it wide. Planted faults are looked for harder than others.
      </p>
      <Table
        caption="Found of planted, by check"
        isCaptionHidden
        columns={CHECKS}
        rows={chances}
        rowKey={({ pattern, check }) => `${pattern.id} ${check.id}`}
      />
    </Section>
  );
}

const CHECKS: readonly Column<CheckChance>[] = [
  { key: "check", head: "Check", cell: ({ check }) => check.ask },
  { key: "line", head: "Line", cell: ({ pattern, line }) => `${pattern.name}, line ${line}` },
  { key: "found", head: "Found", cell: ({ found, planted }) => `${found} of ${planted}` },
  {
    key: "between",
    head: "Finds it",
    cell: ({ told: { interval } }) => `between ${sayPercent(interval[0])} and ${sayPercent(interval[1])}`,
  },
];

/** Lines most often missed, to be told to the pattern's owner. */
function Missed({ chances }: { readonly chances: readonly CheckChance[] }) {
  const missed = chances.filter(({ found, planted }) => found < planted).slice(0, 5);
  if (missed.length === 0) return null;
  return (
    <Section title="Lines most often missed">
      <p>The words of a line may be why it is missed. Whoever answers for the pattern reads what you report.</p>
      <ul className="drill-faults">
        {missed.map((one) => (
          <MissedLine key={`${one.pattern.id} ${one.check.id}`} one={one} />
        ))}
      </ul>
    </Section>
  );
}

function MissedLine({ one: { pattern, check, line, found, planted } }: { readonly one: CheckChance }) {
  const carryOut = useCarryOut();
  const { error, isBusy, run } = useDoing();
  const view = useStation();
  const step = pattern.stages.flatMap(({ steps }) => steps).find(({ checks }) => checks.includes(check.id))?.id ?? "";
  const note = `Drills: found ${found} of ${planted} planted faults. ${check.ask}`;
  const isTold = view.entriesOf(`pattern:${pattern.id}`).some(({ body }) => (body as { note?: string }).note === note);
  const tell = () => run(() => carryOut((at) => reportStep(at, patternKey(pattern), { step, what: "unclear", note })));
  return (
    <li>
      <span>
        <strong>
          {pattern.name}, line {line}
        </strong>
        : missed {planted - found} of {planted}. {check.ask}
      </span>
      {isTold ? (
        <span>Reported.</span>
      ) : (
        <Button label={`Report line ${line} of ${pattern.name}`} isBusy={isBusy} onPress={() => void tell()}>
          Report it to the pattern's owner
        </Button>
      )}
      <ErrorBox error={error} title="Not reported" />
    </li>
  );
}
