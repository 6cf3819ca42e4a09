import type { Words } from "#words";
import type { Person } from "#readiness";
import { ASSUMED_HOURS, isKeeper, mayWrite, setAbsence, setHours } from "#station";
import { useState } from "react";
import { useCarryOut, useRecorder, useStation } from "#web/device/index.ts";
import { Button, ButtonRow, ErrorBox, sayDate, Section, TextField, useDoing } from "#web/parts/index.ts";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { useWords } from "#web/language/index.ts";

/** Hours that people have for kits, and their days away: what the plan of the year and the work due go by. */
export function TimeSection() {
  const words = useWords("people");
  const { people, me } = useStation();
  const [chosen, setChosen] = useState(me.id);
  const hands = people.filter(({ left, role }) => !left && mayWrite(role, "sealed"));
  const shown = isKeeper(me.role) ? hands : hands.filter(({ id }) => id === me.id);
  const person = shown.find(({ id }) => id === chosen) ?? shown[0];
  if (person === undefined) return null;
  return (
    <Section title={words.time()}>
      <ul>
        {hands.map((one) => (
          <li key={one.id}>{sayTime(one, words)}</li>
        ))}
      </ul>
      {shown.length > 1 && (
        <ButtonRow>
          {shown.map(({ id, name }) => (
            <Button key={id} isPressed={id === person.id} onPress={() => setChosen(id)} label={words.timeOf({ name })}>
              {name}
            </Button>
          ))}
        </ButtonRow>
      )}
      {mayWrite(me.role, "hours-set") && <Hours key={`hours ${person.id}`} person={person} />}
      <Away key={`away ${person.id}`} person={person} />
    </Section>
  );
}

function sayTime({ name, hours, away = [] }: Person, words: Words["people"]): string {
  const days = away.map(({ from, to }) => words.fromTo({ from: sayDate(from), to: sayDate(to) })).join(", ");
  const of = { name, isAway: away.length > 0 ? "yes" : "no", days };
  return hours === undefined ? words.timeAssumed({ ...of, assumed: ASSUMED_HOURS }) : words.timeSaid({ ...of, hours });
}

function Hours({ person }: { readonly person: Person }) {
  const words = useWords("people");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [text, setText] = useState(person.hours === undefined ? "" : String(person.hours));
  const hours = text.trim() === "" ? Number.NaN : Number(text.replace(",", "."));
  return (
    <>
      <TextField label={words.hoursOf({ name: person.name })} value={text} onChange={setText} limit={6} isShort />
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <div>
        <Button
          isDisabled={!Number.isFinite(hours)}
          isBusy={doing.isBusy}
          onPress={() => void doing.run(() => carryOut((at) => setHours(at, person.id, hours)))}
        >
          {words.saveHours()}
        </Button>
      </div>
    </>
  );
}

function Away({ person }: { readonly person: Person }) {
  const words = useWords("people");
  const { today, historyOf } = useStation();
  const carryOut = useCarryOut();
  const recorder = useRecorder();
  const doing = useDoing();
  const [from, setFrom] = useState<string>();
  const [to, setTo] = useState<string>();
  const save = () => doing.run(() => carryOut((at) => setAbsence(at, person.id, { from: from!, to: to! })));
  const takeBack = (id: string) =>
    doing.run(async () => {
      const line = historyOf(`person:${person.id}`).find(({ entry }) => entry.id === id);
      if (line) await recorder.strike(line.entry, "Not away on these days.");
    });
  const ahead = (person.away ?? []).filter((one) => one.to >= today);
  return (
    <>
      <DateField
        label={words.firstAway()}
        value={from}
        onChange={setFrom}
        mayBeMonth={false}
        hint={words.ofNamed({ name: person.name })}
      />
      <DateField
        label={words.lastAway()}
        value={to}
        onChange={setTo}
        mayBeMonth={false}
        hint={words.ofNamed({ name: person.name })}
      />
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <ButtonRow>
        <Button isDisabled={from === undefined || to === undefined} isBusy={doing.isBusy} onPress={() => void save()}>
          {words.saveAway()}
        </Button>
        {ahead.map(({ entry, from: first }) => (
          <Button key={entry} isBusy={doing.isBusy} onPress={() => void takeBack(entry)}>
            {words.notAway({ day: sayDate(first) })}
          </Button>
        ))}
      </ButtonRow>
    </>
  );
}
