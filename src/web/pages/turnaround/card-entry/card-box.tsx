import type { Words } from "#words";
import { useRef, useState, type KeyboardEvent } from "react";
import { useWords } from "#web/language/index.ts";
import { Button, ErrorBox } from "#web/parts/index.ts";
import { sayBox } from "./card-cell.ts";
import { sayBarred, sayWayOut } from "#readiness";
import { barsAtBox, enterBox, type Entering } from "./card-entering.ts";
import { isFilled, type CardRow } from "./card-rows.ts";
import { CardFinding } from "./card-finding.tsx";
import { secondsNamed } from "../second/use-seconds.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { sayAnswer, type AnswerWords } from "#web/act/wording.ts";

interface CardBoxProps {
  readonly row: CardRow;
  readonly entering: Entering;
}

/** One box of the card: typed, saved with Enter, then shown as it was taken. */
export function CardBox({ row, entering }: CardBoxProps) {
  const [again, setAgain] = useState(false);
  const words = useWords("turnaroundRecord");
  const held = useWords("held");
  const answers = { act: useWords("act"), parts: useWords("parts") };
  const filled = isFilled(row) && !again;
  return (
    <li className="card-box">
      <span className="card-label tabular">{row.label}</span>
      <div className="card-words">
        <p>{sayRow(row, words)}</p>
        {barsAtBox(entering, row).map((bar) => (
          <p key={`${bar.finding} ${bar.step}`} className="field-fault">
            {words.stoppedHere({ why: sayBarred(bar, held) })}{" "}
            {(bar.hangs ?? bar.open !== undefined) && sayWayOut(bar, held)}
          </p>
        ))}
        {filled ? (
          <p className="card-taken">
            <strong>{takenAs(row, words, answers)}</strong>
            <Button kind="quiet" onPress={() => setAgain(true)} label={words.enterAgain({ box: row.label })}>
              {words.again()}
            </Button>
          </p>
        ) : (
          <BoxInput row={row} entering={entering} onDone={() => setAgain(false)} />
        )}
        {row.kind === "answer" && row.answered?.answer === "wrong" && <CardFinding row={row} entering={entering} />}
      </div>
    </li>
  );
}

function sayRow(row: CardRow, words: Words["turnaroundRecord"]): string {
  if (row.kind === "fitting") return words.newItem({ item: row.item.name });
  if (row.kind !== "timer") return row.text;
  return row.timer.kind === "pulls" ? words.boxPulls({ text: row.text }) : words.boxTime({ text: row.text });
}

function takenAs(row: CardRow, words: Words["turnaroundRecord"], answers: AnswerWords): string {
  if (row.kind === "answer" && row.answered) return sayAnswer(row.answered, row.check, answers);
  return row.kind === "fitting" ? words.fittedNew() : words.entered();
}

function hintOf(row: CardRow, words: Words["turnaroundRecord"]): string {
  if (row.kind === "answer") return sayBox(row.check, words);
  if (row.kind === "timer") return row.timer.kind === "pulls" ? words.hintNumber() : words.hintTime();
  return row.item.life.kind === "printed" ? words.hintPrinted() : words.hintSeen();
}

function BoxInput({ row, entering, onDone }: CardBoxProps & { readonly onDone: () => void }) {
  const saving = useSaving(secondsNamed(entering.open.turnaround));
  const words = useWords("turnaroundRecord");
  const input = useRef<HTMLInputElement>(null);
  const [text, setText] = useState("");
  const [fault, setFault] = useState<string>();
  const save = async () => {
    const entered = enterBox(entering, row, text);
    setFault(entered.kind === "fault" ? entered.fault(words) : undefined);
    if (entered.kind === "fault") return;
    focusNext(input.current);
    if (await saving.save(() => entering.turn.run(entered.write))) onDone();
  };
  const onKey = (event: KeyboardEvent) => {
    if (event.key === "Enter") void save();
  };
  const id = `box-${row.key}`;
  return (
    <>
      <div className="card-input">
        <input
          ref={input}
          className="field-input"
          aria-label={`${row.label}: ${sayRow(row, words)}`}
          aria-describedby={`${id}-hint`}
          aria-invalid={fault !== undefined || undefined}
          autoComplete="off"
          autoCapitalize="none"
          maxLength={200}
          value={text}
          onChange={(event) => setText(event.target.value)}
          onKeyDown={onKey}
        />
        <span className="field-hint" id={`${id}-hint`}>
          {hintOf(row, words)}
        </span>
      </div>
      <div aria-live="polite">{fault !== undefined && <p className="field-fault">{fault}</p>}</div>
      <ErrorBox error={saving.error} title={words.notSaved()} />
    </>
  );
}

/** The next empty box, found before this one gives way to its answer. */
function focusNext(from: HTMLInputElement | null): void {
  const boxes = [...document.querySelectorAll<HTMLInputElement>(".card-input input")];
  const next = from ? boxes[boxes.indexOf(from) + 1] : undefined;
  next?.focus();
}
