/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StockWords } from "#src/words/made/stock/stock.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: StockWords = {
  title: () => "Parts and stock",
  early: () => "Not all lines are on this device yet",
  earlyMore: () => "What is on a shelf is right once they are.",
  noParts: () => "No part is on the list yet",
  noPartsMore: () =>
    "A keeper puts a part on the list once, then receives and counts it. Patterns name some of them, below.",
  shelvesAt: () => "Shelves at",
  putOnList: () => "Put a part on the list",
  labels: () => "Labels and shelves",
  find: () => "Find a part by number or name",
  shelves: () => "Shelves",
  spareMore: () =>
    "Least is how many to hold at the whole station, not for each place. It is counted over spans from ordering to shelf: with so many held, nobody waits for a part in 95 of 100 such spans. It rests on how many the log says were used in a year at all places. An estimate; what was counted is beside it.",
  spareLots: (d) =>
    plural(d.parts, 0, en, {
      "0": "Every use was counted one part at a time.",
      other:
        "Counted as wanted several at a time, by what went into one kit at once: " +
        d.names +
        ". All else was counted one at a time.",
    }),
  part: () => "Part",
  onShelf: () => "On the shelf",
  keep: () => "Keep",
  spare: () => "Least at the station for 95 %",
  spareIs: (d) => d.count + " (" + d.perYear + " a year)",
  notKnown: () => "not known",
  counted: () => "Counted",
  never: () => "never",
  notHereYet: () => "not here yet",
  ofTheseFit: (d) => d.count + ", of these " + d.usable + " fit to use",
  low: (d) => d.count + ": low",
  lowOfThese: (d) => d.count + ", of these " + d.usable + " fit to use: low",
  unlisted: () => "Named by patterns, not on the list",
  toOrder: () => "To order",
  nothingShort: () => "Nothing falls short within half a year, with what is on the shelves and on order.",
  listCsv: () => "The list as CSV",
  listPdf: () => "The list as PDF",
  for: () => "For",
  howMany: () => "How many",
  orderBy: () => "Order by",
  orderNow: () => "Now",
  why: () => "Why",
  order: () => "Order",
  ordered: () => "Ordered",
  orderedPart: (d) => "Ordered: " + d.part,
  fitToUse: (d) => d.usable + " fit to use",
  fitAndOnOrder: (d) => d.usable + " fit to use, " + d.onOrder + " on order",
  keepLeast: (d) => "keep " + d.least,
  needOf: (d) => d.item + " of " + d.kit + " by " + d.day,
  needOfMore: (d) => d.item + " of " + d.kit + " by " + d.day + " and " + d.more + " more",
  wantedBy: (d) => "wanted by " + d.day,
  leadSupposed: () => "7 days to come supposed: none given",
  comesIn: (d) => "comes in " + d.span,
  reasonsBetween: () => "; ",
  orMove: () => "Or move what another place can spare:",
  moveProposed: (d) => d.part + ": " + d.count + " from " + d.from + " to " + d.to + ".",
  fillMove: () => "Fill in this move",
  fillMoveOf: (d) => "Fill in this move: " + d.part + ", " + d.count + " from " + d.from + " to " + d.to,
  onOrder: () => "On order",
  toCome: () => "To come",
  outstanding: (d) => d.count + " of " + d.ordered,
  orderedOn: () => "Ordered",
  countedOn: () => "Counted on",
  supposedDay: (d) => d.day + ", 7 days supposed: none given",
  outcome: () => "What came of it",
  came: () => "It came",
  partCame: (d) => "It came: " + d.part,
  waitNoLonger: () => "No longer waited for",
  partWaitNoLonger: (d) => "No longer waited for: " + d.part,
  late: (d) => d.day + ": late",
  orderOf: (d) => "Order of " + d.part,
  restWillNotCome: (d) => "The rest of the order of " + d.part + " will not come, because",
  notClosed: () => "Not closed",
  stopWaiting: () => "Wait for it no longer",
  buys: () => "Best buys for a sum",
  buysTooLittle: () => "Too little to tell: no part has its price, its time to come and 90 days of use on record.",
  mayBeSpent: () => "What may be spent",
  inCurrency: (d) => "In " + d.currency + ".",
  ownMoney: () => "In the station's own money: its currency can be named in the settings.",
  nothingOrdered: () => "Nothing is ordered by this.",
  notTold: () => "Not told",
  bestBuys: () => "Best buys",
  fitNow: () => "Fit to use now",
  buy: () => "Buy",
  cost: () => "Cost",
  emptyAYear: () => "Shelf empty when wanted, a year",
  nowThen: (d) => d.now + " now, then " + d.after,
  price: () => "price",
  timeToCome: () => "time to come",
  daysOfUse: () => "90 days of use",
  leftOut: (d) => "Left out, for want of what stands in brackets: " + d.parts + ".",
  wantedFirst: () =>
    "What is wanted today stands under To order and is not counted here: get that first. All shelves of the station are taken as one.",
  emptyBefore: (d) =>
    "With what is on the shelves and on order, a part is wanted and not there about " +
    d.now +
    " times a year, and a kit waits or another is robbed of it.",
  buysNothing: () => "This sum buys nothing that would change it.",
  emptyAfter: (d) =>
    d.spent +
    " spent on what is listed makes that about " +
    d.after +
    " times: " +
    d.fewer +
    " fewer, by the use on record.",
  heldAndComing: (d) => d.usable + ", " + d.onOrder + " on order",
  maybeBetter: (d) =>
    "Too many choices to try all: another one may be better, by at most " + d.gap + " parts waited for at any time.",
  enoughIs: () =>
    "No more of a part is bought once its shelf is empty when wanted no oftener than once in twenty years, whatever the sum.",
  emptyNever: () =>
    "With what is on the shelves and on order, a part is wanted and not there less than once in a hundred years.",
  emptyNoMore: (d) =>
    d.spent + " spent on what is listed makes that less than once in a hundred years, by the use on record.",
  nothingShortListed: (d) =>
    plural(d.count, 0, en, {
      one:
        "Too little to tell whether something falls short: " +
        d.count +
        " part that patterns name is not on the list. Of those on it nothing does within half a year.",
      other:
        "Too little to tell whether something falls short: " +
        d.count +
        " parts that patterns name are not on the list. Of those on it nothing does within half a year.",
    }),
};
export default words;
