import { expect } from "vitest";
import { uuidv7 } from "uuidv7";
import { hashEntry, verifyChain } from "#log";
import { chanceFrom } from "./chance.ts";
import { Phone, readingOf } from "./phone.ts";
import { patterns, PutBackStation, type Copies, type Member } from "./put-back-station.ts";

const built = `${patterns[0]!.id}@${patterns[0]!.version}`;
const STEPS = 30;

/** What a network does to one request of so many: swallows it before it arrives, or its answer on the way back. */
type Fault = "none" | "unasked" | "unanswered";

/**
 * Three devices write and talk, each when it likes and over a network that fails, while the station's database is copied
 * and put back to any earlier copy, also while devices talk. In the end the network holds. Nothing that the station ever
 * acknowledged is missing then, chains are sound, and all four tell the same.
 */
export async function liveThrough(seed: number, copies: Copies, startsAnew = true): Promise<void> {
  const chance = chanceFrom(seed);
  const station = await PutBackStation.open(copies, uuidv7, startsAnew);
  const network = { fault: (): Fault => "none" };
  const phones = await openPhones(station, network);
  const made = [await station.backup()];
  network.fault = () => (chance(12) > 0 ? "none" : chance(2) === 0 ? "unasked" : "unanswered");
  for (let step = 0; step < STEPS; step++) {
    const phone = phones[chance(3)]!;
    const act = chance(10);
    if (act < 4) await write(phone, chance, `${seed}-${step}`);
    else if (act < 7) await phone.sync();
    else if (act === 7)
      await Promise.all([...phones.map((one) => one.sync()), write(phone, chance, `${seed}-${step}`)]);
    else if (act === 8) made.push(await station.backup());
    else await Promise.all([station.putBack(made[chance(made.length)]!), phones[chance(3)]!.sync(), phone.sync()]);
  }
  network.fault = () => "none";
  for (let round = 0; round < 3; round++) for (const phone of phones) await phone.sync();
  await judge(station, phones);
  await Promise.all(phones.map((phone) => phone.close()));
  await station.close();
}

async function openPhones(station: PutBackStation, network: { fault: () => Fault }): Promise<readonly Phone[]> {
  const founder = await station.found("phone-1");
  const others = [
    await station.invite(founder, "Bo", "keeper", "phone-2"),
    await station.invite(founder, "Cy", "keeper", "phone-3"),
  ];
  const phones = await Promise.all(
    [founder, ...others].map((member) => Phone.open(station, member, over(member, network))),
  );
  await phones[0]!.sync();
  const enrolled = { name: "One", serial: "S-1", items: [] };
  const place = await station.place();
  await phones[0]!.write({ subject: "kit:k1", place, pattern: built, kind: "kit-enrolled", body: enrolled });
  for (const phone of phones) await phone.sync();
  return phones;
}

function over(member: Member, network: { fault: () => Fault }): typeof fetch {
  return async (address, init) => {
    const fault = network.fault();
    if (fault === "unasked") throw new TypeError("no network");
    const reply = await member.fetch(address, init);
    if (fault === "unanswered") throw new TypeError("the answer was lost");
    return reply;
  };
}

function write(phone: Phone, chance: (below: number) => number, name: string) {
  if (chance(3) > 0) return phone.write({ subject: "kit:k1", kind: "kit-renamed", body: { name } });
  return phone.write({ subject: "pattern:brinnet-450", kind: "step-reported", body: { step: name, what: "unclear" } });
}

async function judge(station: PutBackStation, phones: readonly Phone[]): Promise<void> {
  const kept = await station.kept();
  const hashes = new Map(kept.map(({ entry }) => [entry.id, hashEntry(entry)]));
  const missing = [...station.acknowledged].filter(([id, hash]) => hashes.get(id) !== hash);
  expect(missing, "acknowledged and missing").toEqual([]);
  for (const { place } of await station.store.heads()) {
    expect(verifyChain(kept.filter(({ entry }) => entry.place === place)).kind).toBe("sound");
  }
  const told = readingOf(kept.map(({ entry }) => entry));
  for (const phone of phones) {
    expect(phone.sendState).toEqual({ kind: "sent" });
    expect([await phone.store.outbox(), await phone.store.shelf.isOpen(), phone.flaw]).toEqual([[], false, undefined]);
    expect(await phone.store.kept({})).toEqual(kept);
    expect(readingOf(await phone.entries())).toEqual(told);
  }
}
