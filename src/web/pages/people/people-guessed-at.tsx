import type { Person } from "#readiness";
import type { PeopleWrongPins } from "#station";
import { useEffect, useState } from "react";
import { useThisDevice } from "#web/device/index.ts";
import { Notice, sayCount, Timestamp } from "#web/parts/index.ts";

type Guessed = PeopleWrongPins["people"][number];

/** For administrators: for whom wrong PINs were tried on devices where they never signed in. */
export function PeopleGuessedAt({ people }: { readonly people: readonly Person[] }) {
  const guessed = useGuessed();
  if (guessed.length === 0) return null;
  const nameOf = (id: string) => people.find((person) => person.id === id)?.name ?? id;
  return (
    <Notice tone="attention" title="Wrong PINs were tried" isNews>
      <ul>
        {guessed.map((one) => (
          <li key={one.person}>
            {nameOf(one.person)}: {sayCount(one.elsewhere, "wrong PIN")} on devices never used by them
            {one.last && (
              <>
                , the last <Timestamp at={one.last} />
              </>
            )}
            .{one.closed && " A new device of theirs needs an invite now."}
          </li>
        ))}
      </ul>
      <p>Ask them whether that was themselves. A new invite sets the count back.</p>
    </Notice>
  );
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
