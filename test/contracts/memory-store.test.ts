import { openMemoryStore } from "#store/memory";
import { describeLogStore } from "./log-store.ts";
import { describeMailShelf } from "./mail-shelf.ts";
import { describePatternShelf } from "./pattern-shelf.ts";
import { describeSecretStore } from "./secret-store.ts";
import { describeHeadShelf } from "./head-shelf.ts";
import { describeSnapshotShelf } from "./snapshot-shelf.ts";

async function newHouse() {
  const store = openMemoryStore();
  return { open: async () => store, clear: async () => {}, lasting: false, shared: false };
}

describeLogStore("memory", newHouse);
describeSecretStore("memory", newHouse);
describeSnapshotShelf("memory", newHouse);
describeHeadShelf("memory", newHouse);
describeMailShelf("memory", newHouse);
describePatternShelf("memory", newHouse);
