import { Prose } from "#web/parts/prose.tsx";
import { clockAt } from "#readiness";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { useSeenToEnd } from "#web/parts/look/use-seen-to-end.ts";
import type { KitActs } from "#web/act/acts.ts";
import { lastTime, sayLimits, writeValue } from "#web/act/reading.ts";
import type { Ask, Line } from "#web/act/lines.ts";
import { fittedPlainly, renewedWith, sayNew } from "../answer/renewals.ts";
import { useNow } from "#web/timing/index.ts";
import { stopClock } from "../answer/use-answering.ts";
import { Afterwards } from "../afterwards/afterwards-note.tsx";
import { AnswerAll } from "./answer-all.tsx";
import { plainTap } from "./look-group.ts";
import { whyNotAnswered } from "./step-gate.ts";
import { secondsNamed } from "../second/use-seconds.ts";
import type { Whole } from "../answer/use-whole.ts";
import { useSaving } from "#web/act/use-saving.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

interface LookGroupProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly line: Line;
  /** What one look shows, two or more. */
  readonly group: readonly Ask[];
  /** Keeps all of it on the screen until the last of it is written. */
  readonly whole: Pick<Whole<unknown>, "while">;
  readonly onAnswered: () => void;
  /** Asked to be answered by itself. */
  readonly onSingle: (ask: Ask) => void;
}

/** Checks that one look shows: each with what is right for it and its own way out, then one tap for all as listed. */
export function LookGroupView({ open, acts, line, group, whole, onAnswered, onSingle }: LookGroupProps) {
  const saving = useSaving(secondsNamed(open.turnaround));
  const words = useWords("turnaroundLine");
  const act = useWords("act");
  const where = { turnaround: open.turnaround.id, step: line.step.id };
  const { list, ...seen } = useSeenToEnd();
  const renewed = renewedWith(open, line, group);
  const timer = clockAt(open, line.step.id);
  const held = whyNotAnswered(open, line.step, { now: useNow(timer?.started !== undefined), words });
  const answerAll = async () => {
    await stopClock({ open, acts, line }, where);
    for (const item of renewed) await acts.fit(where, fittedPlainly(open, item));
    for (const ask of group) {
      const value = plainTap(open, line, ask, act)?.value;
      await acts.answer(where, ask, "seen", value ? { value } : {});
    }
  };
  const onAll = async () => {
    if (await saving.save(() => whole.while(answerAll))) onAnswered();
  };
  return (
    <section className="ask" aria-label={words.togetherSeen()}>
      <ol ref={list} className="look-group">
        {group.map((ask) => (
          <Member key={ask.key} open={open} line={line} ask={ask} onSingle={() => onSingle(ask)} />
        ))}
      </ol>
      <ErrorBox error={saving.error} title={words.notSaved()} />
      <Afterwards line={line} asks={group} />
      <AnswerAll {...seen} held={held} onAll={() => void onAll()}>
        {words.seenAll({ count: group.length, renewed: sayNew(renewed, words) })}
      </AnswerAll>
    </section>
  );
}

interface MemberProps extends Pick<LookGroupProps, "open" | "line"> {
  readonly ask: Ask;
  readonly onSingle: () => void;
}

function Member({ open, line, ask, onSingle }: MemberProps) {
  const { units } = usePreferences();
  const { check } = ask;
  const parts = useWords("parts");
  const words = useWords("turnaroundLine");
  const act = useWords("act");
  if (!check) return null;
  const limits = sayLimits(check, { units, words: act });
  const last = check.kind === "measure" ? lastTime(open.kit.turnarounds, ask.key)?.value : undefined;
  return (
    <li className="look-member">
      <p>
        <Prose text={check.ask} />{" "}
        <strong>
          <Prose text={check.expect} />
        </strong>
        {check.kind === "count" && limits !== undefined && <strong> {limits}.</strong>}
        {check.kind === "match" && <strong> {plainTap(open, line, ask, act)?.words}.</strong>}
        {last && <span className="quiet"> {words.lastTimeShort({ value: writeValue(last, parts, units) })}</span>}
      </p>
      <Button onPress={onSingle} label={words.notSoCheck({ check: labelAt(line, ask) })}>
        {words.notSo()}
      </Button>
    </li>
  );
}

/** A check's number as the card prints it: "12a". */
function labelAt({ step, asks }: Line, ask: Ask): string {
  return `${step.line}${String.fromCodePoint(97 + asks.indexOf(ask))}`;
}
