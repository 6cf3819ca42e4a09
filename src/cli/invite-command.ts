import { InputError } from "#base";
import type { Person } from "#readiness";
import { issueTicket, makeCode, readCode, type LogStore, type SecretStore } from "#station";
import { randomInt } from "node:crypto";
import type { Command } from "./command.ts";
import { requireDatabase, withSecrets } from "./open-data.ts";
import { readPeople } from "./whole-log.ts";
import { usageError } from "./usage-error.ts";

/** `drykeel invite`: a way back in for a person of the station, from the server's own terminal. */
export const inviteCommand: Command = {
  name: "invite",
  usage: "invite NAME",
  summary: "a code that lets a person of the station in again, with a new PIN",
  options: {},
  run: async ({ words, surroundings, terminal }) => {
    const name = words.join(" ").trim();
    if (name === "") throw usageError("NAME", "nothing", "the name of a person of the station", "Write: invite NAME");
    requireDatabase(surroundings);
    const { code, person, expires } = await withSecrets(surroundings, (store) => invite(store, name, surroundings.now));
    terminal.out(`${person.name}, ${person.role}: ${code}`);
    terminal.out(`Good once, until ${expires}. Open the station's address followed by /invite and enter it.`);
    terminal.out("It sets a new PIN, ends this person's other sessions and opens a name that was locked.");
    return 0;
  },
};

async function invite(store: LogStore & SecretStore, name: string, now: string) {
  const person = findPerson(await readPeople(store), name);
  const code = makeCode(randomInt);
  const ticket = { purpose: "invite", secret: readCode(code), person: person.id, by: "terminal" } as const;
  const { expires } = await issueTicket(store, ticket, now);
  return { code, person, expires };
}

function findPerson(people: readonly Person[], name: string): Person {
  const found = people.find((person) => plain(person.name) === plain(name));
  if (found !== undefined) return found;
  const allowed =
    people.length === 0 ? "nobody: the station has no people yet" : people.map((one) => one.name).join(", ");
  const remedy =
    people.length === 0
      ? "Start the station and enter the code it prints to set it up."
      : "Write the name as the station's list has it.";
  throw new InputError([{ code: "CL-115", field: "NAME", got: name, allowed, remedy }]);
}

function plain(name: string): string {
  return name.trim().replace(/\s+/g, " ").toLowerCase();
}
