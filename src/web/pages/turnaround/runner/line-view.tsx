import { Prose } from "#web/parts/prose.tsx";
import { useState } from "react";
import { barsAt, clockAt, isGrounding, isRemedied, linePhotosOf, openFindings, photosAt, sayMet } from "#readiness";
import { lineLabel, type PictureAsked } from "#kit";
import { useWords, withParts } from "#web/language/index.ts";
import { Button, ButtonRow, Notice } from "#web/parts/index.ts";
import type { KitActs } from "#web/act/acts.ts";
import { useClockAnswer } from "../answer/use-clock-answer.ts";
import { Doing } from "./doing.tsx";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { DatesAtLine, itemToRead } from "../answer/dates-at-line.tsx";
import { asOne, doneTogether, leadsPast } from "./done-group.ts";
import { DoneGroupView } from "./done-group-view.tsx";
import { FittingList } from "../answer/fitting-list.tsx";
import { useWhole } from "../answer/use-whole.ts";
import { openAsk, type Ask, type Line } from "#web/act/lines.ts";
import { HeldPanel, SetAside } from "../mend/held-panel.tsx";
import { LineCautions } from "./line-cautions.tsx";
import { leadsOn, seenTogether } from "./look-group.ts";
import { LookGroupView } from "./look-group-view.tsx";
import { leadsTo, neighbour, openBefore, pastOptional } from "#web/act/position.ts";
import { ReportStep } from "../answer/report-step.tsx";
import { SecondPanel } from "../second/second-panel.tsx";
import { useSecondsAt } from "../second/use-seconds.ts";
import { OwnPhotoForm } from "../shown/own-photo-form.tsx";
import { LinePictures } from "../shown/line-pictures.tsx";
import { FaultAtLine } from "../clocks/fault-at-line.tsx";
import { StepClock } from "../clocks/step-clock.tsx";
import { StepHeading } from "./step-heading.tsx";
import { VisitAtLine } from "#web/kit-view/visit/visit-on.tsx";
import type { Place } from "./use-place.ts";

export interface LineViewProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly lines: readonly Line[];
  readonly line: Line;
  /** The ask the address names. */
  readonly wanted: string | undefined;
  /** That ask by itself: somebody took it out of its group. */
  readonly isAlone: boolean;
  readonly place: Place;
}

/** One line of the pattern on the whole screen: where, its drawing, cautions, then what to do, then what is asked. */
export function LineView(props: LineViewProps) {
  const { open, acts, lines, line, place } = props;
  const words = useWords("turnaround");
  const act = useWords("act");
  const [first] = useState(() => firstShown(line));
  const ask = askNamed(line, props.wanted ?? first);
  const onAnswered = () => place.goTo(leadsTo(lines, line.step.line, ask.key));
  const isAlone = props.isAlone || itemToRead(open, line.step) !== undefined;
  const whole = useWhole({
    group: isAlone ? [] : seenTogether(open, line, ask, act),
    done: isAlone || props.wanted === line.step.id ? [line] : doneTogether(open, lines, line),
  });
  const { group, done } = whole.shown;
  const byClock = useClockAnswer({ open, acts, line, ask, onAnswered });
  const alone = (key: string) => place.goTo({ line: line.step.line, ask: key, isAlone: true });
  const seconds = useSecondsAt(
    open,
    done.map(({ step }) => step.id),
  );
  const together =
    group.length > 1 ? (
      <LookGroupView
        key={group.at(-1)?.key}
        open={open}
        acts={acts}
        line={line}
        group={group}
        whole={whole}
        onAnswered={() => place.goTo(leadsOn(lines, line, group))}
        onSingle={({ key }) => alone(key)}
      />
    ) : done.length > 1 ? (
      <DoneGroupView
        key={done.at(-1)?.step.id}
        open={open}
        acts={acts}
        group={done}
        whole={whole}
        onAnswered={() => place.goTo(leadsPast(lines, done))}
        onSingle={({ step }) => place.goTo({ line: step.line, ask: step.id })}
      />
    ) : undefined;
  const asked = shownOf(line, group.length > 1 ? group : [ask], done);
  const drawn = done.length > 1 ? [] : asked;
  const all = linePhotosOf(open.view.entriesOf(`pattern:${open.pattern.id}`));
  const own = [...new Set(asked.flatMap((one) => photosAt(all, one)))];
  const standingWords = useWords("standing");
  const bars = ask.answered ? [] : barsAt(open, line.step.id, ask.check?.id);
  return (
    <main className={itemToRead(open, line.step) ? "runner-main runner-main-dated" : "runner-main"}>
      <LineHead line={line} kit={open.kit.name} />
      <LinePictures open={open} asked={drawn} own={own} />
      {bars.length > 0 && <HeldPanel open={open} lines={lines} line={line} bars={bars} place={place} />}
      {bars.length === 0 && !ask.answered && <SecondPanel open={open} acts={acts} seconds={seconds} step={line.step} />}
      <LineCautions lines={lines} line={asOne(done)} />
      {line.step.after && (
        <p className="step-needs">{words.becauseMet({ met: sayMet(line.step.after, standingWords) })}</p>
      )}
      {done.length === 1 && (
        <p className="step-text">
          <Prose text={line.step.text} />
        </p>
      )}
      <Needs line={asOne(done)} />
      <VisitAtLine
        kit={open.kit.id}
        step={line.step.id}
        checks={group.length > 1 ? checksOf(group) : checksOf([ask])}
      />
      <DatesAtLine open={open} acts={acts} step={line.step} />
      {bars.length === 0 && <FittingList open={open} acts={acts} step={line.step} />}
      {(bars.length === 0 || isClockRunning(open, line)) && (
        <StepClock
          open={open}
          acts={acts}
          step={line.step}
          onDone={byClock}
          onGoTo={(at) => place.goTo({ line: at })}
        />
      )}
      {done.length === 1 && line.step.why !== undefined && (
        <p className="step-why">{withParts(words.why, { why: <Prose text={line.step.why} /> })}</p>
      )}
      {bars.length === 0 && (
        <Doing open={open} acts={acts} line={line} ask={ask} onAnswered={onAnswered} onAsk={alone}>
          {together}
        </Doing>
      )}
      {bars.length === 0 && <FaultAtLine open={open} step={line.step} />}
      {bars.length === 0 && isGroundedHere(open, line) && <SetAside place={place} />}
      {line.asks.length > 1 && <AskTabs line={line} shown={ask} onPick={alone} />}
      <Passed lines={lines} line={line} place={place} />
      <Ways lines={lines} line={line} place={place} />
      {done.length === 1 && (
        <OwnPhotoForm open={open} at={placeOf(line, group.length > 1 ? undefined : ask)} own={own} all={all} />
      )}
      <ReportStep open={open} acts={acts} step={line.step} />
    </main>
  );
}

