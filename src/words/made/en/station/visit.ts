/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { VisitWords } from "#src/words/made/station/visit.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: VisitWords = {
  title: () => "Visit",
  titleTo: (d) => "Visit to " + d.places,
  unknown: () => "This device knows no such visit",
  unknownMore: () => "It may be on its way from another device.",
  isOn: () => "A visit is on: what was seen and what was written is compared here once it has ended",
  progress: (d) => d.at + " of " + d.all,
  allLooked: () => "Every line has been looked at",
  allLines: () => "All lines, kit by kit",
  notShown: () =>
    "Which lines were drawn is shown to who looks at them, and to everybody once the visit has ended. Left to look at:",
  leftOfKit: (d) =>
    d.kit +
    ": " +
    plural(d.left, 0, en, {
      one: strictNumber("en", d.left, 0, "left") + " line",
      other: strictNumber("en", d.left, 0, "left") + " lines",
    }),
  lineAsk: (d) => "Line " + d.line + ": " + d.ask,
  sawRight: () => "You saw: right.",
  sawWrong: () => "You saw: wrong.",
  notPossible: () => "Not possible.",
  notYet: () => "Not yet.",
  line: () => "Line",
  seenBefore: () => "You have looked at this line: an answer now takes the place of the one before",
  notSaved: () => "Not saved",
  later: () => "Leave it for later",
  noteWith: () => "Note with this answer",
  note: () => "Note",
  where: (d) => d.stage + ", line " + d.line + ". " + d.progress,
  isShut: (d) => "By the log " + d.kit + " is shut",
  isShutMore: (d) => "Look inside once its keeper has " + d.opened + ", and before they answer.",
  opened: () => "opened it",
  lineReads: (d) => "The line reads: " + d.text,
  rightIs: (d) => "Right is: " + d.expect,
  limit: (d) => "Limit: " + d.limits,
  foundAt: (d) => "Found wrong at line " + d.line,
  whatWrong: () => "What is wrong?",
  whatWrongWords: () => "What is wrong, in your words",
  writeWrong: () => "Write it down as wrong, and raise the finding",
  goBack: () => "Go back",
  end: () => "End the visit",
  allDone: () => "Every line has been looked at.",
  leftLines: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line",
      other: strictNumber("en", d.count, 0, "count") + " lines",
    }) + " of this visit not looked at yet: say why they are left out, or go on.",
  endMore: () => "Once it has ended what the keeper wrote is shown, and no line is looked at again.",
  whyLeft: () => "Why lines are left out",
  notEnded: () => "Not ended",
  endAndCompare: () => "End the visit and compare",
  missedByKeeper: () => "Missed by the keeper",
  missedMore: () => "Written as right, and found wrong in the visit. Something may have changed since it was written.",
  falseAlarms: () => "False alarms",
  falseMore: () => "Stood as wrong in the log, and found right in the visit: prove the finding, then it closes.",
  readOtherwise: () => "Right by both, and read otherwise",
  notCompared: () => "Not compared",
  titleCount: (d) => d.title + ": " + d.count,
  kitByKit: () => "Kit by kit",
  report: () => "Report of this visit as PDF",
  nothingCompared: () => "Nothing could be compared",
  agreement: () => "Agreement",
  bothSay: (d) => "Both say the same on " + d.agreed,
  foundWrong: (d) => "Found wrong in the visit: " + d.wrong + " of the lines looked at.",
  called: () => "Lines compared, by what each called them",
  calledMore: () =>
    "In brackets from where to where it may lie, nineteen times in twenty, if lines were independent. Lines of one kit hang together, so it is a little wider.",
  keeper: () => "Keeper",
  keeperRight: () => "Keeper wrote right",
  keeperWrong: () => "Keeper wrote wrong",
  assessorRight: () => "Assessor saw right",
  assessorWrong: () => "Assessor saw wrong",
  notTurned: () => "Looked into, and by the log never opened",
  notTurnedMore: (d) =>
    d.kits +
    ": a pump that was looked into and not turned round may fail on the boat that needs it. Where a seal was broken, open the kit in the log, turn it round and seal it.",
  kit: () => "Kit",
  comparedWith: () => "Compared with",
  turnaroundOf: (d) => "Turnaround of " + d.day,
  turnaroundBefore: () => "Turnaround of before",
  linesCompared: () => "Lines compared",
  missed: () => "Missed",
  keeperWrote: () => "Keeper wrote",
  assessorSaw: () => "Assessor saw",
  howDrawn: () => "How it was drawn",
  begunBy: (d) => "Begun by " + d.who + ", " + d.at + ".",
  begunEndedBy: (d) => "Begun by " + d.who + ", " + d.at + "; ended by " + d.ender + ", " + d.ended + ".",
  linesLeftOut: (d) => "Lines were left out: " + d.reason,
  drawn: (d) =>
    plural(d.kits, 0, en, {
      one: strictNumber("en", d.kits, 0, "kits") + " kit",
      other: strictNumber("en", d.kits, 0, "kits") + " kits",
    }) +
    " of " +
    d.all +
    " and " +
    plural(d.lines, 0, en, {
      one: strictNumber("en", d.lines, 0, "lines") + " line",
      other: strictNumber("en", d.lines, 0, "lines") + " lines",
    }) +
    " in them were drawn. Asked for was to see at least one wrong with a chance of " +
    d.chance +
    " where " +
    d.share +
    " are.",
  seed: (d) => "Seed " + d.seed + ".",
  drawnSame: () => "Drawn again from the seed, it is the same sample.",
  drawnOther: () =>
    "Drawn again from the seed, it is another sample: lines were struck since, or it was not drawn by this rule.",
  drawnNotKnown: () => "This device does not have all lines to draw it again.",
};
export default words;
