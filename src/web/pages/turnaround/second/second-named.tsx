import { InputError } from "#base";
import type { Step } from "#kit";
import type { SecondSaid } from "#readiness";
import { strikeEntry } from "#station";
import type { Entry } from "#log";
import { useWords, withParts } from "#web/language/index.ts";
import { doingOf, useRecorder } from "#web/device/index.ts";
import { Button, ButtonRow, ErrorBox } from "#web/parts/index.ts";
import { useSaving } from "#web/act/use-saving.ts";
import { SecondConfirmed } from "./second-confirmed.tsx";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

interface SecondNamedProps {
  readonly open: OpenKit;
  readonly said: SecondSaid;
  readonly step?: Step;
}

/** Who sees the line done, by name, or why nobody does; taken back by one tap, as an answer is. */
export function SecondNamed({ open, said, step }: SecondNamedProps) {
  const entry = open.view.entriesOf(`kit:${open.kit.id}`).find(({ id }) => id === said.entry);
  const { second, note } = said;
  const words = useWords("turnaroundEnd");
  const qualification = said.qualification.name;
  const what = second ? words.namedSecond({ qualification, person: second.name }) : words.namedAlone({ qualification });
  return (
    <section className="second-named" aria-label={words.whoSees({ qualification })}>
      <p>
        {second
          ? withParts((part) => words.secondPerson({ ...part, qualification }), {
              person: <strong>{second.name}</strong>,
            })
          : withParts((part) => words.nobodySees({ ...part, qualification }), { note: <strong>{note}</strong> })}
      </p>
      <SecondConfirmed open={open} said={said} {...(step && { step })} />
      {entry && <UndoNaming open={open} entry={entry} what={what} />}
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
  const words = useWords("turnaroundEnd");
  const saving = useSaving();
  const undo = async () => {
    const act = strikeEntry(doingOf(open.view), entry, words.takenBackAtLine());
    if (act.kind === "refused") throw new InputError(act.because);
    await recorder.strike(entry, words.takenBackAtLine());
  };
  return (
    <>
      <ButtonRow>
        <Button onPress={() => void saving.save(undo)} label={words.undoWhat({ what })}>
          {words.undo()}
        </Button>
      </ButtonRow>
      <ErrorBox error={saving.error} title={words.notTakenBack()} />
    </>
  );
}
