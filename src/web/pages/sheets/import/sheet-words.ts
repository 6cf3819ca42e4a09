import type { SheetOf } from "#store/sheets";
import type { EntryKind } from "#readiness";
import type { Words } from "#words";

/** What a sheet may hold, in words. */
export function sayOfSheet(of: SheetOf, words: Words["sheets"]): { readonly label: string; readonly note: string } {
  return { label: words[of](), note: words[`${of}More`]() };
}

/** Where to see what a sheet held. */
export const SHEET_PAGES: Readonly<Record<SheetOf, string>> = {
  people: "/people",
  kits: "/",
  parts: "/stock",
  turnarounds: "/",
};

/** The line that each needs its writer to be allowed. */
export const SHEET_KINDS: Readonly<Record<SheetOf, EntryKind>> = {
  people: "person-joined",
  kits: "kit-enrolled",
  parts: "part-set",
  turnarounds: "turnaround-told",
};
