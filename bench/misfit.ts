// Are casualties that the soundings' model cannot describe noticed? A second hole, a blocked strainer and a wrong
// sounding must be flagged nine times in ten, steady casualties at most one time in twenty.
// An upset counts where it moves some level by 10 cm or more, well over six times a sounding's error of 15 mm: less
// is not an upset anybody could see. How often that is the case is printed.
import { checkFit } from "#flooding";
import { makeUpset, type Upset } from "./casualties/synthetic.ts";

const CASES = 300;
const SEEN = 0.1;
const HALFWAY = 1350;

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

function flaggedShare(kind: Kind): { readonly share: number; readonly counted: number } {
  let [flagged, counted] = [0, 0];
  for (let n = 0; n < CASES; n += 1) {
    const { given, moved } = makeUpset(n, kind.upset, kind.misread);
    if (kind.atLeast !== undefined && moved < SEEN) continue;
    counted += 1;
    if (checkFit(given).flagged) flagged += 1;
  }
  return { share: flagged / counted, counted };
}

let failed = false;
console.log(`\nupset${" ".repeat(29)}flagged   of so many (of ${CASES})`);
for (const kind of KINDS) {
  const { share, counted } = flaggedShare(kind);
  const passes = share >= (kind.atLeast ?? 0) && share <= (kind.atMost ?? 1);
  failed ||= !passes;
  console.log(`${kind.name.padEnd(34)}${share.toFixed(3).padEnd(10)}${counted}${passes ? "" : "   out of bounds"}`);
}
process.exit(failed ? 1 : 0);
