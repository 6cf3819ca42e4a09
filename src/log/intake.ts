import { InputError, printGiven } from "#base";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import { canonicalText } from "./canonical.ts";
import { chainText, emptyChain, hashText, type ChainHead } from "./chain.ts";
import type { Entry, KeptEntry } from "./entry.ts";

/** What a store holds already, as far as it bears on the entries offered to it. */
export interface Held {
  /** Last number and hash by place; absent for a place that has nothing yet. */
  readonly heads: ReadonlyMap<string, ChainHead>;
  /** `hashEntry` by id of those offered entries that are kept already. */
  readonly hashes: ReadonlyMap<string, string>;
}

/** The one text of an entry, and its hash. */
export interface EntryForm {
  readonly text: string;
  readonly hash: string;
}

/** What a store is to do with the entries offered to it. */
export interface Intake {
  /** To be kept, numbered and chained, in the order offered. */
  readonly accepted: readonly KeptEntry[];
  /** Canonical text and `hashEntry` of each accepted entry, in the same order. */
  readonly forms: readonly EntryForm[];
  /** Ids kept already, or offered twice, with the same content. */
  readonly repeated: readonly string[];
  /** Ids kept already, or offered before, with other content: what is kept stays. */
  readonly clashing: readonly string[];
  /** Where the chains of the places touched stand afterwards. */
  readonly heads: ReadonlyMap<string, ChainHead>;
}

/**
 * Decides what becomes of entries offered to a store: new, repeated or clashing. Every store asks this, so all number
 * and chain alike; the store only has to read what it holds and write what is accepted in one piece.
 *
 * @param entries - valid entries in the order offered
 * @param held - what the store holds, read under the lock under which it will write
 * @param received - RFC 3339 UTC instant at which the store takes them
 */
export function planIntake(entries: readonly Entry[], held: Held, received: string): Intake {
  const offered = sortOffered(entries, held.hashes);
  const heads = new Map<string, ChainHead>();
  const accepted = offered.fresh.map(({ entry, form }): KeptEntry => {
    const head = heads.get(entry.place) ?? held.heads.get(entry.place) ?? emptyChain(entry.place);
    const next = { seq: head.seq + 1, hash: chainText(head.hash, form.text) };
    heads.set(entry.place, next);
    return { entry, ...next, received };
  });
  const forms = offered.fresh.map((fresh) => fresh.form);
  return { accepted, forms, repeated: offered.repeated, clashing: offered.clashing, heads };
}

interface Offered {
  readonly fresh: { readonly entry: Entry; readonly form: EntryForm }[];
  readonly repeated: string[];
  readonly clashing: string[];
}

function sortOffered(entries: readonly Entry[], held: ReadonlyMap<string, string>): Offered {
  const offered: Offered = { fresh: [], repeated: [], clashing: [] };
  const fresh = new Map<string, string>();
  for (const entry of entries) {
    const text = canonicalText(entry);
    const form = { text, hash: hashText(text) };
    const before = held.get(entry.id) ?? fresh.get(entry.id);
    if (before !== undefined) (before === form.hash ? offered.repeated : offered.clashing).push(entry.id);
    else {
      fresh.set(entry.id, form.hash);
      offered.fresh.push({ entry, form });
    }
  }
  return offered;
}

/**
 * Lower-case hex SHA-256 of a photo's bytes: its name in the log and in every store.
 *
 * @example hashBytes(new Uint8Array()); // "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855"
 */
export function hashBytes(bytes: Uint8Array): string {
  return bytesToHex(sha256(bytes));
}

/**
 * Checks that bytes are those that were named: nothing lost or changed on the way.
 *
 * @throws InputError LG-150 when they are not
 */
export function checkBytes(hash: string, bytes: Uint8Array): void {
  const found = hashBytes(bytes);
  if (found === hash) return;
  const got = `${bytes.length} bytes with hash ${found}`;
  const remedy = "The photo was cut short or changed on its way; send it again.";
  throw new InputError([
    { code: "LG-150", field: "photo", got, allowed: `bytes with hash ${printGiven(hash)}`, remedy },
  ]);
}
