import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { dateWork, isKeeper, putOffWork, takeWork, type Act, type DueLine, type ActContext } from "#station";
import type { EntryKind } from "#readiness";
import { useState } from "react";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ButtonRow, ErrorBox, sayDate, TextField, useDoing } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";

interface WorkFormProps {
  readonly line: DueLine;
  readonly onDone: () => void;
}

/** Gives a line its day or a person, or puts it off with a reason. */
export function WorkForm({ line, onDone }: WorkFormProps) {
  const words = useWords("work");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [day, setDay] = useState<string>();
  const [reason, setReason] = useState("");
  // What grounds already, and a muster past its day, is not put off: nothing asks why.
  const mayWait = !line.isGrounding && (line.work !== "muster" || line.latest !== undefined);
  const write = async <Kind extends EntryKind>(want: (at: ActContext) => Act<Kind>) => {
    if (await doing.run(() => carryOut(want))) onDone();
  };
  return (
    <div className="work-form">
      <DateField label={words.day()} value={day} onChange={setDay} mayBeMonth={false} hint={sayLimit(line, words)} />
      {mayWait && <TextField label={words.whyPutOff()} value={reason} onChange={setReason} limit={1000} />}
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <ButtonRow>
        <Button
          isDisabled={day === undefined}
          isBusy={doing.isBusy}
          onPress={() => void write((at) => dateWork(at, line, day))}
        >
          {words.doOnDay()}
        </Button>
        {mayWait && (
          <Button
            isDisabled={day === undefined || reason.trim() === ""}
            isBusy={doing.isBusy}
            onPress={() => void write((at) => putOffWork(at, line, { until: day!, reason: reason.trim() }))}
          >
            {words.putOff()}
          </Button>
        )}
        {line.said.day && (
          <Button isBusy={doing.isBusy} onPress={() => void write((at) => dateWork(at, line, undefined))}>
            {words.takeDayBack()}
          </Button>
        )}
      </ButtonRow>
      <Persons line={line} onTake={(person) => void write((at) => takeWork(at, line, person))} />
    </div>
  );
}

function sayLimit({ work, latest, groundsAfter, isGrounding }: DueLine, words: Words["work"]): string {
  if (work === "muster") {
    return latest === undefined ? words.musterPast() : words.musterLatest({ day: sayDate(latest) });
  }
  if (isGrounding) return words.groundsAlready();
  if (groundsAfter === undefined) return words.groundsNever();
  return words.groundsAfter({ day: sayDate(groundsAfter) });
}

interface PersonsProps {
  readonly line: DueLine;
  readonly onTake: (person: string) => void;
}

/** A keeper puts somebody to it. */
function Persons({ line, onTake }: PersonsProps) {
  const words = useWords("work");
  const { me } = useStation();
  const others = line.present.filter(({ id, role }) => id !== me.id && role !== "assessor");
  if (!isKeeper(me.role) || others.length === 0) return null;
  return (
    <ButtonRow>
      {others.map(({ id, name }) => (
        <Button key={id} onPress={() => onTake(id)}>
          {words.giveTo({ name })}
        </Button>
      ))}
    </ButtonRow>
  );
}
