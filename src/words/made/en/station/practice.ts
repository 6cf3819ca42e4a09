/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PracticeWords } from "#src/words/made/station/practice.ts";

const words: PracticeWords = {
  sheet: () => "the sheet of a casualty",
  stageOfEvery: (d) => "stage " + d.stage + " of every pattern",
  stageOf: (d) => "stage " + d.stage + " of " + d.pattern,
  lineOf: (d) => "line " + d.line + " of " + d.pattern,
  stepOf: (d) => "step " + d.step + " of " + d.pattern,
  onSheet: (d) => "On the sheet of " + d.casualty,
  before: () => "before a second person was asked for",
  held: () => "held it",
  seenBy: (d) => "seen by " + d.name,
  toldBy: (d) => "told by " + d.name,
  toldAndSeen: (d) => d.told + ", " + d.seen,
  notCounted: (d) => "does not count: " + d.why,
  nobodyNamed: () => "nobody named who saw it",
  goneAlone: (d) => "gone on alone, " + d.note,
};
export default words;
