import type { HasMail, HasPatterns, HeadShelf, LogStore, SecretStore, SnapshotShelf } from "#station";
import { MemoryStore } from "./memory-store.ts";

/** An empty store that lives in memory only. */
export function openMemoryStore(): LogStore & SecretStore & HeadShelf & SnapshotShelf & HasMail & HasPatterns {
  return new MemoryStore();
}
