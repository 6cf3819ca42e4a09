import type { Person } from "#readiness";
import { changePerson, leavePerson } from "#station";
import { useState } from "react";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ButtonRow, ConfirmDialog, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { InviteAgain } from "./invite-person.tsx";
import { RoleChoice } from "./role-choice.tsx";

interface ChangePersonProps {
  readonly person: Person;
  readonly onDone: () => void;
}

/** Changes a person's name or role, lets them in again, or notes that they left. */
export function ChangePerson({ person, onDone }: ChangePersonProps) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [name, setName] = useState(person.name);
  const [role, setRole] = useState(person.role);
  const changed = { ...(name.trim() !== person.name && { name: name.trim() }), ...(role !== person.role && { role }) };
  const save = async () => {
    if (await doing.run(() => carryOut((at) => changePerson(at, person.id, changed)))) onDone();
  };
  return (
    <Section title={`Change ${person.name}`}>
      <TextField label="Name" value={name} onChange={setName} limit={80} />
      <RoleChoice value={role} onChange={setRole} />
      <ErrorBox error={doing.error} title="Not changed" />
      <ButtonRow>
        <Button onPress={() => void save()} isBusy={doing.isBusy} isDisabled={Object.keys(changed).length === 0}>
          Save the change
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it is
        </Button>
      </ButtonRow>
      <InviteAgain person={person} />
      <Leave person={person} onDone={onDone} />
    </Section>
  );
}

function Leave({ person, onDone }: ChangePersonProps) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [isAsking, setAsking] = useState(false);
  const leave = async () => {
    setAsking(false);
    if (await doing.run(() => carryOut((at) => leavePerson(at, person.id)))) onDone();
  };
  return (
    <>
      <ErrorBox error={doing.error} title="Not noted" />
      <div>
        <Button tone="grave" isBusy={doing.isBusy} onPress={() => setAsking(true)}>
          {person.name} has left the station
        </Button>
      </div>
      <ConfirmDialog
        title={`${person.name} has left?`}
        isOpen={isAsking}
        onClose={() => setAsking(false)}
        onConfirm={() => void leave()}
        confirm="Note that they left"
        tone="grave"
      >
        <p>They are signed out everywhere and cannot sign in. What they wrote stays, under their name.</p>
      </ConfirmDialog>
    </>
  );
}
