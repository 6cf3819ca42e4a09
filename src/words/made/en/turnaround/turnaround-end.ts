/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { TurnaroundEndWords } from "#src/words/made/turnaround/turnaround-end.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: TurnaroundEndWords = {
  whoSees: (d) => d.qualification + ": who sees it done",
  secondPerson: (d) => "Second person: " + d.person + " (" + d.qualification + ")",
  nobodySees: (d) => "Nobody sees it done: " + d.note + " (" + d.qualification + ")",
  namedSecond: (d) => d.qualification + ", " + d.person,
  namedAlone: (d) => d.qualification + ", alone",
  undo: () => "Undo",
  undoWhat: (d) => "Undo: " + d.what,
  takenBackAtLine: () => "Taken back at the line",
  notTakenBack: () => "Not taken back",
  aSecond: (d) => d.qualification + ": a second person",
  whoSeesAsk: (d) => d.qualification + ": who sees it done?",
  notDoneYet: () => "You have not done this yet.",
  yoursLapsed: (d) => "Yours lapsed on " + d.day + ".",
  withOneOfThese: () => "Do it with one of these beside you: it then counts for you.",
  nobodyLeft: () => "Nobody is left at the station who may see it done.",
  seesItDone: (d) => d.person + " sees it done",
  notWritten: () => "Not written down",
  nobodyAlone: () => "Nobody goes on alone here. If none of them can come, close the kit as grounded.",
  nobodyCanCome: () => "Nobody can come",
  whyNobody: () => "Why nobody sees it done",
  whyNobodyHint: () => "It does not count for you then.",
  goOnWithNote: () => "Go on with this note",
  confirmedByPin: (d) => d.person + " confirmed it by their own PIN, " + d.at + ".",
  confirmedOnOwn: (d) => d.person + " confirmed it on a device of their own, " + d.at + ".",
  notConfirmedYet: (d) => "Not confirmed by " + d.person + " yet",
  confirmHow: (d) =>
    d.person + " confirms it under Work due on a device of their own, or here by their PIN. The work goes on.",
  confirmed: (d) => d.person + " confirmed it by their PIN",
  pinForLine: (d) =>
    d.person +
    " types it, and nobody else. It says that " +
    d.person +
    " saw " +
    d.doer +
    " do line " +
    d.line +
    " (" +
    d.what +
    ").",
  pinFor: (d) =>
    d.person + " types it, and nobody else. It says that " + d.person + " saw " + d.doer + " do this: " + d.what + ".",
  confirmAfter: (d) => "It can be confirmed once the line is over. " + d.why,
  pinOf: (d) => "PIN of " + d.person,
  notConfirmed: () => "Not confirmed",
  sawItDone: () => "I saw it done",
  confirmLater: () => "Confirm it on a device of your own, or later.",
  notReached: () => "The station could not be reached",
  inTheWay: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " thing stands in the way of a seal",
      other: strictNumber("en", d.count, 0, "count") + " things stand in the way of a seal",
    }),
  showOthers: (d) => "Show the other " + d.count,
  goToDrill: () => "Go to the drill",
  goToFinding: () => "Go to the finding",
  goToLine: (d) => "Go to line " + d.line,
  closeAndSeal: (d) => "Close and seal " + d.kit,
  newSeal: () => "New seal",
  asGrounded: () => "Close it as grounded",
  orAsGrounded: () => "Or close it as grounded",
  asGroundedMore: () => "The container is closed and the kit may not go, until another turnaround puts it right.",
  closeAsGrounded: () => "Close as grounded",
  leftOut: () => "Left out, as they may be",
  leftOutLines: (d) => "Lines " + d.lines,
  sealNumber: () => "New seal number",
  sealNumberHint: () => "Read it off the new seal.",
  sealAgain: () => "Seal number again",
  sealAgainHint: () => "After fitting, read it off the closed container.",
  witness: () => "Who else saw it closed, if anybody",
  notSealed: () => "Not sealed",
  sealed: () => "Sealed",
  sealedWith: (d) => "Sealed with " + d.seal,
  sealRefused: () => "This seal is refused",
  sealRefusedMore: () => "Use another seal, and find out how this number came to be here.",
  whyGrounded: () => "Why is it grounded?",
  sayWhy: () => "Say why, in a few words.",
  sealIfAny: () => "Seal put on it, if any",
  notClosed: () => "Not closed",
  goBack: () => "Go back",
  isClosed: (d) => d.kit + " is closed",
  limitName: () => "Limit:",
  until: (d) => "Until " + d.day + ": " + d.what,
  toBoard: () => "To the board",
};
export default words;
