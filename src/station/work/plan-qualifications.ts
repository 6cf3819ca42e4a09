import type { PlainDate } from "#base";
import { neededFor, practiceOf, type KitState, type Person, type Qualification } from "#readiness";
import { practisingOf } from "../people/need-second.ts";
import type { WorkStation } from "./able.ts";

/** What a plan knows of who may do what. */
export interface Held {
  needs(kit: KitState): { readonly needs?: readonly string[] };
  may(person: Person): { readonly may?: readonly string[] };
  /** One sentence each. */
  readonly assumed: readonly string[];
}

/**
 * Who may open which kit, for a plan: nobody is asked for what they may not do alone today. Doing it keeps it current, so
 * what is held today is taken as held the year through. What nobody holds is left out, and named: no plan would stand.
 */
export function heldOn(station: WorkStation, hands: readonly Person[], today: PlainDate): Held {
  const { qualifications = [] } = station;
  const book = practiceOf(practisingOf(station));
  const holds = (person: Person, { id }: Qualification) => book.holders(id, today).includes(person);
  const set = qualifications.filter((one) => isAskedFor(one, station));
  const held = set.filter((one) => hands.some((person) => holds(person, one)));
  const neededBy = (kit: KitState) => neededFor(held, station.patterns.get(kit.pattern)!);
  const isWhole = (needed: readonly Qualification[]) => hands.some((one) => needed.every((need) => holds(one, need)));
  const unheld = set.filter((one) => !held.includes(one));
  return {
    needs: (kit) => {
      const needed = neededBy(kit);
      return needed.length > 0 && isWhole(needed) ? { needs: needed.map(({ id }) => id) } : {};
    },
    may: (person) => (held.length === 0 ? {} : { may: held.filter((one) => holds(person, one)).map(({ id }) => id) }),
    assumed: sayHeld(hands, { held, unheld, holds }),
  };
}

/** True where some opening asks for it. */
function isAskedFor(one: Qualification, { patterns }: WorkStation): boolean {
  return [...patterns.values()].some((pattern) => neededFor([one], pattern).length > 0);
}

interface Said {
  readonly held: readonly Qualification[];
  readonly unheld: readonly Qualification[];
  readonly holds: (person: Person, one: Qualification) => boolean;
}

function sayHeld(hands: readonly Person[], { held, unheld, holds }: Said): readonly string[] {
  const short = hands.filter((person) => held.some((one) => !holds(person, one))).map(({ name }) => name);
  const names = unheld.map(({ name }) => name).join(", ");
  return [
    ...(short.length > 0 ? [`Not asked for what they may not do alone today: ${short.join(", ")}.`] : []),
    ...(names === "" ? [] : [`Nobody holds it today, so the plan asks nobody for it: ${names}.`]),
  ];
}
