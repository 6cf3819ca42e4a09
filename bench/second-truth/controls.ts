// Whoever answers in place of the sheet, so that the scorer itself is put to the test: one that always says GAINING must
// fail, one that knows the truth must pass.
import type { Casualty } from "./casualties.ts";
import { hourOf } from "./forecasts.ts";
import { AHEAD, type Chances, type Five } from "./sheet.ts";
import type { Asker, Truth } from "./watching.ts";

const CERTAIN: Chances = { gaining: 1, holding: 0, losing: 0 };
const MM_A_MINUTE = 1e-3 / 60;

/** Always GAINING, never any sign to leave; the level stays as read. */
export const alwaysGaining: Asker = (_casualty, written) => {
  const level = written.readings.at(-1)!.level;
  const told: Five = [level - 0.02, level - 0.01, level, level + 0.01, level + 0.02];
  return {
    word: "gaining",
    misfit: false,
    leave: "no-sign",
    leaveSeen: false,
    chances: CERTAIN,
    levels: AHEAD.map(() => told),
  };
};

/** Tells people to leave at every sounding, and says no word. */
export const alwaysLeave: Asker = (casualty, written, truth) => ({
  ...alwaysGaining(casualty, written, truth),
  word: "too-soon",
  leave: "now",
});

/** Knows the truth and says it, its levels with an honest doubt of 3 cm. */
export const oracle: Asker = (casualty, _written, truth) => ({
  word: wordOf(truth),
  misfit: false,
  leave: leaveOf(truth),
  leaveSeen: false,
  chances: chancesOf(truth),
  levels: truth.levels.map((level) => (level === null ? undefined : aboutLevel(casualty, level))),
});

function wordOf({ rise, swing }: Truth): string {
  if (Math.abs(rise) <= MM_A_MINUTE && swing <= 0.02) return "holding";
  return rise < 0 ? "gaining" : "losing";
}

function leaveOf({ left }: Truth): string {
  if (left === null || left > 3600) return "no-sign";
  return left <= 900 ? "now" : "be-ready";
}

function chancesOf(truth: Truth): Chances {
  const almost = { gaining: 0.01, holding: 0.01, losing: 0.01 };
  return { ...almost, [hourOf(truth)]: 0.98 };
}

/** The truth is at an even place of the spread told. */
function aboutLevel({ chance }: Casualty, level: number): Five {
  const middle = level + 0.03 * chance.normal();
  return [-1.645, -0.674, 0, 0.674, 1.645].map((z) => middle + 0.03 * z) as unknown as Five;
}

/** By name, for the command line. */
export const CONTROLS: Readonly<Record<string, Asker>> = {
  "always-gaining": alwaysGaining,
  "always-leave": alwaysLeave,
  oracle,
};
