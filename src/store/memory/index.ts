import type { HeadShelf, LogStore, SecretStore } from "#station";
import { MemoryStore } from "./memory-store.ts";

/** An empty store that lives in memory only. */
export function openMemoryStore(): LogStore & SecretStore & HeadShelf {
  return new MemoryStore();
}
