import { lazy, Suspense, useState, type ReactNode } from "react";
import { barsAt, isGrounding, isRemedied, openFindings, proofWanted, sayMet } from "#readiness";
import { Button, ButtonRow, Notice } from "../../../parts/index.ts";
import type { KitActs } from "../../../act/acts.ts";
import { useClockAnswer } from "../answer/use-clock-answer.ts";
import { AskView } from "./ask-view.tsx";
import type { OpenKit } from "../../../kit-view/at-hand.ts";
import { dateToRead, DatesAtLine } from "../answer/dates-at-line.tsx";
import { asOne, doneTogether, leadsPast } from "./done-group.ts";
import { DoneGroupView } from "./done-group-view.tsx";
import { FittingList } from "../answer/fitting-list.tsx";
import type { Answering } from "../answer/use-answering.ts";
import { openAsk, type Ask, type Line } from "../../../act/lines.ts";
import { HeldPanel, SetAside } from "../mend/held-panel.tsx";
import { LineCautions } from "./line-cautions.tsx";
import { leadsOn, seenTogether } from "./look-group.ts";
import { LookGroupView } from "./look-group-view.tsx";
import { leadsTo, neighbour, openBefore, pastOptional } from "../../../act/position.ts";
import { ReportStep } from "../answer/report-step.tsx";
import { SecondPanel } from "../second/second-panel.tsx";
import { useSecondsAt } from "../second/use-seconds.ts";
import { StepClock } from "../clocks/step-clock.tsx";
import { StepHeading } from "./step-heading.tsx";
import type { Place } from "./use-place.ts";

const MeasureDelivery = lazy(() => import("../measure/measure-delivery.tsx"));

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
  const [single, setSingle] = useState<string>();
  const ask = askNamed(line, props.wanted ?? first);
  const onAnswered = () => place.goTo(leadsTo(lines, line.step.line, ask.key));
  const isAlone = single === ask.key || dateToRead(open, line.step) !== undefined;
  const group = isAlone ? [] : seenTogether(open, line, ask);
  const done = isAlone || props.wanted === line.step.id ? [line] : doneTogether(open, lines, line);
  const byClock = useClockAnswer({ open, acts, line, ask, onAnswered });
  const alone = (key: string) => {
    setSingle(key);
    place.goTo({ line: line.step.line, ask: key });
  };
  const seconds = useSecondsAt(
    open,
    done.map(({ step }) => step.id),
  );
  const together =
    group.length > 1 ? (
      <LookGroupView
        open={open}
        acts={acts}
        line={line}
        group={group}
        onAnswered={() => place.goTo(leadsOn(lines, line, group))}
        onSingle={({ key }) => alone(key)}
      />
    ) : done.length > 1 ? (
      <DoneGroupView
        open={open}
        acts={acts}
        group={done}
        onAnswered={() => place.goTo(leadsPast(lines, done))}
        onSingle={({ step }) => place.goTo({ line: step.line, ask: step.id })}
      />
    ) : undefined;
  const bars = ask.answered ? [] : barsAt(open, line.step.id, ask.check?.id);
  return (
    <main className="runner-main">
      <LineHead line={line} of={lines.at(-1)?.step.line ?? 0} kit={open.kit.name} />
      {bars.length > 0 && <HeldPanel open={open} lines={lines} line={line} bars={bars} place={place} />}
      {bars.length === 0 && !ask.answered && <SecondPanel open={open} acts={acts} seconds={seconds} />}
      <LineCautions lines={lines} line={asOne(done)} />
      {line.step.after && <p className="step-needs">Because it met {sayMet(line.step.after)}</p>}
      {done.length === 1 && <p className="step-text">{line.step.text}</p>}
      {done.length === 1 && line.step.why !== undefined && <p className="step-why">Why: {line.step.why}</p>}
      <Needs line={asOne(done)} />
      <DatesAtLine open={open} acts={acts} step={line.step} />
      {bars.length === 0 && <FittingList open={open} acts={acts} step={line.step} />}
      {(bars.length === 0 || isClockRunning(open, line)) && (
        <StepClock open={open} acts={acts} step={line.step} onDone={byClock} />
      )}
      {bars.length === 0 && (
        <Doing open={open} acts={acts} line={line} ask={ask} onAnswered={onAnswered}>
          {together}
        </Doing>
      )}
      {bars.length === 0 && isGroundedHere(open, line) && <SetAside place={place} />}
      {line.asks.length > 1 && <AskTabs line={line} shown={ask} onPick={alone} />}
      <Passed lines={lines} line={line} place={place} />
      <Ways lines={lines} line={line} place={place} />
      <ReportStep open={open} acts={acts} step={line.step} />
    </main>
  );
}

