import { parseSpan } from "#base";
import type { BodyOf, Shapes } from "../kinds/shapes.ts";
import { ADMINISTRATORS } from "../kinds/writers.ts";
import type { StationDraft } from "./station-draft.ts";

export const subject = "station";
export const writers = ADMINISTRATORS;

/** Shortens (never lengthens) what a pattern allows, and names the currency of the station. */
export const schema = ({ z, span }: Shapes) =>
  z.strictObject({
    proofRun: span.exactOptional(),
    muster: span.exactOptional(),
    turnaround: span.exactOptional(),
    fuelAge: span.exactOptional(),
    /** In which all costs are told: three letters, as ISO 4217 has them. */
    currency: z
      .string()
      .regex(/^[A-Z]{3}$/, { error: "three capital letters, such as EUR" })
      .exactOptional(),
  });
export type Body = BodyOf<typeof schema>;

/** Each policy named replaces the one before it. */
export function fold(station: StationDraft, { currency, ...spans }: Body): void {
  const policy = Object.fromEntries(Object.entries(spans).map(([name, text]) => [name, parseSpan(text, name)]));
  station.setPolicy({ ...policy, ...(currency !== undefined && { currency }) });
}
