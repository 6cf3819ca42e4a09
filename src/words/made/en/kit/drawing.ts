/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DrawingWords } from "#src/words/made/kit/drawing.ts";

const words: DrawingWords = {
  head: (d) => "Head, " + d.unit,
  flow: (d) => "Flow, " + d.unit,
  pumpGives: () => "What the pump gives",
  rigNeeds: () => "What height and hoses need",
  worksHere: () => "Where it works",
  likelyFlow: () => "Likely flow, 95 in 100",
  suctionEnds: () => "Right of this the suction feeds no more",
  curveAlone: () => "What the curve alone would give",
  notStable: () => "Second meeting, not stable",
  startTimes: () => "Times in 10 that it starts, primes and delivers",
  sinceProved: () => "Months since it was last proved",
  axisBegins: (d) => "The axis begins at " + d.at + ", not at 0.",
  shareOfAll: (d) => "Share of all " + d.all + " " + d.what + " (%), bar: its own",
  runningShare: () => "Line and points: its running share",
  yearsOf: (d) => "Years " + d.across,
  monthsOf: (d) => "Months " + d.across,
};
export default words;