/** What is measured and answered at a line that nothing bars; the children, where there are, stand for its answer. */
function Doing({ children, ...props }: Answering & { readonly children: ReactNode }) {
  const { open, acts, line, ask } = props;
  return (
    <>
      {line.step.measuresDelivery && (
        <Suspense fallback={null}>
          <MeasureDelivery open={open} acts={acts} line={line} onAnswered={props.onAnswered} />
        </Suspense>
      )}
      {children ?? <AskView key={ask.key} {...props} onAnswered={() => !isOfProof(open, ask) && props.onAnswered()} />}
    </>
  );
}

/** A finding of this line grounds the kit, and nothing was done about it yet. */
function isGroundedHere({ kit, turnaround }: OpenKit, { step }: Line): boolean {
  const here = openFindings(kit).filter((one) => one.turnaround === turnaround.id && one.step === step.id);
  return here.some((one) => isGrounding(one) && !isRemedied(one));
}

/** A clock that was started before the line was barred can still be stopped. */
function isClockRunning({ turnaround }: OpenKit, line: Line): boolean {
  return turnaround.timers[line.step.id]?.started !== undefined;
}

/** True where the answer may close a finding: the line then stays, and offers it. */
function isOfProof({ kit, pattern }: OpenKit, { check }: Ask): boolean {
  const mended = openFindings(kit).filter((finding) => isRemedied(finding));
  return (
    check !== undefined && mended.some((finding) => proofWanted(finding, pattern).some(({ id }) => id === check.id))
  );
}

/** The ask a line opens with. It stays on the screen once answered: a finding may have to be raised there. */
function firstShown(line: Line): string {
  return (openAsk(line) ?? line.asks[0])?.key ?? line.step.id;
}

function askNamed(line: Line, key: string): Ask {
  return line.asks.find((ask) => ask.key === key) ?? openAsk(line) ?? line.asks[0]!;
}

function LineHead({ line, of, kit }: { readonly line: Line; readonly of: number; readonly kit: string }) {
  return (
    <StepHeading>
      <span className="tabular">
        Line {line.step.line} of {of}
      </span>
      <span className="step-stage">
        {line.stage.name}, {kit}
      </span>
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
  readonly onPick: (key: string) => void;
}

/** A check's number as the card prints it: "12a". */
function labelOf(line: Line, at: number): string {
  return `${line.step.line}${String.fromCharCode("a".charCodeAt(0) + at)}`;
}

/** The checks of one line, by number, so that an answered one can be looked at again. */
function AskTabs({ line, shown, onPick }: AskTabsProps) {
  return (
    <nav aria-label="Checks of this line">
      <ButtonRow>
        {line.asks.map((ask, at) => (
          <Button key={ask.key} isPressed={ask.key === shown.key} onPress={() => onPick(ask.key)}>
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
  const isLeftOut = line.step.optional && openAsk(line) !== undefined;
  const after = isLeftOut ? pastOptional(lines, line.step.line) : neighbour(lines, line.step.line, "after");
  return (
    <nav aria-label="Lines beside this one">
      <ButtonRow>
        {before !== undefined && <Button onPress={() => place.goTo({ line: before })}>Line {before}</Button>}
        {after === undefined ? (
          <Button onPress={() => place.show("seal")}>To the sealing</Button>
        ) : (
          <Button onPress={() => place.goTo({ line: after })}>
            {isLeftOut ? `Leave this out, to line ${after}` : `Line ${after}`}
          </Button>
        )}
      </ButtonRow>
    </nav>
  );
}
