/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { TurnaroundRecordWords } from "#src/words/made/turnaround/turnaround-record.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: TurnaroundRecordWords = {
  title: (d) => "Turnaround of " + d.kit,
  renewed: () => "Renewed, and dates read",
  runs: () => "Clocks, pulls, primes and delivery",
  noTurnaround: () => "No such turnaround",
  noTurnaroundNews: () => "This device knows no such turnaround of this kit",
  pdf: () => "Record as PDF",
  exceptions: () => "Exceptions",
  findings: () => "Findings",
  finding: (d) => "Finding: " + d.finding,
  amiss: () => "Lines not found right at once",
  leftOut: () => "Left out, as it may be",
  partOf: (d) => d.title + ": " + d.count,
  allRight: (d) =>
    d.stage +
    ": " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line",
      other: strictNumber("en", d.count, 0, "count") + " lines",
    }) +
    ", all found right" +
    plural(d.left, 0, en, { "0": "", other: "; " + d.left + " left out" }),
  allDone: (d) =>
    d.stage +
    ": " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line",
      other: strictNumber("en", d.count, 0, "count") + " lines",
    }) +
    ", all done" +
    plural(d.left, 0, en, { "0": "", other: "; " + d.left + " left out" }),
  othersRight: (d) =>
    d.stage +
    ": the other " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line",
      other: strictNumber("en", d.count, 0, "count") + " lines",
    }) +
    ", found right" +
    plural(d.left, 0, en, { "0": "", other: "; " + d.left + " left out" }),
  stageLeftOut: (d) =>
    d.stage +
    ": " +
    plural(d.left, 0, en, {
      one: strictNumber("en", d.left, 0, "left") + " line",
      other: strictNumber("en", d.left, 0, "left") + " lines",
    }) +
    ", left out as they may be",
  line: (d) => "Line " + d.line,
  cardFor: (d) => "Enter a card for " + d.kit,
  topOfCard: () => "First, the top of the card",
  dayOnCard: () => "Day on the card",
  timeOnCard: () => "Time on the card",
  whenFilled: () => "Enter first when the card was filled in",
  howToType: (d) =>
    "In each box type what the card says: " +
    d.s +
    " seen, " +
    d.w +
    " found wrong, " +
    d.n +
    " and why not possible, or the reading. Enter saves the box and goes to the next.",
  boxesEntered: () => "Boxes entered",
  othersSeen: (d) => "The card shows the other " + d.count + " without a reading as seen",
  notAllEntered: () => "Not all entered",
  stoppedHere: (d) => "Stopped here: " + d.why,
  enterAgain: (d) => "Enter " + d.box + " again",
  again: () => "Again",
  newItem: (d) => "New " + d.item,
  boxPulls: (d) => "Pulls: " + d.text,
  boxTime: (d) => "Time: " + d.text,
  fittedNew: () => "Fitted new",
  entered: () => "Entered",
  hintNumber: () => "number",
  hintTime: () => "2 min 5 s",
  hintPrinted: () => "date printed",
  hintSeen: () => "s",
  hintLook: () => "s, w, n why",
  hintAsRead: () => "as read, w, n why",
  hintReading: () => "reading, w, n why",
  hintTimed: () => "time, w, n why",
  hintCount: () => "number, w, n why",
  hintMatch: () => "one / other, w, n why",
  hintDate: () => "date, w, n why",
  notSaved: () => "Not saved",
  typeLook: () => "Type s, w, or n and why.",
  typeWhy: () => "After n, type why it was not possible.",
  typeReading: (d) => "Type the reading in " + d.unit + ". Or w, or n and why.",
  typeTime: () => "Type the time, such as 45 s. Or w, or n and why.",
  typeCount: (d) => "Type how many " + d.things + ". Or w, or n and why.",
  typeAsRead: (d) => "Type what was read: " + d.what + ". Or w, or n and why.",
  typeDate: () => "Type the date, 2027-03-14 or 2027-03. Or w, or n and why.",
  typeBoth: () => "Type both, with / between. Or w, or n and why.",
  typeQuarters: () =>
    "Type both as 1/2 / 3/4, with blanks round the / between them: 0, 1/4, 1/2, 3/4, 4/4, empty, full or percent. Or w, or n and why.",
  typePulls: () => "Type how many pulls.",
  typeHowLong: () => "Type how long, such as 2 min 5 s.",
  atLeast: (d) => "At least " + d.time + " is asked there.",
  typePrinted: () => "Type the date printed on it, 2027-03-14 or 2027-03.",
  typeFitted: () => "Type s for fitted new.",
  clockFirst: () => "First type what the card says of the clock of this line. Or n and why.",
  findingRaised: () => "Finding raised.",
  noFindingYet: () => "No finding raised from this yet",
  raise: () => "Raise the finding",
  patterns: () => "Patterns",
  dryRun: () => "Dry run: nothing is written to the log.",
  dryRunMore: () => "Start no engine and open no fuel for it.",
  endIt: () => "End it",
  dryOver: () => "The dry run is over",
  dryOverNews: () => "Nothing of it was written",
  dryOverMore: () => "The draft is as it was. Go back to it, or walk it again.",
  backToDrafts: () => "Back to the drafts",
  dryOfDraft: () => "Dry run of a draft",
  dryOfDraftMore: () =>
    "Every line, clock and caution as in a turnaround, on a kit that is nowhere. Nothing is written to the log, nothing is sent, and it is gone when the page is left.",
  notWalked: () => "It cannot be walked yet",
  whichDraft: () => "Which draft?",
  onThisDevice: (d) => "On this device: " + d.draft,
  laidOutBy: (d) => "Laid out by " + d.person + ": " + d.draft,
  fromFile: () => "From a pattern file",
  draftVersion: (d) => d.pattern + ", version " + d.version,
  afterwards: (d) => "Then: " + d.words,
};
export default words;
