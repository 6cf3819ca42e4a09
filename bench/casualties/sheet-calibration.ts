// `npm run calibrate` for the sheet: watches drawn from the sheet's own first thoughts, sounded and inferred, one kind of
// told change at a time (Talts et al. 2018, arXiv 1804.06788). 90 % intervals must hold the truth about nine times in
// ten; with a stick six times as rough as any the sheet thinks of, they must not.
import { believeSheet } from "#flooding";
import { drawWatch, WATCHES, type Watch } from "./sheet-watches.ts";

const CASES = Number(process.argv[2] ?? 200);
const CONTROL_CASES = Math.ceil(CASES / 2);
const QUANTITIES = ["hole", "floodable area", "first pump", "level"] as const;
/** A particle filter over 8 soundings, and chance itself over so many cases, leave so much. */
const WITHIN = 0.06;
const ROUGH = 6;

function ranksOf(kind: Watch, n: number, readAs?: number): number[] {
  const { given, truth, draw } = drawWatch(kind, n, readAs);
  const { cloud } = believeSheet(given);
  const pairs = [
    [cloud.hole, truth.hole[0]!],
    [cloud.area, truth.area[0]!],
    [cloud.shares[0]!, truth.shares[0]![0]!],
    [cloud.level, truth.level[0]!],
  ] as const;
  return pairs.map(([values, truly]) => {
    const below = values.filter((value) => value < truly).length;
    return (below + draw()) / (values.length + 1);
  });
}

function coverages(kind: Watch, cases: number, readAs?: number): number[] {
  const ranks = Array.from({ length: cases }, (_, n) => ranksOf(kind, n, readAs));
  return QUANTITIES.map((_, q) => ranks.filter((row) => row[q]! >= 0.05 && row[q]! <= 0.95).length / cases);
}

function tell(title: string, held: readonly number[]): void {
  console.log(`${title.padEnd(34)}${held.map((share) => share.toFixed(3).padEnd(16)).join("")}`);
}

console.log(`${`${CASES} watches each`.padEnd(34)}${QUANTITIES.map((one) => one.padEnd(16)).join("")}`);
let passes = true;
for (const kind of WATCHES) {
  const held = coverages(kind, CASES);
  tell(kind, held);
  passes &&= held.every((share) => Math.abs(share - 0.9) <= WITHIN);
  const control = coverages(kind, CONTROL_CASES, ROUGH);
  tell(`control: ${kind}, rough stick`, control);
  passes &&= control.some((share) => Math.abs(share - 0.9) > WITHIN);
}
console.log(`\ncalibrated, and the control caught: ${passes ? "yes" : "NO"}`);
process.exit(passes ? 0 : 1);
