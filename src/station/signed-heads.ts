import { isInputError, parsedJson } from "#base";
import { instantOf, readHead, readHeadList, type AuditFault, type KeptHead, type SignedHeadList } from "#log";
import type { SignedRows, StoredLog } from "./ports.ts";

/** A fault of a place; of the whole log where the place is "". */
export type SignedFault = AuditFault & { readonly place: string };

/** What the database keeps of what was signed. */
export interface SignedState {
  /** Heads that the log must begin with. */
  readonly kept: readonly KeptHead[];
  readonly faults: readonly SignedFault[];
  /** Whether the list says that nothing was signed yet. */
  readonly isUnsigned: boolean;
}

/**
 * Reads the signed heads and the signed list of them, and holds each against the other: what is missing in one stands in
 * the other, since both are kept together or not at all.
 */
export async function readSigned(store: StoredLog): Promise<SignedState> {
  const { heads: rows, lists } = await store.storedSigned();
  const { kept: heads, faults } = readHeads(rows);
  const [text] = lists;
  if (text === undefined) return { kept: heads, faults: [...faults, GONE], isUnsigned: false };
  if (text === null) return { kept: heads, faults, isUnsigned: true };
  const list = readHeadList(text);
  if (list === undefined) return { kept: heads, faults: [...faults, CHANGED], isUnsigned: false };
  const alone = list.heads.filter((head) => !heads.some((kept) => isSame(kept, head)));
  const named = alone.map((head) => ({ ...head, keeper: `the list signed ${list.at}` }));
  return { kept: [...heads, ...named], faults: [...faults, ...contradictions(heads, list)], isUnsigned: false };
}

/**
 * Whether everything signed was taken out of a database that says of nothing signed. A copy from before the first signing
 * has no line received after it.
 *
 * @param since - when this log was first signed, as it is kept outside the database
 * @param newest - when the newest line was received
 */
export function isTakenOut(since: string | undefined, newest: string | undefined): boolean {
  return since !== undefined && newest !== undefined && instantOf(newest) > instantOf(since);
}

/** That it was, as a fault; nothing where it was not. */
export function unsignedFault(since: string | undefined, newest: string | undefined): readonly SignedFault[] {
  if (!isTakenOut(since, newest)) return [];
  const because = `this log is signed since ${since}, and no list of signed heads is kept; lines came until ${newest}`;
  return [{ place: "", seq: 0, because }];
}

const GONE: SignedFault = {
  place: "",
  seq: 0,
  because: "the list of signed heads is gone, and the database began with one",
};
const CHANGED: SignedFault = { place: "", seq: 0, because: "the list of signed heads was changed" };

type Head = Pick<KeptHead, "place" | "number" | "hash" | "root">;

function isSame(one: Head, other: Head): boolean {
  return one.place === other.place && one.number === other.number && one.hash === other.hash && one.root === other.root;
}

function contradictions(heads: readonly Head[], list: SignedHeadList): SignedFault[] {
  const missing = list.heads.filter(({ place }) => !heads.some((head) => head.place === place));
  const unnamed = heads.filter((head) => !list.heads.some((named) => isSame(named, head)));
  return [
    ...missing.map(({ place, number }) => ({
      place,
      seq: number,
      because: `its signed head was removed: the list signed ${list.at} names it`,
    })),
    ...unnamed.map(({ place, number }) => ({
      place,
      seq: number,
      because: `its signed head is of line ${number}, which the list signed ${list.at} does not name`,
    })),
  ];
}

function readHeads(rows: SignedRows["heads"]): { kept: KeptHead[]; faults: SignedFault[] } {
  const kept: KeptHead[] = [];
  const faults: SignedFault[] = [];
  for (const { place, seq, head } of rows) {
    try {
      const signed = readHead(parsedJson(head));
      if (signed.number !== seq) faults.push({ place, seq, because: `its signed head is of line ${signed.number}` });
      if (signed.place === place) kept.push({ ...signed, keeper: `the head signed ${signed.at}` });
      else faults.push({ place, seq: 0, because: `the signed head kept of it is of ${signed.place}` });
    } catch (cause) {
      if (!isInputError(cause)) throw cause;
      faults.push({ place, seq: 0, because: "the signed head kept of it was changed" });
    }
  }
  return { kept, faults };
}
