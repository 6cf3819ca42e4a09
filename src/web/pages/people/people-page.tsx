import { mayCall, mayWrite } from "#station";
import type { Person } from "#readiness";
import { useMemo, useState } from "react";
import { useStation } from "#web/device/index.ts";
import { Link } from "wouter";
import { Button, ButtonLink, ButtonRow, Page, Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { ChangePerson } from "./change-person.tsx";
import { InvitePerson } from "./invite-person.tsx";
import { PeopleGuessedAt } from "./people-guessed-at.tsx";
import { TimeSection } from "./time-section.tsx";
import { writersOf } from "./log-traces.ts";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

/** Who belongs to the station and what each may do. */
export default function PeoplePage() {
  const frame = useWords("frame");
  const words = useWords("people");
  const view = useStation();
  const { people, me } = view;
  // While the log is being fetched nobody is known not to have written.
  const silent = useMemo(() => {
    const writers = writersOf(view);
    return new Set(view.early ? [] : view.people.flatMap(({ id }) => (writers.has(id) ? [] : [id])));
  }, [view]);
  const [chosen, setChosen] = useState<string>();
  const here = people.filter(({ left }) => !left);
  const gone = people.filter(({ left }) => left);
  const person = people.find(({ id }) => id === chosen);
  const mayChange = mayWrite(me.role, "person-changed");
  return (
    <Page title={frame.people()}>
      <Table
        caption={words.listTitle()}
        isCaptionHidden
        columns={columns(silent, words, mayChange ? setChosen : undefined)}
        rows={here}
        rowKey={({ id }) => id}
      />
      <ButtonRow>
        <ButtonLink to="/qualifications">{words.qualifications()}</ButtonLink>
        <ButtonLink to="/drills">{words.drills()}</ButtonLink>
        <ButtonLink to="/visits">{words.visits()}</ButtonLink>
      </ButtonRow>
      {person && <ChangePerson key={person.id} person={person} onDone={() => setChosen(undefined)} />}
      <TimeSection />
      {mayCall(me.role, "see-wrong-pins") && <PeopleGuessedAt people={people} />}
      {mayCall(me.role, "invite") && <InvitePerson />}
      {gone.length > 0 && (
        <Section title={words.gone()}>
          <p>{gone.map(({ name }) => name).join(", ")}</p>
        </Section>
      )}
    </Page>
  );
}

function columns(
  silent: ReadonlySet<string>,
  words: Words["people"],
  choose: ((id: string) => void) | undefined,
): readonly Column<Person>[] {
  const always: readonly Column<Person>[] = [
    // Whoever signs in on a device that is known already leaves no line: nobody is said not to have come.
    {
      key: "name",
      head: words.name(),
      cell: ({ id, name }) => (
        <>
          <Link to={`/people/${id}`}>{name}</Link>
          {silent.has(id) && ` ${words.invitedOnly()}`}
        </>
      ),
    },
    { key: "role", head: words.role(), cell: ({ role }) => words[role]() },
  ];
  if (!choose) return always;
  const change: Column<Person> = {
    key: "change",
    isAct: true,
    head: words.change(),
    cell: ({ id, name }) => (
      <Button kind="quiet" label={words.changeNamed({ name })} onPress={() => choose(id)}>
        {words.change()}
      </Button>
    ),
  };
  return [...always, change];
}
