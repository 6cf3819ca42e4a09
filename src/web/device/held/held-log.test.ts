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
