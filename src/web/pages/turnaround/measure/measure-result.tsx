import { Prose } from "#web/parts/prose.tsx";
import { useState } from "react";
import type { Entry } from "#log";
import type { Pattern } from "#kit";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox, Notice } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { LookFirst } from "#web/rig/prime-reading.tsx";
import type { KitActs } from "#web/act/acts.ts";
import { sayWho, type OpenKit } from "#web/kit-view/at-hand.ts";
import { FindingSheet } from "../answer/finding-sheet.tsx";
import type { Line } from "#web/act/lines.ts";
import type { ProofAnswer } from "./measure-draft.ts";
import { effectOf, ratioAsk, sayMeasured, sayRatio, sayShare, sayVerdict } from "./measure-words.ts";
import { useSaving } from "#web/act/use-saving.ts";

export interface MeasureProps {
  readonly open: OpenKit;
  readonly acts: KitActs;
  readonly line: Line;
  /** Leads on once the line's check is answered from here. */
  readonly onAnswered: () => void;
  /** A finding that grounds the kit was raised from it: the line stays, with the ask that it was raised at. */
  readonly onGrounded: (ask: string) => void;
}

/** What the readings come to, before they are written down. */
export function ResultPanel({ answer, pattern }: { readonly answer: ProofAnswer; readonly pattern: Pattern }) {
  const { units } = usePreferences();
  const words = useWords("turnaroundMeasure");
  const reader = { units, words };
  if (answer.expected <= 0) {
    return (
      <Notice tone="attention" title={words.nothingAgainst()} isNews>
        <p>{words.nothingAgainstMore()}</p>
      </Notice>
    );
  }
  return (
    <Notice tone={toneOf(answer.verdict)} title={sayVerdict(answer, pattern, words)} isNews>
      <p className="tabular">{sayMeasured(answer, reader)}.</p>
      <p className="tabular">
        {words.ratioDoubt({ ratio: sayRatio(answer, reader), doubt: sayShare(2 * answer.ratioUncertainty) })}
      </p>
      {answer.suction && <SideWords verdict={answer.suction} />}
      <details className="extras">
        <summary>{words.takenForGranted()}</summary>
        {answer.assumptions.map(({ what, effect }) => (
          <p key={what}>
            <Prose text={`${what} ${effect}`} />
          </p>
        ))}
      </details>
    </Notice>
  );
}

function toneOf(verdict: ProofAnswer["verdict"]): "plain" | "attention" | "wrong" {
  if (verdict === "as-expected") return "plain";
  return verdict === "grounds" ? "wrong" : "attention";
}

type Side = NonNullable<ProofAnswer["suction"]>;

function saySide(kind: Side["kind"], words: Words["turnaroundMeasure"]): string {
  const said = {
    "pump-side": words.pumpSide,
    "hose-side": words.hoseSide,
    "no-fault-seen": words.noFaultSeen,
    unclear: words.sideUnclear,
  };
  return said[kind]();
}

/** On which side of the suction port the fault lies, and where to look. */
export function SideWords({ verdict }: { readonly verdict: Side }) {
  const words = useWords("turnaroundMeasure");
  return (
    <>
      <p>
        <strong>{saySide(verdict.kind, words)}</strong> {verdict.because}.
      </p>
      {verdict.lookFirst.length > 0 && <LookFirst places={verdict.lookFirst} />}
    </>
  );
}

interface MeasuredPanelProps extends MeasureProps {
  readonly measured: OpenKit["turnaround"]["measured"][number];
  readonly onAgain: () => void;
}

/** What was written down, and the answer to the line's check that follows from it. */
export function MeasuredPanel({ measured, onAgain, ...about }: MeasuredPanelProps) {
  const { open } = about;
  const { units } = usePreferences();
  const words = useWords("turnaroundMeasure");
  const reader = { units, words };
  return (
    <>
      <Notice tone={toneOf(measured.verdict)} title={sayVerdict(measured, open.pattern, words)}>
        <p className="tabular">{sayMeasured(measured, reader)}.</p>
        <p className="tabular">{sayRatio(measured, reader)}.</p>
        <p className="quiet">{sayWho(open.view, measured.mark)}</p>
      </Notice>
      <AnswerWithIt {...about} measured={measured} />
      <Button onPress={onAgain}>{words.measureAgain()}</Button>
    </>
  );
}

/** Answers the check with the measured share: seen right, or wrong with its finding. */
function AnswerWithIt({ measured, ...about }: Omit<MeasuredPanelProps, "onAgain">) {
  const { open, acts, line, onAnswered, onGrounded } = about;
  const saving = useSaving();
  const words = useWords("turnaroundMeasure");
  const [wrong, setWrong] = useState<Entry>();
  const ask = ratioAsk(line);
  const effect = effectOf(measured.verdict);
  if (!ask || measured.verdict === "unclear") return null;
  const where = { turnaround: open.turnaround.id, step: line.step.id };
  const share = sayShare(measured.ratio);
  const value = { kind: "quantity", si: measured.ratio, dimension: "ratio", text: share } as const;
  const give = async () => {
    let entry: Entry | undefined;
    const answer = effect === undefined ? "seen" : "wrong";
    const done = await saving.save(async () => {
      entry = await acts.answer(where, ask, answer, { value });
    });
    if (!done) return;
    if (answer === "seen") onAnswered();
    else setWrong(entry);
  };
  return (
    <>
      <ErrorBox error={saving.error} title={words.notSaved()} />
      {!ask.answered && (
        <Button
          kind="primary"
          wide
          {...(effect !== undefined && { tone: "grave" as const })}
          onPress={() => void give()}
        >
          {effect === undefined ? words.answerRight({ share }) : words.answerWrong({ share })}
        </Button>
      )}
      {wrong && (
        <FindingSheet
          {...about}
          ask={ask}
          answer={wrong}
          {...(effect !== undefined && { likely: effect })}
          onRaised={({ effect: raised }) => (raised === "grounds" ? onGrounded(ask.key) : onAnswered())}
          onClose={() => setWrong(undefined)}
        />
      )}
    </>
  );
}