/** Checks that wait for their answer. */
function checksOf(asks: readonly Ask[]): readonly string[] {
  return asks.flatMap(({ check, answered }) => (check && !answered ? [check.id] : []));
}

/** What the drawings are of: the checks on the screen, or the lines done together. */
function shownOf({ step }: Line, asks: readonly Ask[], done: readonly Line[]): readonly PictureAsked[] {
  if (done.length > 1) return done.map((one) => ({ step: one.step.id }));
  return asks.map(({ check }) => ({ step: step.id, ...(check && { check: check.id }) }));
}

/** Where a photo of one's own goes: to the check that is asked alone, else to the step. */
function placeOf({ step }: Line, ask: Ask | undefined): PictureAsked {
  return { step: step.id, ...(ask?.check && { check: ask.check.id }) };
}

/** A finding of this line grounds the kit, and nothing was done about it yet. */
function isGroundedHere({ kit, turnaround }: OpenKit, { step }: Line): boolean {
  const here = openFindings(kit).filter((one) => one.turnaround === turnaround.id && one.step === step.id);
  return here.some((one) => isGrounding(one) && !isRemedied(one));
}

/** A clock that was started before the line was barred can still be stopped. */
function isClockRunning(open: OpenKit, line: Line): boolean {
  return clockAt(open, line.step.id)?.started !== undefined;
}

/** The ask a line opens with. It stays on the screen once answered: a finding may have to be raised there. */
function firstShown(line: Line): string {
  return (openAsk(line) ?? line.asks[0])?.key ?? line.step.id;
}

function askNamed(line: Line, key: string): Ask {
  return line.asks.find((ask) => ask.key === key) ?? openAsk(line) ?? line.asks[0]!;
}

/** The line by the number that card and record print; how far along the work is stands at the way to all lines. */
function LineHead({ line, kit }: { readonly line: Line; readonly kit: string }) {
  const words = useWords("turnaround");
  return (
    <StepHeading>
      <span className="tabular">{words.line({ line: line.step.line })}</span>
      <span className="step-stage">
        {line.stage.name}, {kit}
      </span>
    </StepHeading>
  );
}

/** Tools and hands the step wants, where it wants more than one pair. */
function Needs({ line }: { readonly line: Line }) {
  const words = useWords("turnaround");
  const { people, tools } = line.step.needs;
  const wants = [...(people > 1 ? [words.people({ count: people })] : []), ...tools];
  return wants.length === 0 ? null : <p className="step-needs">{words.haveAtHand({ things: wants.join(", ") })}</p>;
}

/** A check's number as the card prints it: "12a". */
function labelOf({ step }: Line, { check }: Ask): string {
  return lineLabel(step, check?.id);
}

interface AskTabsProps {
  readonly line: Line;
  readonly shown: Ask;
  readonly onPick: (key: string) => void;
}

/** The checks of one line, by number, so that an answered one can be looked at again. */
function AskTabs({ line, shown, onPick }: AskTabsProps) {
  const words = useWords("turnaround");
  return (
    <nav aria-label={words.checks()}>
      <ButtonRow>
        {line.asks.map((ask) => (
          <Button key={ask.key} isPressed={ask.key === shown.key} onPress={() => onPick(ask.key)}>
            {ask.answered ? words.checkAnswered({ check: labelOf(line, ask) }) : labelOf(line, ask)}
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
  const words = useWords("turnaround");
  const passed = openBefore(lines, line.step.line);
  const first = passed[0];
  if (first === undefined) return null;
  return (
    <Notice tone="attention" title={words.passed({ count: passed.length })}>
      <Button onPress={() => place.goTo({ line: first })}>{words.goToLine({ line: first })}</Button>
    </Notice>
  );
}

/** One line back or on without answering. */
function Ways({ lines, line, place }: LinesProps) {
  const words = useWords("turnaround");
  const before = neighbour(lines, line.step.line, "before");
  const isLeftOut = line.step.optional && openAsk(line) !== undefined;
  const after = isLeftOut ? pastOptional(lines, line.step.line) : neighbour(lines, line.step.line, "after");
  return (
    <nav aria-label={words.beside()}>
      <ButtonRow>
        {before !== undefined && (
          <Button onPress={() => place.goTo({ line: before })}>{words.line({ line: before })}</Button>
        )}
        {after === undefined ? (
          <Button onPress={() => place.show("seal")}>{words.toSealing()}</Button>
        ) : (
          <Button onPress={() => place.goTo({ line: after })}>
            {isLeftOut ? words.leaveOut({ line: after }) : words.line({ line: after })}
          </Button>
        )}
      </ButtonRow>
    </nav>
  );
}
