import type { SignedOut } from "#station";
import { useWords } from "#web/language/index.ts";
import { Button, Section } from "#web/parts/index.ts";

type DemoPerson = SignedOut["demo"][number];

interface DemoPeopleProps {
  readonly people: readonly DemoPerson[];
  readonly isBusy: boolean;
  readonly onChoose: (person: DemoPerson) => void;
}

/** The demo's people, to sign in as with one tap. There are none outside the demo. */
export function DemoPeople({ people, isBusy, onChoose }: DemoPeopleProps) {
  const words = useWords("signIn");
  if (people.length === 0) return null;
  return (
    <Section title={words.demo()}>
      <p>{words.demoMore()}</p>
      <ul className="sign-in-people">
        {people.map((person) => (
          <li key={person.name}>
            <Button isBusy={isBusy} onPress={() => onChoose(person)}>
              {person.name}, {words[person.role]().toLowerCase()}
            </Button>
          </li>
        ))}
      </ul>
    </Section>
  );
}
