/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetJoinWords } from "#src/words/made/casualty/sheet-join.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: SheetJoinWords = {
  noCamera: () => "No camera to read with",
  noCameraMore: (d) => d.because + " Take photos of the codes, or use a file, below.",
  cameraSees: () => "What the camera sees",
  holdCamera: () => "On the other device: the sheet, Hand over by code. Hold this camera over its code.",
  readOf: (d) => d.count + " of " + d.of + " read.",
  missing: (d) => "Missing: " + d.pieces + ".",
  missingMore: (d) => "Missing: " + d.pieces + " and more.",
  noCode: () => "No code can be drawn",
  codeLabel: (d) => "Code " + d.at + " of " + d.count,
  codeOf: (d) => d.at + " of " + d.count,
  codeMore: () => "Hold the other device's camera a hand's breadth away. In any order; it says which are missing.",
  codeBefore: () => "The code before",
  before: () => "Before",
  goOn: () => "Go on",
  hold: () => "Hold",
  codeNext: () => "The next code",
  next: () => "Next",
  showOurs: () => "Show ours",
  readTheirs: () => "Read theirs",
  handOver: () => "Hand over",
  readSheet: () => "Read a sheet",
  between: () => "Between two devices",
  fromOther: () => "(from another device, not proved)",
  joinAsk: (d) => d.other + " and " + d.casualty + " are one casualty?",
  joinMore: () =>
    "Both histories stand in one order from then on, and soundings and pumps of both are computed together. A kit on both counts once. Nothing is lost, and striking the line parts them again.",
  goBack: () => "Go back",
  joinDo: () => "One casualty: join the sheets",
  wroteJoined: () => "joined with another sheet",
  sameIs: (d) => d.name + ", of the other sheet, is",
  our: (d) => "our " + d.name,
  another: () => "another one",
  two: () => "Two devices, two sheets",
  byCode: () => "Hand over by code",
  handedLines: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line from another device, not proved",
      other: strictNumber("en", d.count, 0, "count") + " lines from another device, not proved",
    }),
  lastTaken: (d) => "Last taken " + d.at + ", from " + d.person + ".",
  oneCasualty: (d) =>
    plural(d.count, 0, en, {
      one: "One casualty, " + strictNumber("en", d.count, 0, "count") + " sheet:",
      other: "One casualty, " + strictNumber("en", d.count, 0, "count") + " sheets:",
    }),
  sheetLine: (d) => d.name + ", opened " + d.at + " by " + d.person,
  sheetLineClosed: (d) => d.name + ", opened " + d.at + " by " + d.person + ", closed by itself",
  part: () => "They are two: part them again",
  joinedWith: () => "Joined with another sheet",
  sameAs: (d) => "Same casualty as " + d.name + ", opened " + d.at + "?",
  sameAsClosed: (d) => "Same casualty as " + d.name + ", opened " + d.at + ", closed?",
  notProved: () =>
    "The stamp shows that the code came from a device of this station. Who wrote each line it does not show. They count here now; the station takes each only from the device that wrote it, so bring that device to a network too.",
  without: () => "Without the camera",
  paste: () => "Paste the text of the file",
  text: () => "Text of the file",
  take: () => "Take these lines",
  reading: () => "Reading",
  fileOrPhotos: () => "The file, or photos of the codes",
  noCodeIn: (d) => "a photo without a code: " + d.file,
  notTaken: () => "Not taken",
  asFile: () => "Or as a file",
  saveFile: () => "Save the file",
  shareFile: () => "Share the file",
  notShared: () => "Not shared",
  whoReads: () =>
    "Whoever gets the code or the file can read these lines. They are stamped, not hidden: give them to nobody else.",
  notMade: () => "No code can be made",
  haveAll: () => "They have every line of ours",
  nothingLeft: () => "Nothing is left to show.",
  lines: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line.",
      other: strictNumber("en", d.count, 0, "count") + " lines.",
    }),
  linesLeft: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line; " + d.left + " left out, which they showed to us.",
      other: strictNumber("en", d.count, 0, "count") + " lines; " + d.left + " left out, which they showed to us.",
    }),
  showAll: () => "Show every line",
  unknownDevice: () => "a device not known here",
  nothingNew: () => "Nothing new in it",
  taken: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line taken",
      other: strictNumber("en", d.count, 0, "count") + " lines taken",
    }),
  takenFrom: (d) =>
    "From " +
    d.person +
    " on " +
    d.device +
    ", as it stood at " +
    d.at +
    ". " +
    d.known +
    " of its lines were here already.",
  showThem: () => "Now show them ours",
  openSheet: () => "Open the sheet",
  readMore: () => "Read once more",
  notTakenLines: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line not taken",
      other: strictNumber("en", d.count, 0, "count") + " lines not taken",
    }),
  notALine: (d) => "Line " + d.place + " of it, which cannot be read",
  notTakenMore: (d) =>
    plural(d.count, 0, en, {
      one: "And " + strictNumber("en", d.count, 0, "count") + " more.",
      other: "And " + strictNumber("en", d.count, 0, "count") + " more.",
    }),
};
export default words;
