import { parseSpan } from "#base";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { KEEPING_ROLES } from "../kinds/writers.ts";
import type { StationDraft } from "./station-draft.ts";

export const subject = "station";
export const writers = KEEPING_ROLES;

/**
 * How often the kits of a pattern are opened, as a keeper accepted it for the plan; back to the unit's manual where `every`
 * is absent. Never longer than the manual, and it grounds no kit.
 */
export const schema = (shapes: Shapes) =>
  shapes.z.strictObject({
    /** Id of the pattern, without version. */
    pattern: shapes.id,
    /** A span such as "9 months". */
    every: shapes.span.exactOptional(),
    /** What the proposal rested on when it was accepted; absent where somebody chose it. */
    rests: rests(shapes).exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** What is accepted last stands, by pattern. */
export function fold(station: StationDraft, { pattern, every }: Body): void {
  station.setOpening(pattern, every === undefined ? undefined : parseSpan(every, "every"));
}

type Counted = Pick<Shapes, "amountTo" | "countTo" | "z">;

const rests = ({ amountTo, countTo, z }: Counted) =>
  z.strictObject({
    /** Openings after lying closed. */
    looks: countTo(1_000_000),
    /** Faults found at them. */
    found: countTo(1_000_000),
    /** Time that kits lay closed before them [s]. */
    lay: amountTo(1e13),
    /** Best interval at the highest, the middle and the lowest rate believed [d]. */
    best: z.array(amountTo(40_000)).length(3),
    /** Hours of work that a failure on the night was said to weigh [h]. */
    nightHours: amountTo(1_000_000),
    costs: costs({ amountTo, countTo, z }).exactOptional(),
  });

/** What an opening was said to cost beside its hours, in hours of work [h]. */
const costs = ({ amountTo, countTo, z }: Counted) =>
  z.strictObject({
    parts: amountTo(10_000).exactOptional(),
    wearPerStart: amountTo(10_000).exactOptional(),
    perDayNotReady: amountTo(10_000).exactOptional(),
    /** Openings in 1000 that leave a fault. */
    harmed: amountTo(1000).exactOptional(),
    /** Starts of one opening. */
    starts: countTo(1000),
  });
