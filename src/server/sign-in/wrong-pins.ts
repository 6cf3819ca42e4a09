import type { SecretStore, WrongPins } from "#station";
import type { Parts } from "../parts.ts";
import { elsewhereLane } from "../http/slowing.ts";

/** From so many on somebody should hear of it: a person who mistypes on a new phone makes a few. */
const WORTH_TELLING = 5;

/** Wrong PINs tried for a person on devices where they never signed in. */
export async function wrongPinsOf(secrets: SecretStore, person: string): Promise<WrongPins> {
  const lane = elsewhereLane(person);
  const { count, last } = await secrets.failures(lane.key);
  const closed = lane.waitAfter(count) === Number.POSITIVE_INFINITY;
  return { elsewhere: count, closed, ...(last === undefined ? {} : { last }) };
}

/** Everybody of the station for whom so many were tried that an administrator should know. */
export async function peopleGuessedAt({ secrets, roster }: Pick<Parts, "secrets" | "roster">) {
  const all = roster.people().map(async ({ id }) => ({ person: id, ...(await wrongPinsOf(secrets, id)) }));
  return (await Promise.all(all)).filter(({ elsewhere }) => elsewhere >= WORTH_TELLING);
}
