import type { StatedCosts } from "#station";

/** Hours of work: what a failure on the night weighs is judgement, so that none is taken before somebody says. */
export const WEIGHTS = [
  { id: "100", words: "100 hours" },
  { id: "1000", words: "1000 hours" },
  { id: "10000", words: "10 000 hours" },
  { id: "100000", words: "100 000 hours" },
] as const;

/** What an opening costs beside its hours of work, with the most that each may be stated at. */
export const COSTS: readonly { readonly key: keyof StatedCosts; readonly label: string; readonly most: number }[] = [
  { key: "parts", label: "Parts of one opening: worth how many hours of work?", most: 1000 },
  { key: "wearPerStart", label: "Wear of one start: worth how many hours?", most: 1000 },
  { key: "perDayNotReady", label: "One day without the kit: worth how many hours?", most: 1000 },
  { key: "harmed", label: "Of 1000 openings, how many leave a fault behind?", most: 500 },
];

/** What somebody at this device judged of one pattern; it stays on the device until it is changed. */
export interface Judged {
  readonly weight?: (typeof WEIGHTS)[number]["id"];
  readonly stated: StatedCosts;
}

/** What was judged, as kept; a figure that makes no sense was not stated. */
export function judgedIn(kept: { readonly weight?: unknown; readonly stated?: unknown }): Judged {
  const weight = WEIGHTS.find(({ id }) => id === kept.weight)?.id;
  const given = typeof kept.stated === "object" ? (kept.stated as Readonly<Record<string, unknown>> | null) : null;
  const figures = COSTS.flatMap(({ key, most }) => {
    const figure = given?.[key];
    return typeof figure === "number" && figure >= 0 && figure <= most ? [[key, figure] as const] : [];
  });
  return { ...(weight && { weight }), stated: Object.fromEntries(figures) };
}
