import { InputError } from "#base";
import type { SecondSaid } from "#readiness";
import { strikeEntry } from "#station";
import type { Entry } from "#log";
import { doingOf, useRecorder } from "#web/device/index.ts";
import { Button, ButtonRow, ErrorBox } from "#web/parts/index.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { SecondConfirmed } from "./second-confirmed.tsx";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

const TAKEN_BACK = "Taken back at the line";

/** Who sees the line done, by name, or why nobody does; taken back by one tap, as an answer is. */
export function SecondNamed({ open, said }: { readonly open: OpenKit; readonly said: SecondSaid }) {
  const entry = open.view.entriesOf(`kit:${open.kit.id}`).find(({ id }) => id === said.entry);
  const { qualification, second, note } = said;
  return (
    <section className="second-named" aria-label={`${qualification.name}: who sees it done`}>
      <p>
        {second ? "Second person: " : "Nobody sees it done: "}
        <strong>{second?.name ?? note}</strong> <span className="quiet">({qualification.name})</span>
      </p>
      <SecondConfirmed open={open} said={said} />
      {entry && <UndoNaming open={open} entry={entry} what={`${qualification.name}, ${second?.name ?? "alone"}`} />}
    </section>
  );
}

interface UndoNamingProps {
  readonly open: OpenKit;
  readonly entry: Entry;
  readonly what: string;
}

function UndoNaming({ open, entry, what }: UndoNamingProps) {
  const recorder = useRecorder();
  const saving = useSaving();
  const undo = async () => {
    const act = strikeEntry(doingOf(open.view), entry, TAKEN_BACK);
    if (act.kind === "refused") throw new InputError(act.because);
    await recorder.strike(entry, TAKEN_BACK);
  };
  return (
    <>
      <ButtonRow>
        <Button onPress={() => void saving.save(undo)} label={`Undo: ${what}`}>
          Undo
        </Button>
      </ButtonRow>
      <ErrorBox error={saving.error} title="Not taken back" />
    </>
  );
}
