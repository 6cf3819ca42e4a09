import "fake-indexeddb/auto";
import { extendChain, genesisHash, type Entry } from "#log";
import { openBrowserStore } from "#store/browser";
import { expect, test } from "vitest";
import { deviceAmbient } from "../clock.ts";
import { HeldLog } from "./held-log.ts";
import { WHOLE } from "../snapshot/first-sync.ts";

const NOW = "2027-03-14T11:00:00.000Z";

function lineOf(number: number, kind: string, subject: string, body: Entry["body"]): Entry {
  const id = `01920000-0000-7000-8000-${String(number).padStart(12, "0")}`;
  return { id, place: "north", subject, kind, at: "2027-03-10T10:00:00.000Z", by: "ann", device: "tablet", body };
}

test("a device says of a line received long after it was written when that was", async () => {
  const store = await openBrowserStore("held-late");
  await store.putNote(WHOLE, true);
  const lines = [
    lineOf(1, "place-set", "place:north", { name: "North", strength: 1, zone: "UTC" }),
    lineOf(2, "place-set", "place:north", { name: "North quay", strength: 1, zone: "UTC" }),
  ];
  const received = ["2027-03-10T10:00:02.000Z", "2027-03-13T10:00:00.000Z"];
  const first = extendChain({ seq: 0, hash: genesisHash("north") }, [lines[0]!], received[0]!);
  const kept = [...first, ...extendChain(first[0]!, [lines[1]!], received[1]!)];
  await store.takePulled(kept, { north: 2 });
  const log = new HeldLog(store, deviceAmbient);
  await log.load();
  const person = { id: "ann", name: "Ann", role: "keeper" } as never;
  const view = log.view({ person, device: "tablet", place: "north", now: NOW, units: "metric" });
  expect(view!.historyOf("place:north").map((line) => line.received)).toEqual([undefined, received[1]]);
  await store.close();
});

const joined = (person: string, name: unknown) => ({
  subject: `person:${person}`,
  kind: "person-joined" as const,
  place: "station",
  body: { name, role: "crew" } as { name: string; role: "crew" },
});

test("several lines are written at one stroke, each in sight of those before it", async () => {
  const store = await openBrowserStore("held-together");
  const log = new HeldLog(store, deviceAmbient);
  await log.load();
  const drafts = [joined("p1", "Rosa"), joined("p2", "Tom"), joined("p1", "Rosa V.")];
  const entries = await log.writeAll(drafts, { person: "ann", device: "tablet" });
  expect(entries.map(({ after }) => after)).toEqual([undefined, undefined, [entries[0]!.id]]);
  expect((await store.outbox()).map(({ entry }) => entry.id)).toEqual(entries.map(({ id }) => id));
  await store.close();
});

test("where one of several lines cannot be kept, none is, on the disk and in sight", async () => {
  const store = await openBrowserStore("held-none");
  const log = new HeldLog(store, deviceAmbient);
  await log.load();
  const drafts = [joined("p1", "Rosa"), joined("p2", () => "no disk keeps this")];
  await expect(log.writeAll(drafts, { person: "ann", device: "tablet" })).rejects.toThrow();
  expect(await store.outbox()).toEqual([]);
  expect(log.outbox).toEqual([]);
  await log.write(joined("p3", "Eve"), { person: "ann", device: "tablet" });
  expect(log.outbox).toHaveLength(1);
  await store.close();
});
