import { formatDate } from "#base";
import { dateWork, isKeeper, putOffWork, takeWork, type Act, type DueLine, type ActContext } from "#station";
import type { EntryKind } from "#readiness";
import { useState } from "react";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ButtonRow, ErrorBox, TextField, useDoing } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";

interface WorkFormProps {
  readonly line: DueLine;
  readonly onDone: () => void;
}

/** Gives a line its day or a person, or puts it off with a reason. */
export function WorkForm({ line, onDone }: WorkFormProps) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [day, setDay] = useState<string>();
  const [reason, setReason] = useState("");
  const write = async <Kind extends EntryKind>(want: (at: ActContext) => Act<Kind>) => {
    if (await doing.run(() => carryOut(want))) onDone();
  };
  return (
    <div className="work-form">
      <DateField label="Day" value={day} onChange={setDay} mayBeMonth={false} hint={sayLimit(line)} />
      <TextField label="Why it is put off" value={reason} onChange={setReason} limit={1000} />
      <ErrorBox error={doing.error} title="Not written down" />
      <ButtonRow>
        <Button
          isDisabled={day === undefined}
          isBusy={doing.isBusy}
          onPress={() => void write((at) => dateWork(at, line, day))}
        >
          Do it on this day
        </Button>
        <Button
          isDisabled={day === undefined || reason.trim() === ""}
          isBusy={doing.isBusy}
          onPress={() => void write((at) => putOffWork(at, line, { until: day!, reason: reason.trim() }))}
        >
          Put off until this day
        </Button>
        {line.said.day && (
          <Button isBusy={doing.isBusy} onPress={() => void write((at) => dateWork(at, line, undefined))}>
            Take its day back
          </Button>
        )}
      </ButtonRow>
      <Persons line={line} onTake={(person) => void write((at) => takeWork(at, line, person))} />
    </div>
  );
}

function sayLimit({ work, latest, groundsAfter, isGrounding }: DueLine): string {
  if (work === "muster") {
    return latest === undefined
      ? "Its last day is past: it can be given a day, not put off."
      : `At latest ${formatDate(latest)}, its last day.`;
  }
  if (isGrounding) return "It grounds the kit already: it can be given a day, not put off.";
  if (groundsAfter === undefined) return "Nothing dated grounds the kit for it.";
  return `At latest ${formatDate(groundsAfter)}: after it the kit is grounded.`;
}

interface PersonsProps {
  readonly line: DueLine;
  readonly onTake: (person: string) => void;
}

/** A keeper puts somebody to it. */
function Persons({ line, onTake }: PersonsProps) {
  const { me } = useStation();
  const others = line.present.filter(({ id, role }) => id !== me.id && role !== "assessor");
  if (!isKeeper(me.role) || others.length === 0) return null;
  return (
    <ButtonRow>
      {others.map(({ id, name }) => (
        <Button key={id} onPress={() => onTake(id)}>
          Give it to {name}
        </Button>
      ))}
    </ButtonRow>
  );
}
