// Calls to leave by figures that were false: what made each of them, by what came and what the answer said.
import { isFalseCall, isCall } from "./leaving.ts";
import type { Row } from "./rows.ts";
import type { Moment, Watched } from "./watching.ts";

/** Something untold is new for so many soundings. */
const NEW = 2;

const CAUSES: readonly (readonly [cause: string, is: (moment: Moment, watched: Watched) => boolean])[] = [
  ["something untold had just happened", ({ truth }) => truth.untold && truth.soundingsSince <= NEW],
  ["a rise faster than came", isRiseTooFast],
  ["a list told, the deck edge by geometry", (_, { family }) => family === "heel"],
  ["she comes to rest: the hull guessed is lost, she is not", ({ truth }) => truth.left === null],
  ["lost at a higher level than guessed", () => true],
];

/** How many false calls each cause has; the first that fits counts. */
export function falseLeaveRows(all: readonly Watched[]): readonly Row[] {
  const calls = all.flatMap((watched) => watched.moments.filter(isCall).map((moment) => ({ moment, watched })));
  const wrong = calls.filter(({ moment }) => isFalseCall(moment));
  const causes = wrong.map(({ moment, watched }) => CAUSES.find(([, is]) => is(moment, watched))![0]);
  return CAUSES.map(([cause]) => {
    const count = causes.filter((one) => one === cause).length;
    const counts = `${count} of ${wrong.length} false calls, ${calls.length} calls`;
    return { group: "false calls", name: `of false calls, ${cause}`, value: count / Math.max(1, wrong.length), counts };
  });
}

/** The level ten minutes on stayed below nineteen in twenty of what was told. */
function isRiseTooFast({ sheet, truth }: Moment): boolean {
  const [told, came] = [sheet.levels[0], truth.levels[0]];
  return told !== undefined && came !== undefined && came !== null && came < told[0];
}
