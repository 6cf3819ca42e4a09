// Are casualties that the soundings' model cannot describe noticed? A second hole, a blocked strainer and a wrong
// sounding must be flagged nine times in ten, steady casualties at most one time in twenty.
// An upset counts where it moves some level by 10 cm or more, well over six times a sounding's error of 15 mm: less
// is not an upset anybody could see. How often that is the case is printed.
// Where one is flagged a trend may be told in place of an estimate: its 90 % interval must hold the true level a
// quarter of an hour on at least seven times in eight.
import { checkFit, trendOf } from "#flooding";
import { makeUpset, type Upset } from "./casualties/synthetic.ts";

const CASES = 300;
const SEEN = 0.1;
const HALFWAY = 1350;
const TREND_HOLDS = 0.875;

interface Kind {
  readonly name: string;
  readonly upset: Upset;
  readonly misread?: number;
  readonly atLeast?: number;
  readonly atMost?: number;
}

const KINDS: readonly Kind[] = [
  { name: "steady", upset: {}, atMost: 0.05 },
  { name: "second hole, as large again", upset: { hole: { from: HALFWAY, factor: 2 } }, atLeast: 0.9 },
  { name: "second hole, twice as large", upset: { hole: { from: HALFWAY, factor: 3 } }, atLeast: 0.9 },
  { name: "strainer blocked to a tenth", upset: { pump: { from: HALFWAY, factor: 0.1 } }, atLeast: 0.9 },
  { name: "one sounding 15 cm wrong", upset: {}, misread: 0.15, atLeast: 0.9 },
  { name: "one sounding 30 cm wrong", upset: {}, misread: 0.3, atLeast: 0.9 },
];

interface Tally {
  counted: number;
  flagged: number;
  trends: number;
  held: number;
}

function tallyOf(kind: Kind): Tally {
  const tally: Tally = { counted: 0, flagged: 0, trends: 0, held: 0 };
  for (let n = 0; n < CASES; n += 1) {
    const { given, moved, ahead } = makeUpset(n, kind.upset, kind.misread);
    if (kind.atLeast !== undefined && moved < SEEN) continue;
    tally.counted += 1;
    const misfit = checkFit(given);
    if (!misfit.flagged) continue;
    tally.flagged += 1;
    const level = trendOf(given, misfit)?.level;
    if (level === undefined) continue;
    tally.trends += 1;
    if (ahead >= level.p05 && ahead <= level.p95) tally.held += 1;
  }
  return tally;
}

function passes(kind: Kind, { counted, flagged, trends, held }: Tally): boolean {
  const share = flagged / counted;
  const isFlaggedRight = share >= (kind.atLeast ?? 0) && share <= (kind.atMost ?? 1);
  return isFlaggedRight && (kind.atLeast === undefined || held >= TREND_HOLDS * trends);
}

let failed = false;
console.log(`\nupset${" ".repeat(29)}flagged   of so many (of ${CASES})   trend given   holds`);
for (const kind of KINDS) {
  const tally = tallyOf(kind);
  const isRight = passes(kind, tally);
  failed ||= !isRight;
  const cells = [
    kind.name.padEnd(34),
    (tally.flagged / tally.counted).toFixed(3).padEnd(10),
    `${tally.counted}`.padEnd(25),
    (tally.trends / tally.flagged).toFixed(3).padEnd(14),
    (tally.held / tally.trends).toFixed(3),
  ];
  console.log(`${cells.join("")}${isRight ? "" : "   out of bounds"}`);
}
process.exit(failed ? 1 : 0);
