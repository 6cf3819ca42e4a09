import type { SignedOut } from "#station";
import { Button, ROLE_WORDS, Section } from "../../parts/index.ts";

type DemoPerson = SignedOut["demo"][number];

interface DemoPeopleProps {
  readonly people: readonly DemoPerson[];
  readonly isBusy: boolean;
  readonly onChoose: (person: DemoPerson) => void;
}

/** The demo's people, to sign in as with one tap. There are none outside the demo. */
export function DemoPeople({ people, isBusy, onChoose }: DemoPeopleProps) {
  if (people.length === 0) return null;
  return (
    <Section title="This is a demo station">
      <p>Everything in it is invented. Choose who to be:</p>
      <ul className="sign-in-people">
        {people.map((person) => (
          <li key={person.name}>
            <Button isBusy={isBusy} onPress={() => onChoose(person)}>
              {person.name}, {ROLE_WORDS[person.role].toLowerCase()}
            </Button>
          </li>
        ))}
      </ul>
    </Section>
  );
}
