import type { SheetOf } from "#store/sheets";
import type { EntryKind } from "#readiness";

/** What a sheet may hold, in words. */
export const SHEET_WORDS: Readonly<
  Record<SheetOf, { readonly many: string; readonly one: string; readonly note: string; readonly to: string }>
> = {
  people: {
    many: "People",
    one: "person",
    note: "Name and role. A way in is made for each afterwards, on the page of people.",
    to: "/people",
  },
  kits: {
    many: "Kits",
    one: "kit",
    note: "Name, serial, pattern, place, seal, and the dates of what is in them. Each stands as new until its first turnaround.",
    to: "/",
  },
  parts: {
    many: "Parts and what is on the shelves",
    one: "part",
    note: "Number and name, and by place how many there are, with lot and printed date.",
    to: "/stock",
  },
  turnarounds: {
    many: "Past turnarounds",
    one: "turnaround",
    note: "Kit and day, by whom, how it went. They stand in the history and make no kit ready. Take the kits in first.",
    to: "/",
  },
};

/** The line that each needs its writer to be allowed. */
export const SHEET_KINDS: Readonly<Record<SheetOf, EntryKind>> = {
  people: "person-joined",
  kits: "kit-enrolled",
  parts: "part-set",
  turnarounds: "turnaround-told",
};
