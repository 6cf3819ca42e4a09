import type { KitState, Mark } from "#readiness";

const MINUTE = 60_000;

/**
 * From when on a kit that is away may have pumped last. A hand-over is often written down late, so not from its writing, but
 * from the minute of what stands before it: the last time that the kit was here, sealed, closed, mustered or taken back.
 * What it pumped before that is told by an earlier return, or by nobody.
 *
 * @returns [ms] since 1970-01-01 UTC
 */
export function pumpedFrom(kit: KitState): number {
  const { custody } = kit;
  if (custody.kind !== "away") return -Infinity;
  const handed = Date.parse(custody.at);
  const before = hereAt(kit)
    .filter(({ entry }) => entry !== custody.entry)
    .map(({ at }) => Date.parse(at))
    .filter((at) => at <= handed);
  return minuteOf(Math.max(...before));
}

/** From the writing of its hand-over on, where nobody says that it was written late [ms]. */
export function handedAt({ custody }: Pick<KitState, "custody">): number {
  return custody.kind === "away" ? minuteOf(Date.parse(custody.at)) : -Infinity;
}

function minuteOf(time: number): number {
  return Math.floor(time / MINUTE) * MINUTE;
}

/** Where the log knows the kit to have been here. */
function hereAt({ enrolled, seals, turnarounds, turnaround, met = [], lastMuster }: KitState): readonly Bare[] {
  const closings = turnarounds.flatMap(({ closed }) => closed ?? []);
  return [
    enrolled,
    ...seals,
    ...closings,
    ...met,
    ...[turnaround?.opened, lastMuster].filter((one) => one !== undefined),
  ];
}

type Bare = Pick<Mark, "at" | "entry">;
