import { findCaution } from "#base";
import type { Visit } from "#readiness";
import { useState } from "react";
import { Link } from "wouter";
import { useStation } from "#web/device/index.ts";
import { AnswerBar } from "#web/act/answer-bar.tsx";
import { NotPossible } from "#web/act/not-possible.tsx";
import { oneTapOf } from "#web/act/one-tap.ts";
import { ReadingFields } from "#web/act/reading-fields.tsx";
import { sayLimits } from "#web/act/reading.ts";
import { assembleReading, isSaid } from "#web/act/typed-reading.ts";
import { useAskDraft } from "#web/act/use-ask-draft.ts";
import { CautionText } from "#web/parts/caution-box.tsx";
import { Button, ErrorBox, Notice, TextField } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { FoundDialog } from "./found-dialog.tsx";
import { useLooking } from "./use-looking.ts";
import type { LineToLook } from "./visit-at-hand.ts";
import { useWords, withParts } from "#web/language/index.ts";

interface LookProps {
  readonly visit: Visit;
  readonly line: LineToLook;
  /** "3 of 20". */
  readonly progress: string;
  readonly onDone: () => void;
  readonly onLater: () => void;
}

/** One line looked at again: what to do, what right is, the reading, and the three answers. */
export function LookAtLine({ visit, line, progress, onDone, onLater }: LookProps) {
  const words = useWords("visit");
  const act = useWords("act");
  const { today } = useStation();
  const { units } = usePreferences();
  const kept = useAskDraft(`visit.${visit.id}`, line.key);
  const reading = assembleReading(line.ofCheck, kept.draft.typed, { today, units }, act);
  const oneTap = oneTapOf(line.ofCheck, kept.draft.typed, {}, act);
  const looking = useLooking({ visit, line, reading, kept, oneTap, onDone });
  const [asks, setAsks] = useState<"why" | "what">();
  const close = () => setAsks(undefined);
  return (
    <section aria-label={words.line()} className="visit-line">
      <Where line={line} progress={progress} />
      {line.ofKit.turnaround === undefined && <StillShut line={line} />}
      <What line={line} />
      {line.seen && <Notice title={words.seenBefore()} />}
      <ReadingFields check={line.ofCheck} kept={kept} reading={reading} />
      <ErrorBox error={looking.error} title={words.notSaved()} />
      <AnswerBar
        check={line.ofCheck}
        reading={reading}
        oneTap={oneTap}
        refusal={looking.refusal !== undefined && !isSaid(reading, looking.refusal) ? looking.refusal : undefined}
        onSeen={() => void looking.onSeen()}
        onWrong={() => setAsks("what")}
        onNotPossible={() => setAsks("why")}
      />
      <Button wide onPress={onLater}>
        {words.later()}
      </Button>
      <details className="extras" open={kept.draft.note !== ""}>
        <summary>{words.noteWith()}</summary>
        <TextField
          label={words.note()}
          value={kept.draft.note}
          onChange={(note) => kept.change({ note })}
          isLong
          limit={2000}
        />
      </details>
      {asks === "why" && <NotPossible onClose={close} onSave={(why) => void looking.onNotPossible(why)} />}
      {asks === "what" && <FoundDialog line={line} onClose={close} onFound={looking.onWrong} />}
    </section>
  );
}

function Where({ line, progress }: Pick<LookProps, "line" | "progress">) {
  const words = useWords("visit");
  return (
    <div className="visit-where">
      <h2>{line.ofKit.name}</h2>
      <span className="quiet">{words.where({ stage: line.stage, line: line.atStep.line, progress })}</span>
    </div>
  );
}

/** The log has it shut: who may opens it, and turns it round afterwards. */
function StillShut({ line: { ofKit } }: Pick<LookProps, "line">) {
  const words = useWords("visit");
  return (
    <Notice tone="attention" title={words.isShut({ kit: ofKit.name })}>
      <p>{withParts(words.isShutMore, { opened: <Link to={`/kit/${ofKit.id}/turnaround`}>{words.opened()}</Link> })}</p>
    </Notice>
  );
}

function What({ line: { atStep, ofCheck } }: Pick<LookProps, "line">) {
  const words = useWords("visit");
  const { units } = usePreferences();
  const limits = sayLimits(ofCheck, { units, words: useWords("act") });
  const cautions = atStep.cautions.map(findCaution).filter((caution) => caution !== undefined);
  return (
    <>
      {cautions.map((caution) => (
        <CautionText key={caution.id} caution={caution} />
      ))}
      <p className="visit-step">{ofCheck.ask}</p>
      <p className="quiet">{words.lineReads({ text: atStep.text })}</p>
      <p className="ask-expect">
        {words.rightIs({ expect: ofCheck.expect })}
        {limits !== undefined && <strong className="ask-limits"> {words.limit({ limits })}</strong>}
      </p>
    </>
  );
}
