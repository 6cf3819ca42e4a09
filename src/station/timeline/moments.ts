import { createFold, type Entry } from "#log";
import { applyCasualtyEntry, type CasualtyState, type EntryKind } from "#readiness";

/** A line upon which the page said something anew, with the casualty as whoever wrote it then knew her. */
export interface SheetMoment {
  readonly entry: string;
  /** RFC 3339, when it was written. */
  readonly at: string;
  readonly casualty: CasualtyState;
}

/** Kinds upon which the page may say something else. */
const SAYING: ReadonlySet<string> = new Set<EntryKind>([
  "sounding-taken",
  "pump-set",
  "pump-seen",
  "hole-patched",
  "stability-seen",
  "tow-set",
  "fuel-smelt",
  "fuel-cleared",
]);

/**
 * Every moment at which the page said something anew, from the first sounding or sign seen to the closing: upon a line written, with
 * the lines its writer's device then had and no others. What came later from another device, was written late, or was
 * struck later changes nothing of what was said.
 *
 * @param lines - every line of the sheet, struck ones and strikes too, in any order
 * @returns in the order in which the lines were written
 */
export function sheetMoments(lines: readonly Entry[]): readonly SheetMoment[] {
  const all = foldOf(lines);
  const [subject] = all.subjects();
  const history = subject === undefined ? undefined : all.history(subject);
  if (subject === undefined || history === undefined) return [];
  const knew = (one: Entry, other: Entry) =>
    one.after === undefined ? Date.parse(other.at) <= Date.parse(one.at) : history.knew(one.id, other.id);
  return all
    .allEntries(subject)
    .filter(({ kind }) => SAYING.has(kind))
    .flatMap((one) => {
      const known = lines.filter((other) => other.id === one.id || knew(one, other));
      const casualty = foldOf(known).state(subject);
      return casualty !== undefined && isSaid(one, casualty) ? [{ entry: one.id, at: one.at, casualty }] : [];
    });
}

/** Before anything was sounded the page speaks of what people saw, and of nothing else. */
function isSaid({ kind }: Entry, { closed, soundings }: CasualtyState): boolean {
  return closed === undefined && (soundings.length > 0 || kind === "stability-seen");
}

function foldOf(entries: readonly Entry[]) {
  const fold = createFold<CasualtyState | undefined>({
    init: () => undefined,
    apply: (state, entry) => applyCasualtyEntry(state, entry),
  });
  fold.add(entries);
  return fold;
}
