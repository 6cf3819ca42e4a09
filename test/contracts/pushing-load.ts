import type { PullReply, PushReply, SetupRequest, SignedIn } from "#station";
import { setTimeout as sleep } from "node:timers/promises";
import { uuidv7 } from "uuidv7";
import { cookiesOf, type SpawnedServer } from "../../src/server/spawned-server.ts";

const DEVICE = "load-device";
/** Devices that push at the same time. */
const DEVICES = 4;
/** Pause after a refusal before the same line is sent again [ms]. */
const PAUSE = 50;

/** A signed-in device that pushes lines, and what it was told. */
export interface PushingLoad {
  /** Ids of the lines that some server acknowledged. */
  readonly acknowledged: ReadonlySet<string>;
  /** Answers that a device must never get: neither kept nor "not now". */
  readonly wrong: readonly string[];
  /** How many times it was told "not now". */
  readonly refusals: () => number;
  /** Pushes while this is done, and for as long afterwards as it takes until every device was acknowledged anew. */
  during(scene: () => Promise<void>): Promise<void>;
}

/** Sets the station up at the first server and pushes to all of them in turn. */
export async function createLoad(servers: readonly SpawnedServer[], padding = ""): Promise<PushingLoad> {
  const { cookie, person, place } = await setUp(servers[0]!);
  const acknowledged = new Set<string>();
  const wrong: string[] = [];
  let refusals = 0;
  let turn = 0;

  const send = async (entry: { readonly id: string }): Promise<boolean> => {
    const { address } = servers[(turn += 1) % servers.length]!;
    const headers = { "content-type": "application/json", cookie };
    try {
      const reply = await fetch(`${address}/api/log/push`, {
        method: "POST",
        headers,
        body: JSON.stringify({ entries: [entry] }),
      });
      return await judge(reply, entry.id);
    } catch (thrown) {
      wrong.push(String((thrown as Error).cause ?? thrown));
      return false;
    }
  };
  const judge = async (reply: Response, id: string): Promise<boolean> => {
    if (reply.status === 503) {
      refusals += 1;
      return false;
    }
    const text = await reply.text();
    const isKept = reply.ok && (JSON.parse(text) as PushReply).verdicts[0]?.verdict !== "refused";
    if (isKept) acknowledged.add(id);
    else wrong.push(`${reply.status} ${text.slice(0, 300)}`);
    return isKept;
  };
  const pushOne = async (giveUp: () => boolean): Promise<void> => {
    const entry = makeLine({ person, place, padding });
    while (!(await send(entry)) && !giveUp()) await sleep(PAUSE);
  };
  return {
    acknowledged,
    wrong,
    refusals: () => refusals,
    during: async (scene) => {
      const over = new AbortController();
      const hopeless = () => over.signal.aborted && wrong.length > 20;
      const devices = Array.from({ length: DEVICES }, async () => {
        while (!over.signal.aborted) await pushOne(hopeless);
        await pushOne(hopeless);
      });
      await scene().finally(() => over.abort());
      await Promise.all(devices);
    },
  };
}

interface Sender {
  readonly person: string;
  readonly place: string;
  readonly padding: string;
}

function makeLine({ person, place, padding }: Sender) {
  return {
    id: uuidv7(),
    place,
    subject: "kit:k1",
    kind: "mustered",
    at: new Date().toISOString(),
    by: person,
    device: DEVICE,
    body: { sealSeen: "00417", containerSound: true, ...(padding === "" ? {} : { note: padding }) },
  };
}

async function setUp({ address, code }: SpawnedServer) {
  const request: SetupRequest = {
    code,
    stationName: "Load",
    name: "Keeper",
    pin: "730284",
    place: { name: "Harbour", strength: 1, zone: "Europe/Oslo" },
    device: DEVICE,
    deviceName: "Load",
  };
  const headers = { "content-type": "application/json" };
  const reply = await fetch(`${address}/api/setup`, { method: "POST", headers, body: JSON.stringify(request) });
  if (!reply.ok) throw new Error(await reply.text());
  const { person } = (await reply.json()) as SignedIn;
  const cookie = cookiesOf(reply);
  const pulled = await fetch(`${address}/api/log/pull?limit=100`, { headers: { cookie } });
  const { entries } = (await pulled.json()) as PullReply;
  const set = entries.find(({ entry }) => entry.kind === "place-set");
  return { cookie, person: person.id, place: set!.entry.subject.replace("place:", "") };
}
