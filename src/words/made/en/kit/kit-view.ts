/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { KitViewWords } from "#src/words/made/kit/kit-view.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: KitViewWords = {
  firstFlush: () => "First flush",
  nowBefore: () => "Now, before the turnaround",
  nowFor: (d) => "Now, for " + d.what,
  firstAid: (d) => "First aid after " + d.what,
  notWritten: () => "Not written down",
  flushed: () => "Flushed now",
  flushFromStop: (d) => "It met " + d.what + ". " + d.within + " from when it last pumped, " + d.time + ". " + d.source,
  flushFromReturn: (d) =>
    "It met " +
    d.what +
    ". " +
    d.within +
    " from its return, " +
    d.time +
    "; it stopped pumping before that, so sooner is better. " +
    d.source,
  differ: () => "Two devices differ",
  stands: () => "This one stands",
  letStand: () => "Let this one stand",
  whySettle: () => "Why: what did you look at?",
  settle: () => "Settle it",
  notSettled: () => "Not settled",
  notReceived: () => "An entry this device has not received yet.",
  lineSaid: (d) => "Line " + d.line + ": " + d.answer,
  openedNoSeal: () => "Turnaround opened, no seal found",
  openedSeal: (d) => "Turnaround opened, seal read " + d.seal,
  sealedWith: (d) => "Sealed with " + d.seal,
  closedGrounded: (d) => "Closed as grounded: " + d.reason,
  timed: (d) => "Timed " + d.duration,
  primed: (d) => "Primed in " + d.duration,
  pulls: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " pull counted",
      other: strictNumber("en", d.count, 0, "count") + " pulls counted",
    }),
  handedTo: (d) => "Handed over to " + d.vessel,
  fitted: (d) => "Fitted, " + d.day,
  dateRead: (d) => "Date read: " + d.date,
  dateUnread: () => "Date read: cannot be read",
  shelfAsked: () => "Where the new one came from",
  chooseLot: () => "Read the lot on it, and choose",
  notLabel: () => "That code is not the label of a kit or a shelf.",
  shelfLabel: () => "That is the label of a shelf.",
  unknownLabel: () => "This device knows no kit of that label.",
  notFound: () => "No kit, or more than one, has that serial or name.",
  noneFound: () =>
    "No kit and no shelf, or more than one, is called that. Of two shelves of one name type the place too.",
  typeAny: () => "Or type the serial, the name, or the shelf",
  readLabel: () => "Read a label",
  typeIt: () => "Or type the serial or the name",
  find: () => "Find it",
  leave: () => "Leave it",
  camera: () => "What the camera sees",
  strike: (d) => "Strike this line: " + d.what,
  strikeDo: () => "Strike the line",
  strikeMore: () => "What it said no longer counts. The line stays in the log, with your name and the reason.",
  why: () => "Why",
  notStruck: () => "Not struck",
  noShelf: () => "From no shelf of the station",
  offShelf: (d) => d.part + ", off the shelf at " + d.place + ", " + d.there,
  offShelfLot: (d) => "Lot " + d.lot + ", " + d.count + " there: " + d.part + ", off the shelf at " + d.place,
  offShelfUnread: (d) => "Lot not read: " + d.part + ", off the shelf at " + d.place,
  there: (d) => d.count + " there",
  thereNone: () => "none there by the record",
  thereLess: (d) => d.count + ": " + d.more + " more taken than were written in",
};
export default words;
