/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StockPartWords } from "#src/words/made/stock/stock-part.ts";
import { plural, select, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: StockPartWords = {
  noPart: () => "No such part",
  noPartNews: () => "This device knows no such part",
  offList: (d) => "No longer on the list: " + d.reason,
  lotRecalled: (d) => "Lot " + d.lot + " is recalled",
  holders: () => "What holds it",
  shelfAt: () => "Shelf at",
  onShelf: () => "On the shelf",
  madeSo: () => "What made it so",
  thePart: () => "The part",
  thereIn: (d) => d.there + ", in " + d.unit + ".",
  countShelf: () => "Count the shelf: what lies there is the truth.",
  neverCounted: () => "Never counted.",
  notHereYet: () => "Not here yet.",
  countedOn: (d) => "Counted on " + d.day + ".",
  lotThere: (d) => select(d.hasLot, { yes: "Lot " + d.lot, other: "Of no lot that was read" }) + ": " + d.there,
  lotGoodTo: (d) =>
    select(d.hasLot, { yes: "Lot " + d.lot, other: "Of no lot that was read" }) + ": " + d.there + ", good to " + d.day,
  pastDay: () => "past its day",
  recalledDoNotFit: () => "recalled: do not fit it",
  changePart: () => "Change the part",
  aLotRecalled: () => "A lot is recalled",
  ownNumber: () => "Own number",
  supplier: () => "Supplier",
  costOfOne: () => "Cost of one",
  leadTime: () => "Lead time",
  leadSupposed: () => "not on record: 7 days are supposed",
  keeps: () => "Keeps",
  keepsPrinted: () => "to the date printed on it",
  toBeKept: () => "To be kept",
  leastAt: (d) => d.least + " at " + d.place,
  fittedAs: () => "Fitted as",
  notOnRecord: () => "not on record",
  neverWritten: () => "Nothing was ever written of this shelf",
  lines: () => "Lines of this shelf, newest first",
  day: () => "Day",
  what: () => "What",
  by: () => "By",
  counts: () => "Counts",
  inCount: () => "in the count already",
  strike: () => "Strike",
  onKitPage: () => "on the kit's page",
  countedNone: () => "counted: none",
  countedSome: (d) => "counted: " + d.lots,
  countOfLot: (d) => d.count + " of lot " + d.lot,
  received: (d) =>
    plural(d.count, 0, en, { other: d.count + " received" }) + select(d.hasLot, { yes: ", lot " + d.lot, other: "" }),
  movedFrom: (d) =>
    plural(d.count, 0, en, { other: d.count + " moved" }) +
    " from " +
    d.place +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }),
  movedTo: (d) =>
    plural(d.count, 0, en, { other: d.count + " moved" }) +
    " to " +
    d.place +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }),
  fittedIn: (d) =>
    plural(d.count, 0, en, { other: d.count + " fitted" }) +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }) +
    ", in " +
    d.kit,
  used: (d) =>
    plural(d.count, 0, en, { other: d.count + " used" }) +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }) +
    ": " +
    d.because,
  scrapped: (d) =>
    plural(d.count, 0, en, { other: d.count + " scrapped" }) +
    select(d.hasLot, { yes: ", lot " + d.lot, other: "" }) +
    ": " +
    d.because,
  changeNamed: (d) => "Change " + d.part,
  newPart: () => "A part for the list",
  name: () => "Name",
  number: () => "The station's own number",
  countedIn: () => "Counted in",
  supplierIfKnown: () => "Supplier, if known",
  supplierNumber: () => "The supplier's number, if known",
  costIfKnown: () => "Cost of one, if known",
  orderToShelf: () => "From ordering to shelf, if known",
  weeksHint: () => 'Such as "6 weeks".',
  supposedIfEmpty: () =>
    "Nobody said how long it takes from ordering to shelf. Write it, or save again without: 7 days are then supposed, and the order list says so.",
  howLongKeeps: () => "How long does it keep on the shelf?",
  keepsLong: () => "Without end",
  keepsToPrinted: () => "To the date printed on each",
  keepsLife: () => "So long from the day it came",
  howLong: () => "How long",
  monthsHint: () => 'Such as "24 months".',
  leastKeptAt: (d) => "Least to be kept at " + d.place,
  isFittedAs: () => "It is fitted as",
  chooseItem: () => "Choose an item of a pattern",
  takeOut: () => "Take out",
  takeNamedOut: (d) => "Take out " + d.item,
  notSaved: () => "Not saved",
  savePart: () => "Save the part",
  takeOffList: () => "Take it off the list",
  because: () => "Because",
  notTakenOff: () => "Not taken off",
  recallTitle: (d) => "A lot of " + d.part + " is recalled",
  lotAsMarked: () => "Lot, as it is marked",
  recalledBecause: (d) => "Recalled: " + d.reason,
  whyRecalled: () => "Why it is recalled, and by whom",
  effectOnKit: () => "What does it mean for a kit that holds it?",
  limit: () => "The limit, as a vessel should hear it",
  notRaised: () => "Not raised",
  allRaised: () => "Every kit that holds it has its finding",
  recallLot: () => "Recall the lot",
  recallRaise: (d) =>
    "Recall the lot: raise it on " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " item",
      other: strictNumber("en", d.count, 0, "count") + " items",
    }),
  noHolders: () => "No kit and no shelf holds this lot, by what was written down.",
  holderAway: (d) => ", away with " + d.who,
  findingClosed: () => ": put right and proved",
  findingRaised: () => ": finding raised",
  shelfHolds: (d) => "Shelf at " + d.place + ": " + d.there,
};
export default words;
