import { lazy, Suspense, useState } from "react";
import { Button, ButtonRow, Cautions, Notice } from "../../parts/index.ts";
import type { KitActs } from "./acts.ts";
import { AskView } from "./ask-view.tsx";
import type { OpenKit } from "./at-hand.ts";
import { FittingList } from "./fitting-list.tsx";
import { openAsk, type Ask, type Line } from "./lines.ts";
import { leadsTo, neighbour, openBefore } from "./position.ts";
import { ReportStep } from "./report-step.tsx";
import { StepClock } from "./step-clock.tsx";
import { StepHeading } from "./step-heading.tsx";
import type { Place } from "./use-place.ts";

const MeasureDelivery = lazy(() => import("./measure-delivery.tsx"));

export interface LineViewProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly lines: readonly Line[];
  readonly line: Line;
  /** The ask the address names. */
  readonly wanted: string | undefined;
  readonly place: Place;
}

/** One line of the pattern on the whole screen: cautions first, then what to do, then what is asked. */
export function LineView(props: LineViewProps) {
  const { open, acts, lines, line, place } = props;
  const [first] = useState(() => firstShown(line));
  const ask = askNamed(line, props.wanted ?? first);
  const onAnswered = () => place.goTo(leadsTo(lines, line.step.line, ask.key));
  return (
    <main className="runner-main">
      <LineHead line={line} of={lines.length} />
      <Cautions ids={line.step.cautions} />
      <p className="step-text">{line.step.text}</p>
      {line.step.why !== undefined && <p className="step-why">Why: {line.step.why}</p>}
      <Needs line={line} />
      <FittingList open={open} acts={acts} step={line.step} />
      <StepClock open={open} acts={acts} step={line.step} />
      {line.step.measuresDelivery && (
        <Suspense fallback={null}>
          <MeasureDelivery open={open} acts={acts} line={line} onAnswered={onAnswered} />
        </Suspense>
      )}
      {line.asks.length > 1 && <AskTabs line={line} shown={ask} place={place} />}
      <AskView key={ask.key} open={open} acts={acts} line={line} ask={ask} onAnswered={onAnswered} />
      <Passed lines={lines} line={line} place={place} />
      <Ways lines={lines} line={line} place={place} />
      <ReportStep open={open} acts={acts} step={line.step} />
    </main>
  );
}

/** The ask a line opens with. It stays on the screen once answered: a finding may have to be raised there. */
function firstShown(line: Line): string {
  return (openAsk(line) ?? line.asks[0])?.key ?? line.step.id;
}

function askNamed(line: Line, key: string): Ask {
  return line.asks.find((ask) => ask.key === key) ?? openAsk(line) ?? line.asks[0]!;
}

function LineHead({ line, of }: { readonly line: Line; readonly of: number }) {
  return (
    <StepHeading>
      <span className="tabular">
        Line {line.step.line} of {of}
      </span>
      <span className="step-stage">{line.stage.name}</span>
    </StepHeading>
  );
}

/** Tools and hands the step wants, where it wants more than one pair. */
function Needs({ line }: { readonly line: Line }) {
  const { people, tools } = line.step.needs;
  const wants = [...(people > 1 ? [`${people} people`] : []), ...tools];
  return wants.length === 0 ? null : <p className="step-needs">Have at hand: {wants.join(", ")}</p>;
}

interface AskTabsProps {
  readonly line: Line;
  readonly shown: Ask;
  readonly place: Place;
}

/** A check's number as the card prints it: "12a". */
function labelOf(line: Line, at: number): string {
  return `${line.step.line}${String.fromCharCode("a".charCodeAt(0) + at)}`;
}

/** The checks of one line, by number, so that an answered one can be looked at again. */
function AskTabs({ line, shown, place }: AskTabsProps) {
  return (
    <nav aria-label="Checks of this line">
      <ButtonRow>
        {line.asks.map((ask, at) => (
          <Button
            key={ask.key}
            isPressed={ask.key === shown.key}
            onPress={() => place.goTo({ line: line.step.line, ask: ask.key })}
          >
            {labelOf(line, at)}
            {ask.answered ? ", answered" : ""}
          </Button>
        ))}
      </ButtonRow>
    </nav>
  );
}

interface LinesProps {
  readonly lines: readonly Line[];
  readonly line: Line;
  readonly place: Place;
}

/** Lines passed over before this one; said, never skipped in silence. */
function Passed({ lines, line, place }: LinesProps) {
  const passed = openBefore(lines, line.step.line);
  const first = passed[0];
  if (first === undefined) return null;
  return (
    <Notice tone="attention" title={`${passed.length} before this not answered`}>
      <Button onPress={() => place.goTo({ line: first })}>Go to line {first}</Button>
    </Notice>
  );
}

/** One line back or on without answering. */
function Ways({ lines, line, place }: LinesProps) {
  const before = neighbour(lines, line.step.line, "before");
  const after = neighbour(lines, line.step.line, "after");
  return (
    <nav aria-label="Lines beside this one">
      <ButtonRow>
        {before !== undefined && <Button onPress={() => place.goTo({ line: before })}>Line {before}</Button>}
        {after === undefined ? (
          <Button onPress={() => place.show("seal")}>To the sealing</Button>
        ) : (
          <Button onPress={() => place.goTo({ line: after })}>
            {line.step.optional && openAsk(line) ? `Leave this out, to line ${after}` : `Line ${after}`}
          </Button>
        )}
      </ButtonRow>
    </nav>
  );
}
