import { parseSpan } from "#base";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { StationDraft } from "./station-draft.ts";

export const subject = "station";
export const writers = ADMINISTRATORS;

/** Shortens (never lengthens) what a pattern allows. */
export const schema = ({ z, span }: Shapes) =>
  z.strictObject({
    proofRun: span.exactOptional(),
    muster: span.exactOptional(),
    turnaround: span.exactOptional(),
    fuelAge: span.exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** Each policy named replaces the one before it. */
export function fold(station: StationDraft, body: Body): void {
  const policy = Object.fromEntries(Object.entries(body).map(([name, text]) => [name, parseSpan(text, name)]));
  station.setPolicy(policy);
}
