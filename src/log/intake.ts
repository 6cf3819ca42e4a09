import { InputError, printGiven } from "#base";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import { canonicalText } from "./canonical.ts";
import { chainText, emptyChain, followsOn, hashText, type ChainHead } from "./chain.ts";
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
  const offers = entries.map((entry) => ({ entry, received }));
  return planOffers(offers, held);
}

/**
 * The same for lines that a log kept before: from an export, from a device that pulled them. They keep their time of
 * receipt. One that follows on what is here keeps its number and hash too, so that a log put back whole has the heads
 * it had; any other is numbered and chained anew.
 *
 * @param kept - lines in the order offered; of one place in order of seq
 * @param held - what the store holds, read under the lock under which it will write
 */
export function planRetaking(kept: readonly KeptEntry[], held: Held): Intake {
  const offers = kept.map((one) => ({ entry: one.entry, received: one.received, before: one }));
  return planOffers(offers, held);
}

/**
 * A line that no log kept before, for taking it in one piece with some that one did: it is numbered and chained where it
 * comes to stand.
 *
 * @param received - RFC 3339 UTC instant at which the store takes it
 */
export function newAmongRetaken(entry: Entry, received: string): KeptEntry {
  return { entry, received, seq: 0, hash: "" };
}

interface Offer {
  readonly entry: Entry;
  readonly received: string;
  /** As a log kept it before. */
  readonly before?: KeptEntry;
}

function planOffers(offers: readonly Offer[], held: Held): Intake {
  const offered = sortOffered(offers, held.hashes);
  const heads = new Map<string, ChainHead>();
  const accepted = offered.fresh.map(({ offer, form }) => {
    const { place } = offer.entry;
    const head = heads.get(place) ?? held.heads.get(place) ?? emptyChain(place);
    const kept = keepAfter(head, offer, form.text);
    heads.set(place, { seq: kept.seq, hash: kept.hash });
    return kept;
  });
  const forms = offered.fresh.map((fresh) => fresh.form);
  return { accepted, forms, repeated: offered.repeated, clashing: offered.clashing, heads };
}

function keepAfter(head: ChainHead, { entry, received, before }: Offer, text: string): KeptEntry {
  const fits = before !== undefined && followsOn(head, before);
  return { entry, seq: head.seq + 1, hash: fits ? before.hash : chainText(head.hash, text, received), received };
}

interface Offered {
  readonly fresh: { readonly offer: Offer; readonly form: EntryForm }[];
  readonly repeated: string[];
  readonly clashing: string[];
}

function sortOffered(offers: readonly Offer[], held: ReadonlyMap<string, string>): Offered {
  const offered: Offered = { fresh: [], repeated: [], clashing: [] };
  const fresh = new Map<string, string>();
  for (const offer of offers) {
    const { id } = offer.entry;
    const text = canonicalText(offer.entry);
    const form = { text, hash: hashText(text) };
    const before = held.get(id) ?? fresh.get(id);
    if (before !== undefined) (before === form.hash ? offered.repeated : offered.clashing).push(id);
    else {
      fresh.set(id, form.hash);
      offered.fresh.push({ offer, form });
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
