import { Worker } from "node:worker_threads";
import { uuidv7 } from "uuidv7";
import { cookiesOf, type SpawnedServer } from "../spawned-server.ts";

/** What one person may send at great cost to the server: for the test of whose turn it is, and for the bench. */

const LINES = 2000;
const DEVICE = "phone-1";

/** Who is signed in at a station that was just set up. */
export interface Keeper {
  readonly cookie: string;
  readonly person: string;
}

/** Sets an empty station up, and is then signed in there. */
export async function setUpStation({ address, code }: SpawnedServer): Promise<Keeper> {
  const place = { name: "North slip", strength: 2, zone: "Europe/London" };
  const names = { stationName: "Skerrow", name: "Ann Marr", pin: "482913", place };
  const body = JSON.stringify({ code, device: DEVICE, deviceName: "Office", ...names });
  const headers = { "content-type": "application/json" };
  const reply = await fetch(`${address}/api/setup`, { method: "POST", headers, body });
  const { person } = (await reply.json()) as { person: { id: string } };
  return { cookie: cookiesOf(reply), person: person.id };
}

/** A small question, as any phone asks it. @returns the status of the reply */
export async function askHeads({ address }: SpawnedServer, { cookie }: Keeper): Promise<number> {
  return (await fetch(`${address}/api/log/heads?seen=%7B%7D`, { headers: { cookie } })).status;
}

function line(person: string, number: number, more: object = {}): object {
  const at = new Date().toISOString();
  const body = { name: `Kit ${number}` };
  return {
    id: uuidv7(),
    place: "station",
    subject: `kit:k${number % 7}`,
    kind: "kit-renamed",
    at,
    by: person,
    device: DEVICE,
    body,
    ...more,
  };
}

const strangers = () => Array.from({ length: 16 }, () => uuidv7());

const DEEP = `${"[".repeat(20_000)}${"]".repeat(20_000)}`;

/** Entries as JSON: some are nested deeper than they could be written by the usual means. */
export const COSTLY: Readonly<Record<string, (person: string) => string>> = {
  "lines that name sixteen strangers each": (person) =>
    JSON.stringify(Array.from({ length: LINES }, (_, number) => line(person, number, { after: strangers() }))),
  "ten thousand lines at once": (person) =>
    JSON.stringify(Array.from({ length: 10_000 }, (_, number) => line(person, number))),
  "lines of lists within lists": (person) =>
    `[${Array.from({ length: 300 }, (_, number) => JSON.stringify(line(person, number, { body: "deep" })).replace('"deep"', DEEP)).join()}]`,
};

/** Runs in a thread of its own: whoever waits is not held up by the work of sending. */
const PUSHING = `
  const { parentPort, workerData: { url, headers, bodies } } = require("node:worker_threads");
  for (const body of bodies)
    fetch(url, { method: "POST", headers, body }).then(({ status }) => parentPort.postMessage(status));
`;

/** Pushes under way. */
export interface Pushes {
  /** Status of each that was answered, in the order in which they were. */
  readonly answered: number[];
}

/** Sends bodies as lines to be kept, all at once. */
export function pushFromBeside({ address }: SpawnedServer, { cookie }: Keeper, bodies: readonly string[]): Pushes {
  const headers = { cookie, "content-type": "application/json" };
  const workerData = { url: `${address}/api/log/push`, headers, bodies };
  const answered: number[] = [];
  new Worker(PUSHING, { eval: true, workerData }).on("message", (status: number) => answered.push(status));
  return { answered };
}
