import type { Person } from "#readiness";
import { changePerson, leavePerson } from "#station";
import { useState } from "react";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ButtonRow, ConfirmDialog, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { InviteAgain } from "./invite-person.tsx";
import { RoleChoice } from "./role-choice.tsx";
import { useWords } from "#web/language/index.ts";

interface ChangePersonProps {
  readonly person: Person;
  readonly onDone: () => void;
}

/** Changes a person's name or role, lets them in again, or notes that they left. */
export function ChangePerson({ person, onDone }: ChangePersonProps) {
  const words = useWords("people");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [name, setName] = useState(person.name);
  const [role, setRole] = useState(person.role);
  const changed = { ...(name.trim() !== person.name && { name: name.trim() }), ...(role !== person.role && { role }) };
  const save = async () => {
    if (await doing.run(() => carryOut((at) => changePerson(at, person.id, changed)))) onDone();
  };
  return (
    <Section title={words.changeNamed({ name: person.name })}>
      <TextField label={words.name()} value={name} onChange={setName} limit={80} />
      <RoleChoice value={role} onChange={setRole} />
      <ErrorBox error={doing.error} title={words.notChanged()} />
      <ButtonRow>
        <Button onPress={() => void save()} isBusy={doing.isBusy} isDisabled={Object.keys(changed).length === 0}>
          {words.saveChange()}
        </Button>
        <Button kind="quiet" onPress={onDone}>
          {words.leaveAsIs()}
        </Button>
      </ButtonRow>
      <InviteAgain person={person} />
      <Leave person={person} onDone={onDone} />
    </Section>
  );
}

function Leave({ person, onDone }: ChangePersonProps) {
  const words = useWords("people");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  const leave = async () => {
    setAsking(false);
    if (await doing.run(() => carryOut((at) => leavePerson(at, person.id)))) onDone();
  };
  return (
    <>
      <ErrorBox error={doing.error} title={words.notNoted()} />
      <div>
        <Button tone="grave" isBusy={doing.isBusy} onPress={() => setAsking(true)}>
          {words.hasLeft({ name: person.name })}
        </Button>
      </div>
      <ConfirmDialog
        title={words.hasLeftAsk({ name: person.name })}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void leave()}
        confirm={words.noteLeft()}
        tone="grave"
      >
        <p>{words.noteLeftMore()}</p>
      </ConfirmDialog>
    </>
  );
}
