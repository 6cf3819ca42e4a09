import type { LineReexamined, VisitBegun, VisitEnded } from "../kinds/visit-parts.ts";
import type { Mark } from "../mark.ts";

/** An assessor's visit, as the log tells it. It bears on no standing. */
export interface Visit {
  readonly id: string;
  readonly begun: Mark & VisitBegun;
  /** By "kit/step/check": what was seen last of a line, by somebody who did not know that the visit was over. */
  readonly seen: Readonly<Record<string, Reexamined>>;
  readonly ended?: Mark & VisitEnded;
}

/** A visit while its lines are folded in: by a clock that was wrong, a line may stand before its beginning. */
export type VisitSoFar = Pick<Visit, "id" | "seen"> & Partial<Visit>;

/** A line looked at again. */
export type Reexamined = LineReexamined & { readonly mark: Mark };

/** One check of one kit. */
export interface DrawnLine {
  readonly kit: string;
  readonly step: string;
  readonly check: string;
}

/** Where what was seen of a line is kept. */
export function visitKey({ kit, step, check }: DrawnLine): string {
  return `${kit}/${step}/${check}`;
}

/** Only what was drawn is kept: a line of anything else says nothing, and there may be any number of such. */
export function isDrawn({ of }: Visit["begun"], { kit, step, check }: DrawnLine): boolean {
  return of.some((one) => one.kit === kit && one.lines?.some((line) => line.step === step && line.check === check));
}
