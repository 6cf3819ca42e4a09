import { mayCall, mayWrite } from "#station";
import type { Person } from "#readiness";
import { useState } from "react";
import { useStation } from "../../device/index.ts";
import { Button, Page, ROLE_WORDS, Section, Table, type Column } from "../../parts/index.ts";
import { ChangePerson } from "./change-person.tsx";
import { InvitePerson } from "./invite-person.tsx";

/** Who belongs to the station and what each may do. */
export default function PeoplePage() {
  const { people, me } = useStation();
  const [chosen, setChosen] = useState<string>();
  const here = people.filter(({ left }) => !left);
  const gone = people.filter(({ left }) => left);
  const person = people.find(({ id }) => id === chosen);
  const mayChange = mayWrite(me.role, "person-changed");
  return (
    <Page title="People">
      <Table
        caption="People of the station"
        isCaptionHidden
        columns={columns(mayChange ? setChosen : undefined)}
        rows={here}
        rowKey={({ id }) => id}
      />
      {person && <ChangePerson key={person.id} person={person} onDone={() => setChosen(undefined)} />}
      {mayCall(me.role, "invite") && <InvitePerson />}
      {gone.length > 0 && (
        <Section title="No longer here">
          <p>{gone.map(({ name }) => name).join(", ")}</p>
        </Section>
      )}
    </Page>
  );
}

function columns(choose: ((id: string) => void) | undefined): readonly Column<Person>[] {
  const always: readonly Column<Person>[] = [
    { key: "name", head: "Name", cell: ({ name }) => name },
    { key: "role", head: "Role", cell: ({ role }) => ROLE_WORDS[role] },
  ];
  if (!choose) return always;
  const change: Column<Person> = {
    key: "change",
    isAct: true,
    head: "Change",
    cell: ({ id, name }) => (
      <Button kind="quiet" label={`Change ${name}`} onPress={() => choose(id)}>
        Change
      </Button>
    ),
  };
  return [...always, change];
}
