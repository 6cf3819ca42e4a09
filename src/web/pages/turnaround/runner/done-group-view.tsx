import { Prose } from "#web/parts/prose.tsx";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox } from "#web/parts/index.ts";
import { useSeenToEnd } from "#web/parts/look/use-seen-to-end.ts";
import type { KitActs } from "#web/act/acts.ts";
import type { Line } from "#web/act/lines.ts";
import { MemberPictures } from "../shown/line-pictures.tsx";
import { secondsNamed } from "../second/use-seconds.ts";
import type { Whole } from "../answer/use-whole.ts";
import { useSaving } from "#web/act/use-saving.ts";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { AnswerAll } from "./answer-all.tsx";
import { fittedPlainly, plainRenewals, sayNew } from "../answer/renewals.ts";

interface DoneGroupProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  /** Lines done one after the other, two or more. */
  readonly group: readonly Line[];
  /** Keeps all of it on the screen until the last of it is written. */
  readonly whole: Pick<Whole<unknown>, "while">;
  readonly onAnswered: () => void;
  /** Asked to be answered by itself. */
  readonly onSingle: (line: Line) => void;
}

/** Lines read whole, done in order, then confirmed with one tap: an answer is written for each, with what it renews. */
export function DoneGroupView({ open, acts, group, whole, onAnswered, onSingle }: DoneGroupProps) {
  const saving = useSaving(secondsNamed(open.turnaround));
  const words = useWords("turnaroundLine");
  const runner = useWords("turnaround");
  const answerAll = async () => {
    for (const { step, asks } of group) {
      const where = { turnaround: open.turnaround.id, step: step.id };
      for (const item of plainRenewals(open, step)) await acts.fit(where, fittedPlainly(open, item));
      await acts.answer(where, asks[0]!, "seen");
    }
  };
  const onAll = async () => {
    if (await saving.save(() => whole.while(answerAll))) onAnswered();
  };
  const { list, ...seen } = useSeenToEnd();
  const renewed = group.flatMap(({ step }) => plainRenewals(open, step));
  return (
    <section className="ask" aria-label={words.togetherDone()}>
      <ol ref={list} className="look-group done-group">
        {group.map((line) => (
          <Member key={line.step.id} open={open} line={line} onSingle={() => onSingle(line)} />
        ))}
      </ol>
      {group.map(
        ({ step }) =>
          step.why !== undefined && (
            <p key={step.id} className="step-why">
              {runner.whyLine({ line: step.line, why: step.why })}
            </p>
          ),
      )}
      <ErrorBox error={saving.error} title={words.notSaved()} />
      <AnswerAll {...seen} onAll={() => void onAll()}>
        {words.doneAll({ count: group.length, renewed: sayNew(renewed, words) })}
      </AnswerAll>
    </section>
  );
}

interface MemberProps extends Pick<DoneGroupProps, "open"> {
  readonly line: Line;
  readonly onSingle: () => void;
}

/** One line of the group: its words, with its own drawing and its own way out beside them. */
function Member({ open, line, onSingle }: MemberProps) {
  const { step } = line;
  const words = useWords("turnaroundLine");
  return (
    <li className="look-member">
      <p>
        <span className="tabular quiet">{step.line}</span> <Prose text={step.text} />
      </p>
      <div className="done-member-side">
        <MemberPictures open={open} step={step.id} />
        <Button onPress={onSingle} label={words.notSoLine({ line: step.line })}>
          {words.notSo()}
        </Button>
      </div>
    </li>
  );
}
