import type { Pattern } from "#kit";
import type { Entry } from "#log";
import { bareMark, markOf, type KitDraft } from "../draft.ts";
import type { KitState } from "../state.ts";
import { isSameSeal } from "./seal-number.ts";

/** Records a new seal; what was said against the old one is past. */
export function putSeal(draft: KitDraft, number: string, entry: Entry): void {
  fitSeal(draft, number, entry);
  delete draft.kit.sealMismatch;
  delete draft.kit.unsound;
}

/** A seal was put on, of which nothing follows for what is in the kit. */
export function fitSeal(draft: KitDraft, number: string, entry: Entry): void {
  draft.kit.seal = { ...markOf(entry), number };
  addToSeals(draft, number, "fitted", entry);
}

/** Compares a seal that was read with the one on record. */
export function seeSeal(draft: KitDraft, seen: string, entry: Entry): void {
  const { kit } = draft;
  if (seen !== "") addToSeals(draft, seen, "seen", entry);
  if (!kit.seal || isSameSeal(kit.seal.number, seen)) return;
  kit.sealMismatch = { ...markOf(entry), expected: kit.seal.number, seen };
}

/** The seal is off: the kit has none on record until the next. */
export function breakSeal(draft: KitDraft, entry: Entry): void {
  const { seal } = draft.kit;
  if (!seal) return;
  addToSeals(draft, seal.number, "broken", entry);
  delete draft.kit.seal;
}

function addToSeals(draft: KitDraft, number: string, what: "fitted" | "seen" | "broken", entry: Entry): void {
  const seals = draft.list(draft.kit.seals);
  seals.push({ ...bareMark(markOf(entry)), number, what });
  draft.kit.seals = seals;
}

/** Every seal number that was ever on this kit. */
export function sealNumbersOf(kit: KitState): readonly string[] {
  return kit.seals.filter((seal) => seal.what === "fitted").map((seal) => seal.number);
}

/**
 * True where an item is reached only by breaking the seal that is on the kit now. An item of which the pattern does not say
 * that it is outside, or whose pattern is not to be had, is inside.
 */
export function isBehindSeal(
  { seal, turnaround }: Pick<KitState, "seal" | "turnaround">,
  pattern: Pattern | undefined,
  item: string,
): boolean {
  if (seal === undefined || turnaround !== undefined) return false;
  return pattern?.items.find(({ id }) => id === item)?.place !== "outside";
}
