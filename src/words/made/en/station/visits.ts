/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { VisitsWords } from "#src/words/made/station/visits.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural, strictNumber } from "#src/words/cases.ts";
const words: VisitsWords = {
  title: () => "Visits",
  what: () =>
    "An assessor looks again at lines drawn by chance, without sight of what the keeper wrote. Then both are compared.",
  begin: () => "Begin a visit",
  whereFall: () => "Where findings fall",
  now: () => "Now",
  noneOn: () => "No visit is on",
  past: () => "Past visits",
  noneYet: () => "None yet",
  nowLine: (d) =>
    d.places +
    ", begun " +
    d.at +
    " by " +
    d.who +
    ": " +
    plural(d.left, 0, en, { other: d.left + " of" }) +
    " " +
    d.lines +
    " lines left",
  goOn: () => "Go on with this visit",
  dayPlaces: (d) => d.day + ", " + d.places,
  overLine: (d) =>
    d.visit +
    ", " +
    d.who +
    ": both say the same on " +
    d.agreed +
    "; " +
    plural(d.missed, 0, en, { other: d.missed + " missed" }),
  overNothing: (d) => d.visit + ", " + d.who + ": nothing to compare",
  whoBegins: () => "A visit is begun by an assessor or a keeper",
  early: () => "The log is still on its way: a sample is drawn once it is here",
  notBegun: () => "Not begun",
  beginAndDraw: () => "Begin the visit and draw",
  choosePlaces: () => "Choose the places first.",
  writeRule: () => "Write chance and share as more than 0 and less than 100.",
  writeKits: () => "Write the number of kits as its field allows, or leave it empty.",
  whichPlaces: () => "Which places are visited?",
  placeKits: (d) =>
    d.place +
    ", " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " kit",
      other: strictNumber("en", d.count, 0, "count") + " kits",
    }),
  rule: () => "The rule",
  chance: () => "Chance of seeing at least one wrong, in per cent",
  chanceHint: () => "90 is usual. 100 would mean looking at nearly every line.",
  share: () => "If so many were wrong, in per cent of all",
  shareHint: () => "10 is usual: a tenth, rounded up. Fewer means a larger sample.",
  kits: () => "Kits to be opened, where the rule's number is not wanted",
  kitsHint: () => "Empty: the same rule is used for kits.",
  sample: () => "The sample",
  nothingToCompare: () => "Nothing to compare",
  noneClosed: () => "No kit here is closed and has answers of its keeper.",
  size: (d) =>
    plural(d.kits, 0, en, {
      one: strictNumber("en", d.kits, 0, "kits") + " kit",
      other: strictNumber("en", d.kits, 0, "kits") + " kits",
    }) +
    " of " +
    d.all +
    ", and " +
    d.lines +
    " in " +
    plural(d.kits, 0, en, { one: "it", other: "them" }),
  linesExact: (d) =>
    plural(d.lines, 0, en, {
      one: strictNumber("en", d.lines, 0, "lines") + " line",
      other: strictNumber("en", d.lines, 0, "lines") + " lines",
    }),
  linesBetween: (d) =>
    d.least +
    " to " +
    plural(d.most, 0, en, {
      one: strictNumber("en", d.most, 0, "most") + " line",
      other: strictNumber("en", d.most, 0, "most") + " lines",
    }),
  whyKits: (d) =>
    "Kits: if " +
    d.wrong +
    " of the " +
    d.all +
    " (" +
    d.share +
    ", rounded up) had something wrong, at least one of those is drawn with a chance of " +
    d.chance +
    ".",
  wouldTake: (d) => "For " + d.chance + " it would take " + d.kits + ": what the visit shows is of the kits drawn.",
  whyLines: (d) =>
    "Lines: if " +
    d.share +
    " of those in the kits drawn (rounded up) were wrong, at least one of those is drawn with a chance of " +
    d.chance +
    " or more. How many that takes depends on the kits.",
  areOpened: () => "Kits drawn are opened",
  areOpenedMore: (d) =>
    plural(d.ready, 0, en, { other: d.ready + " of" }) +
    " the " +
    plural(d.all, 0, en, {
      one: strictNumber("en", d.all, 0, "all") + " kit",
      other: strictNumber("en", d.all, 0, "all") + " kits",
    }) +
    " drawn from can go now, and " +
    plural(d.kits, 0, en, { "1": "one will be drawn", other: d.kits + " will be drawn" }) +
    ". Each that is opened cannot go, until it has been turned round and sealed. Open one after another, and keep enough that can go.",
  drawnFrom: () =>
    "Drawn are looks and readings of the stages before rigging. Runs, primes, waits, the seal on record and what was not possible to the keeper are left out.",
  seedMore: () =>
    "The seed is written in the log before anybody sees what it draws, so nobody can draw until a sample suits. Anybody can draw the same from it. A visit that is begun and left stays in the log.",
  notDrawnFrom: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " kit",
      other: strictNumber("en", d.count, 0, "count") + " kits",
    }) + " not drawn from",
  notDrawn: (d) => d.kit + ": " + d.because,
  countedBy: () => "Counted by",
  byItem: () => "Item",
  byMode: () => "What was wrong",
  byPlace: () => "Place",
  byPattern: () => "Pattern",
  from: () => "From",
  fromHint: () => "The first day that counts.",
  to: () => "To",
  toHint: () => "The last day that counts.",
  writeDays: () => "Write a first day and a last day that is not before it.",
  nothingFound: () => "Nothing was found on these days",
  chart: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " finding",
      other: strictNumber("en", d.count, 0, "count") + " findings",
    }) +
    "; most often " +
    d.label +
    ", " +
    d.most +
    " of them.",
  findings: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " finding",
      other: strictNumber("en", d.count, 0, "count") + " findings",
    }),
  findingsUnit: () => "findings",
  mostDrawn: (d) => "Drawn are the " + d.count + " most often found; the table has all.",
  table: () => "Findings, most often first",
  leftOut: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " finding is left out",
      other: strictNumber("en", d.count, 0, "count") + " findings are left out",
    }) + ", for nobody found something wrong:",
  outRobbed: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " was",
      other: strictNumber("en", d.count, 0, "count") + " were",
    }) + " raised where a part was taken out for another kit.",
  outRecalled: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " was",
      other: strictNumber("en", d.count, 0, "count") + " were",
    }) + " raised by the recall of a lot.",
  outDrill: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " was",
      other: strictNumber("en", d.count, 0, "count") + " were",
    }) + " planted in a drill.",
  tableMore: () =>
    "Findings of a drill are left out unless they were real. A place is where the kit is now. Few findings say little: the order may be chance.",
  whatHead: () => "What",
  findingsHead: () => "Findings",
  shareHead: () => "Share",
  upToHead: () => "Up to here",
  never: () => "Lines that never found anything",
  neverLeast: () => "Looked at so many times or more",
  neverMore: () =>
    "Never so far does not mean never: nineteen times in twenty such a line finds something in fewer looks than the last column says. Where nothing else finds what grounds a kit, it stays.",
  noSuchLine: () => "No such line",
  neverLines: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line",
      other: strictNumber("en", d.count, 0, "count") + " lines",
    }),
  line: () => "Line",
  lineAsk: (d) => "Line " + d.line + ": " + d.ask,
  looks: () => "Looks",
  below: () => "Finds something in fewer than",
  belowShare: (d) => d.share + " of looks",
  on: () => "A visit is on",
  onToOpen: (d) =>
    "To be opened for it, one after another: " + d.kits + ". The assessor looks first at the lines drawn.",
  onAllSeen: () => "Every line drawn was looked at. The visit can be ended.",
  drawn: () => "This kit was drawn for a visit",
  drawnMore: (d) =>
    "Open it with the assessor beside you. At " +
    plural(d.lines, 0, en, {
      one: strictNumber("en", d.lines, 0, "lines") + " line",
      other: strictNumber("en", d.lines, 0, "lines") + " lines",
    }) +
    " they look before you answer; each of those says so.",
  looksFirst: () => "The assessor looks first",
  looksFirstMore: () =>
    "This line was drawn for a visit. Let them look and write it down before you answer. Once they have left, go on.",
};
export default words;
