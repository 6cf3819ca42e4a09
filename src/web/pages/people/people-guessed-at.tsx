import type { Person } from "#readiness";
import type { PeopleWrongPins } from "#station";
import { useEffect, useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import { Notice, Timestamp } from "#web/parts/index.ts";
import { useWords, withParts } from "#web/language/index.ts";

type Guessed = PeopleWrongPins["people"][number];

/** For administrators: for whom wrong PINs were tried on devices where they never signed in. */
export function PeopleGuessedAt({ people }: { readonly people: readonly Person[] }) {
  const words = useWords("people");
  const guessed = useGuessed();
  if (guessed.length === 0) return null;
  const nameOf = (id: string) => people.find((person) => person.id === id)?.name ?? id;
  return (
    <Notice tone="attention" title={words.wrongPins()} isNews>
      <ul>
        {guessed.map((one) => (
          <li key={one.person}>
            {withParts(({ last }) => words.wrongPinsOf({ ...triesOf(one), name: nameOf(one.person), last }), {
              last: one.last && <Timestamp at={one.last} />,
            })}
            {one.closed && ` ${words.needsInvite()}`}
          </li>
        ))}
      </ul>
      <p>{words.wrongPinsMore()}</p>
    </Notice>
  );
}

function triesOf({ elsewhere, last }: Guessed) {
  return { count: elsewhere, hasLast: last ? "yes" : "no" };
}

function useGuessed(): readonly Guessed[] {
  const { door } = useThisDevice();
  const [guessed, setGuessed] = useState<readonly Guessed[]>([]);
  useEffect(() => {
    let isGone = false;
    const read = async () => {
      const reply = await door.ask<PeopleWrongPins>({ method: "GET", path: "/api/people/wrong-pins" });
      if (!isGone && reply.kind === "answered") setGuessed(reply.value.people);
    };
    void read();
    return () => {
      isGone = true;
    };
  }, [door]);
  return guessed;
}
