import { Link } from "wouter";
import { stepNamed } from "#kit";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, ErrorBox, NightToggle, SendMark } from "#web/parts/index.ts";
import { useRecorder } from "#web/device/index.ts";
import { FlushLine } from "#web/kit-view/flush-line.tsx";
import type { OpenKit } from "#web/kit-view/at-hand.ts";
import { stateOf, type Line } from "#web/act/lines.ts";
import { lastUndoable, sayUndo, type Undoable } from "./undo.ts";
import type { Place } from "./use-place.ts";
import { useSaving } from "#web/act/use-saving.ts";

interface RunnerHeadProps {
  readonly open: OpenKit;
  readonly lines: readonly Line[];
  readonly place: Place;
}

/** Which kit, how far along, the list of lines, and the way to take back what was done last. */
export function RunnerHead({ open, lines, place }: RunnerHeadProps) {
  const { kit, view, turnaround } = open;
  const words = useWords("turnaround");
  const answered = lines.filter((line) => !["unanswered", "part"].includes(stateOf(line))).length;
  const whose = { turnaround: turnaround.id, by: view.me.id, device: view.device };
  const undoable = lastUndoable(view.entriesOf(`kit:${kit.id}`), whose);
  const listed = place.shown.kind === "lines";
  return (
    <header className="runner-head">
      <div className="runner-strip">
        <Link className="runner-leave" to={`/kit/${kit.id}`}>
          {words.leave()}
          <span className="for-readers-only"> {words.leaveMore({ kit: kit.name })}</span>
        </Link>
        <span className="runner-kit">{kit.name}</span>
        <SendMark isShort />
        <NightToggle />
      </div>
      <FlushLine kit={kit} />
      <ButtonRow>
        <Button onPress={() => place.show(listed ? "resume" : "lines")}>
          {listed ? words.goOn() : words.allLinesCount({ done: answered, all: lines.length })}
        </Button>
        {undoable && <Undo key={undoable.entry.id} undoable={undoable} place={place} open={open} />}
      </ButtonRow>
    </header>
  );
}

/** Strikes the newest thing this person did here, and goes back to its line. */
function Undo({
  undoable,
  place,
  open,
}: {
  readonly undoable: Undoable;
  readonly place: Place;
  readonly open: OpenKit;
}) {
  const recorder = useRecorder();
  const words = useWords("turnaround");
  const saving = useSaving();
  const line = undoable.step === undefined ? undefined : stepNamed(open.pattern, undoable.step)?.line;
  const undo = async () => {
    const done = await saving.save(() => recorder.strike(undoable.entry, words.takenBackAtOnce()));
    if (done && line !== undefined) place.goTo({ line });
  };
  return (
    <>
      <Button onPress={() => void undo()}>{sayUndo(undoable, open.pattern, words)}</Button>
      <ErrorBox error={saving.error} title={words.notTakenBack()} />
    </>
  );
}
