import { InputError, parsedJson, printGiven } from "#base";
import { z } from "zod";
import { canonicalText } from "../canonical.ts";
import { validateEntry } from "../validate.ts";
import { readHead, signedHeadShape } from "./head-text.ts";
import type { ProvedLine } from "./line-proof.ts";
import type { SignedHead } from "./signed-head.ts";

/** Lines of one place with the head that all of them are proved against. */
export interface LinesProof {
  readonly head: SignedHead;
  readonly lines: readonly ProvedLine[];
}

const text = z.string().max(200);
const lineShape = z.strictObject({
  entry: z.unknown(),
  seq: z.number().int().positive(),
  hash: text,
  received: text,
  previous: text,
  path: z.array(text).max(64),
});
const fileShape = z.strictObject({
  format: z.literal("drykeel-record"),
  version: z.literal(1),
  proofs: z.array(z.strictObject({ head: signedHeadShape, lines: z.array(lineShape).min(1) })).min(1),
});

/** What a record carries with it: its lines, and what shows that they are in the log. Canonical JSON. */
export function recordProofText(proofs: readonly LinesProof[]): string {
  return canonicalText({ format: "drykeel-record", version: 1, proofs });
}

/**
 * Reads what a record carries. What it says is not yet checked: see `doubtAbout`.
 *
 * @throws InputError LG-172 where it is none, is cut short or is of a newer version; LG-171 where a head is not signed by
 *   its key; or the faults of an entry
 */
export function readRecordProof(given: string): readonly LinesProof[] {
  const read = fileShape.safeParse(parsedJson(given));
  if (!read.success) throw unreadable(given);
  return read.data.proofs.map(({ head, lines }) => ({
    head: readHead(head),
    lines: lines.map(({ entry, ...rest }) => ({ ...rest, entry: validateEntry(entry, `line ${rest.seq}`) })),
  }));
}

function unreadable(given: string): InputError {
  const allowed = "a whole proof of a record, version 1";
  const remedy = "Take the record anew from where it was printed; one that was changed or cut short proves nothing.";
  return new InputError([{ code: "LG-172", field: "record", got: printGiven(given), allowed, remedy }]);
}
