/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StockFormsWords } from "#src/words/made/stock/stock-forms.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: StockFormsWords = {
  count: () => "Count it",
  somethingCame: () => "Something came",
  takeSome: () => "Take some",
  moveSome: () => "Move some",
  scrapSome: () => "Scrap some",
  orderSome: () => "Order some",
  leave: () => "Leave it",
  countPart: (d) => "Count " + d.part,
  countAll: () => "Count all of it, with your own eyes",
  countAllMore: () => "From then on this is what lies there, whatever the lines before it came to.",
  ofNoLotIn: (d) => "Of no marked lot, in " + d.unit,
  ofLotIn: (d) => "Of lot " + d.lot + ", in " + d.unit,
  anotherLot: () => "Another lot lies there: its mark",
  notCounted: () => "Not counted",
  thisLiesThere: () => "This is what lies there",
  receivePart: (d) => "Receive " + d.part,
  stillToCome: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " of this order is still to come",
      other: strictNumber("en", d.count, 0, "count") + " of this order are still to come",
    }) + ". If fewer came, write how many: the rest stays open.",
  howManyCame: (d) => "How many came, in " + d.unit,
  lotIfMarked: () => "Lot, if marked",
  printedDate: () => "Date printed on it",
  cameOtherDay: () => "It came on another day",
  cameOn: () => "Came on",
  notReceived: () => "Not received",
  cameToday: () => "It came today",
  cameThatDay: () => "It came on that day",
  whatFor: () => "What for",
  taken: () => "Taken off the shelf",
  moved: () => "Moved",
  whyNotUsed: () => "Why it may not be used",
  scrapped: () => "Scrapped",
  doneWith: (d) => d.done + ": " + d.part,
  howManyIn: (d) => "How many, in " + d.unit,
  toShelfAt: () => "To the shelf at",
  otherDay: () => "It was on another day",
  doneOn: () => "Done on",
  notWritten: () => "Not written down",
  ofWhichLot: () => "Of which lot",
  readMark: () => "Read the mark on it, and choose",
  lot: (d) => "Lot " + d.lot,
  ofNoLot: () => "Of no marked lot",
  orderOf: (d) => "Order of " + d.part,
  orderedToday: (d) => d.part + ": ordered today, in " + d.unit,
  promisedFor: () => "Promised for",
  promisedHint: () => "Leave empty to count on the lead time.",
  orderNote: () => "Order number or note, if any",
  notNoted: () => "Not noted",
  noteOrder: () => "Note the order",
  fewerThere: (d) => "Only " + d.there + " there by the record",
  fewerThereMore: (d) =>
    "You wrote " +
    d.count +
    ". Look again. If it is right, tap once more: the shelf then stands below nothing until it is counted.",
  allTheSame: (d) => d.done + " all the same",
};
export default words;
