import type { Drawing, Look, Shape } from "../card/drawing.ts";

/** How a shape stands out: not at all, as an outlined and hatched area, or as a line drawn heavier. */
export type LitAs = "plain" | "area" | "line";

/** A shape of a drawing, and how it stands out in it. */
export interface LitShape {
  readonly shape: Shape;
  readonly lit: LitAs;
}

/** Looks that cover what lies behind them. */
const AREAS: readonly Look[] = ["body", "tint", "dark", "live", "wet", "water"];
const BLOTS: readonly Look[] = ["solid", "act"];

/**
 * The shapes of a drawing from the back to the front, with what stands out where these parts are told of. A part is lit by
 * its areas; lines on them stay as they are. One that is only lines is lit by its lines.
 *
 * @example
 * const hose = { d: "M0 0L9 0L9 9Z", as: "body", part: "hose" } as const;
 * litShapes({ title: "A hose", shapes: [hose] }, ["hose"])[0].lit // "area"
 */
export function litShapes({ shapes }: Drawing, parts: readonly string[]): readonly LitShape[] {
  return shapes.map((shape) => ({ shape, lit: litAs(shape, shapes, parts) }));
}

function litAs({ part, as }: Shape, shapes: readonly Shape[], parts: readonly string[]): LitAs {
  if (part === undefined || !parts.includes(part)) return "plain";
  const looks = shapes.filter((one) => one.part === part).map((one) => one.as);
  const hasArea = looks.some((look) => AREAS.includes(look));
  if (AREAS.includes(as)) return "area";
  if (hasArea) return "plain";
  return BLOTS.includes(as) ? "area" : "line";
}
