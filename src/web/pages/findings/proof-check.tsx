import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import type { Check } from "#kit";
import type { Answer, Finding, TimerState, Value } from "#readiness";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { AnswerBar } from "#web/act/answer-bar.tsx";
import { sayLimits } from "#web/act/reading.ts";
import { ReadingFields } from "#web/act/reading-fields.tsx";
import { assembleReading } from "#web/act/typed-reading.ts";
import { useAskDraft } from "#web/act/use-ask-draft.ts";

interface ProofCheckProps {
  readonly check: Check;
  readonly finding: Finding;
  readonly today: string;
  /** The day that a printed date must reach. */
  readonly wanted: string;
  /** What the check is held against; no seal while the container stands open: it is broken, and the next not on. */
  readonly recorded: string | undefined;
  readonly onAnswer: (answer: Answer, value: Value | undefined) => void;
}

/** One check made once more, with the same limits and the same three answers. */
export function ProofCheck({ check, finding, today, wanted, recorded, onAnswer }: ProofCheckProps) {
  const words = useWords("findings");
  const act = useWords("act");
  const { units } = usePreferences();
  const kept = useAskDraft(`proof.${finding.id}`, check.id);
  const [timer, setTimer] = useState<TimerState>();
  const [missing, setMissing] = useState<string>();
  const reading = assembleReading(check, kept.draft.typed, { today, units, timer, recorded, wanted }, act);
  const limits = sayLimits(check, { units, words: act });
  const give = (answer: Answer) => {
    setMissing(answer === "seen" && reading.kind === "incomplete" ? reading.missing : undefined);
    if (answer === "seen" && reading.kind === "incomplete") return;
    kept.clear();
    onAnswer(answer, reading.kind === "read" ? reading.value : undefined);
  };
  return (
    <section className="finding-form" aria-label={words.check()}>
      <p className="finding-ask">{check.ask}</p>
      <p>
        {words.rightIs({ expect: check.expect })} {limits !== undefined && <strong>{words.limit({ limits })}</strong>}
      </p>
      {check.kind === "timed" ? (
        <SecondsField onChange={setTimer} />
      ) : (
        <ReadingFields check={check} kept={kept} reading={reading} />
      )}
      <AnswerBar
        check={check}
        reading={reading}
        refusal={missing}
        onSeen={() => give("seen")}
        onWrong={() => give("wrong")}
        onNotPossible={() => give("not-possible")}
      />
    </section>
  );
}

/** How long it took, by any clock at hand. */
function SecondsField({ onChange }: { readonly onChange: (timer: TimerState | undefined) => void }) {
  const words = useWords("findings");
  const [text, setText] = useState("");
  return (
    <QuantityField
      label={words.timeTaken()}
      dimension="time"
      unit="s"
      value={text}
      onChange={(typed, reading) => {
        setText(typed);
        onChange(reading && { seconds: reading.si, mark: NOT_WRITTEN });
      }}
    />
  );
}

/** A clock of the proof is not in the log by itself; only its reading is. */
const NOT_WRITTEN = { entry: "", at: "", by: "", device: "" } as const;
