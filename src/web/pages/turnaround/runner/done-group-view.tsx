import { Button, ErrorBox } from "../../../parts/index.ts";
import type { KitActs } from "../../../act/acts.ts";
import type { Line } from "../../../act/lines.ts";
import { useSaving } from "../../../act/use-saving.ts";
import type { OpenKit } from "../../../kit-view/at-hand.ts";
import { fittedPlainly, plainRenewals, sayNew } from "../answer/renewals.ts";

interface DoneGroupProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  /** Lines done one after the other, two or more. */
  readonly group: readonly Line[];
  readonly onAnswered: () => void;
  /** Asked to be answered by itself. */
  readonly onSingle: (line: Line) => void;
}

/** Lines read whole, done in order, then confirmed with one tap: an answer is written for each, with what it renews. */
export function DoneGroupView({ open, acts, group, onAnswered, onSingle }: DoneGroupProps) {
  const saving = useSaving();
  const answerAll = async () => {
    for (const { step, asks } of group) {
      const where = { turnaround: open.turnaround.id, step: step.id };
      for (const item of plainRenewals(open, step)) await acts.fit(where, fittedPlainly(open, item));
      await acts.answer(where, asks[0]!, "seen");
    }
  };
  const onAll = async () => {
    if (await saving.save(answerAll)) onAnswered();
  };
  const renewed = group.flatMap(({ step }) => plainRenewals(open, step));
  return (
    <section className="ask" aria-label="Lines done one after the other">
      <ol className="look-group done-group">
        {group.map((line) => (
          <Member key={line.step.id} line={line} onSingle={() => onSingle(line)} />
        ))}
      </ol>
      {group.map(
        ({ step }) =>
          step.why !== undefined && <p key={step.id} className="step-why">{`Why ${step.line}: ${step.why}`}</p>,
      )}
      <ErrorBox error={saving.error} title="Not saved" />
      <fieldset className="answer-bar">
        <legend className="for-readers-only">Answer</legend>
        <Button kind="primary" wide onPress={() => void onAll()}>
          Done: all {group.length} in this order{sayNew(renewed)}
        </Button>
      </fieldset>
    </section>
  );
}

function Member({ line, onSingle }: { readonly line: Line; readonly onSingle: () => void }) {
  const { step } = line;
  return (
    <li className="look-member">
      <p>
        <span className="tabular quiet">{step.line}</span> {step.text}
      </p>
      <Button onPress={onSingle} label={`Not so, or answer by itself: line ${step.line}`}>
        Not so
      </Button>
    </li>
  );
}
