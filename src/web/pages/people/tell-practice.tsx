import type { Person } from "#readiness";
import { tellPractice } from "#station";
import { useState } from "react";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { DateField } from "#web/parts/fields/date-field.tsx";
import { useWords } from "#web/language/index.ts";

/** What a person did away from turnarounds and casualties, told by a keeper: a course, a drill evening. */
export function TellPractice({ person }: { readonly person: Person }) {
  const words = useWords("people");
  const { qualifications, people } = useStation();
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [qualification, setQualification] = useState<string>();
  const [day, setDay] = useState<string>();
  const [how, setHow] = useState("");
  const [second, setSecond] = useState("");
  const options = qualifications.filter(({ retired }) => !retired).map(({ id, name }) => ({ value: id, label: name }));
  const save = async () => {
    const seen = second === "" ? {} : { second };
    const body = { qualification: qualification!, day: day!, how: how.trim(), ...seen };
    if (await doing.run(() => carryOut((at) => tellPractice(at, person.id, body)))) setHow("");
  };
  const others = people.filter(({ id, left }) => !left && id !== person.id);
  return (
    <Section title={words.elsewhere()}>
      <p className="quiet">{words.elsewhereMore()}</p>
      <Choice label={words.qualification()} options={options} value={qualification} onChange={setQualification} />
      <DateField label={words.dayDone()} value={day} onChange={setDay} mayBeMonth={false} />
      <TextField label={words.whatDone()} value={how} onChange={setHow} limit={1000} />
      <label className="field">
        <span className="field-label">{words.whoSaw()}</span>
        <select className="field-input" value={second} onChange={({ target }) => setSecond(target.value)}>
          <option value="">{words.nobodyHere()}</option>
          {others.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <ErrorBox error={doing.error} title={words.notWritten()} />
      <div>
        <Button
          isDisabled={qualification === undefined || day === undefined || how.trim() === ""}
          isBusy={doing.isBusy}
          onPress={() => void save()}
        >
          {words.write()}
        </Button>
      </div>
    </Section>
  );
}
