import type { StatedCosts } from "#station";
import type { Words } from "#words";

/** Hours of work, to be picked: what a failure on the night weighs is judgement, so that none is taken before somebody says. */
export const WEIGHTS = [
  { id: "100", hours: "100" },
  { id: "1000", hours: "1000" },
  { id: "10000", hours: "10 000" },
  { id: "100000", hours: "100 000" },
] as const;

/** The most that one failure may be said to weigh [h], as its line takes it. */
export const MOST_WEIGHT = 1_000_000;

/** Which of those to be picked a weight is, if any. */
export function pickedIn(weight: number | undefined): (typeof WEIGHTS)[number]["id"] | undefined {
  return WEIGHTS.find(({ id }) => Number(id) === weight)?.id;
}

/** What an opening costs beside its hours of work, with the most that each may be stated at. */
export const COSTS = [
  { key: "parts", label: "costParts", most: 1000 },
  { key: "wearPerStart", label: "costWear", most: 1000 },
  { key: "perDayNotReady", label: "costDay", most: 1000 },
  { key: "harmed", label: "costHarmed", most: 500 },
] as const satisfies readonly {
  readonly key: keyof StatedCosts;
  readonly label: keyof Words["patternInterval"];
  readonly most: number;
}[];

/** What somebody at this device judged of one pattern; it stays on the device until it is changed. */
export interface Judged {
  /** Hours of work that one failure on the night weighs [h]. */
  readonly weight?: number;
  readonly stated: StatedCosts;
}

/** What was judged, as kept; a figure that makes no sense was not stated. */
export function judgedIn(kept: { readonly weight?: unknown; readonly stated?: unknown }): Judged {
  const weight = Number(kept.weight);
  const isWeight = weight > 0 && weight <= MOST_WEIGHT;
  const given = typeof kept.stated === "object" ? (kept.stated as Readonly<Record<string, unknown>> | null) : null;
  const figures = COSTS.flatMap(({ key, most }) => {
    const figure = given?.[key];
    return typeof figure === "number" && figure >= 0 && figure <= most ? [[key, figure] as const] : [];
  });
  return { ...(isWeight && { weight }), stated: Object.fromEntries(figures) };
}
