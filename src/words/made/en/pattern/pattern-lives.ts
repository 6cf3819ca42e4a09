/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternLivesWords } from "#src/words/made/pattern/pattern-lives.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: PatternLivesWords = {
  title: () => "How long things last",
  counting: () => "Counting what the log says.",
  titleOf: (d) => "How long things last: " + d.pattern,
  titleItem: (d) => d.item + ": how long it lasts",
  early: () => "Not all lines are on this device yet",
  earlyMore: () =>
    "Lives are counted from every fitting and finding there ever was. They are told once all lines are here.",
  nobodyLooked: () => "Nobody looked at one yet",
  nothing: () => "Nothing to go by yet",
  nothingItem: () => "No opening of a kit of this pattern has looked at such an item, or the pattern has none.",
  nothingMore: () =>
    "No item of a kit of this pattern has been looked at in an opening. One opening of each is a beginning.",
  reportCard: () => "Report card",
  reportCardOf: () => "Report card of the pattern",
  howOften: () => "How often to open it",
  basis: () =>
    "From all kits of this pattern, whatever its version. A life begins when a thing is fitted or proved mended, or the kit comes on charge; it is looked at in openings, and ends at the first finding.",
  ranges: () =>
    "Ranges hold nine times in ten. Nothing changes by itself: whoever keeps the pattern decides, and the unit's own manual and a printed date stand first.",
  untilNext: (d) => d.kit + " until its next opening",
  next: (d) => "Next opening: " + d.what,
  nextNow: () => "It is open, or is to be opened as soon as it is here: there is no next opening to last to.",
  nextNone: () => "Nothing with a day will open it: no planned opening, no date that grounds it.",
  nextGiven: (d) => d.day + ", the day agreed for it, in " + d.span + ".",
  nextPlanned: (d) => "the week of " + d.day + " by the year's plan, in " + d.span + ".",
  nextAccepted: (d) =>
    "by " + d.day + ", in " + d.span + ": then the interval that was accepted for this pattern ends.",
  nextGrounds: (d) => "by " + d.day + ", in " + d.span + ": after that it is grounded (" + d.ends + ").",
  nothingLooked: () => "Nothing that is in it now was looked at yet.",
  leastFirst: () => "Least likely to last first. What is found bad and not mended is left out.",
  lastsToNext: () => "Lasts to the next opening",
  otherItems: (d) => plural(d.count, 0, en, { other: d.count + " other" }) + " items",
  otherItemsOf: () => "Other items of it",
  item: () => "Item",
  age: () => "Age",
  earned: () => "What earns another life",
  nothingEarned: () =>
    "Nothing earns a shorter or a longer life by what was seen so far. What it would take stands at each item.",
  itemVerdict: (d) => d.item + ": " + d.verdict,
  earnedLine: (d) => "Held against " + d.span + ": " + d.lasting + ". " + d.rests + ".",
  everyItem: () => "Every item",
  noneBad: () => "None was ever found bad.",
  badTable: () => "Items found bad at some time",
  neverBad: (d) => plural(d.count, 0, en, { other: d.count + " never" }) + " found bad",
  neverBadTable: () => "Items never found bad",
  seen: () => "Seen",
  heldAgainst: () => "Held against",
  lastsIt: () => "Lasts it",
  so: () => "So",
  verdictLine: (d) => d.verdict + ".",
  itemLine: (d) =>
    "Held against " +
    d.span +
    ": " +
    d.lasting +
    " (the range holds nine times in ten). " +
    d.rests +
    "; looked at beyond that age " +
    plural(d.beyond, 0, en, { "1": "once", other: d.beyond + " times" }) +
    ".",
  statedLife: () => "stated life",
  openingToNext: () => "from one opening to the next",
  stillGood: () => "Still good, by age",
  chart: (d) =>
    "Of ten, how many are still good at each age, as seen and by a law. " +
    d.rests +
    ". The figures are in the table below.",
  ofTenGood: () => "Of ten, still good",
  sinceNew: () => "since it was new",
  chartMore: () =>
    "Steps: as seen, without any law; where between two looks an end fell nobody can know. Dotted line: the law that the chances are told by.",
  asTable: () => "Still good, as a table",
  goodTable: () => "Still good at each age of a look",
  byMode: () => "Mode by mode",
  modes: () => "Modes",
  mode: () => "Mode",
  notWithin: () => "Does not come within that time",
  renewed: () => "Renewed again and again",
  noneRenewed: () => "None was renewed since its kit came on charge.",
  renewedChart: (d) =>
    "How often one kit has had a new one, on average: " +
    d.count +
    " by " +
    d.age +
    " on charge. The figures are in the table below.",
  renewedReading: () => "New ones of one kit, on average, with the range of nine in ten",
  sinceCharge: () => "since the kit came on charge",
  renewedAsTable: () => "Renewals as a table",
  renewedTable: () => "Renewals by age of the kit",
  sinceChargeHead: () => "Since on charge",
  newOnes: () => "New ones of one kit",
  countRange: (d) => d.count + " (" + d.low + " to " + d.high + ")",
  timesInTen: (d) => d.tenths + " times in 10",
  timesInTenRange: (d) => d.low + " to " + d.high + " times in 10",
  rests: (d) =>
    plural(d.lives, 0, en, { one: d.lives + " life", other: d.lives + " lives" }) +
    ", " +
    plural(d.ended, 0, en, { "0": "none ended", other: d.ended + " ended" }) +
    ", " +
    plural(d.looks, 0, en, { one: d.looks + " look", other: d.looks + " looks" }) +
    plural(d.lost, 0, en, { "0": "", other: ", " + d.lost + " lost and not counted as ended" }) +
    plural(d.undated, 0, en, {
      "0": "",
      other: ", " + d.undated + " bad at the first look at an age not on record and not counted",
    }),
  spanStated: (d) => "its stated life of " + d.span,
  spanNext: (d) => d.span + ", from one opening to the next",
  shorterLife: () => "Earns a shorter life: even at best fewer than 9 in 10 last it",
  shorterNext: () => "Even at best fewer than 9 in 10 last from one opening to the next",
  longerLife: () => "Earns a longer life: even at worst 9 in 10 last half as long again",
  lastsLife: () => "Lasts its stated life at least 9 times in 10",
  lastsNext: () => "Lasts from one opening to the next at least 9 times in 10",
  cannotTell: (d) =>
    "Too little to tell: it takes about " +
    plural(d.count, 0, en, { one: d.count + " more look", other: d.count + " more looks" }),
  cannotTellMost: (d) => "Too little to tell: it takes more than " + d.count + " more looks",
};
export default words;
