/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { TrendsWords } from "#src/words/made/kit/trends.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: TrendsWords = {
  pulls: () => "Pulls to start",
  pullsAxis: () => "Pulls to the first start",
  sayPulls: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " pull",
      other: strictNumber("en", d.count, 0, "count") + " pulls",
    }),
  somePulls: (d) => d.count + " pulls",
  prime: () => "Prime",
  primeAxis: () => "Seconds from first stroke to water",
  fuel: () => "Fuel burnt in a run",
  fuelAxis: () => "Litres of fuel burnt in the run",
  fuelAxisUs: () => "US quarts of fuel burnt in the run",
  water: () => "Water found in the case",
  waterAxis: () => "Millilitres of water found in the case",
  waterAxisUs: () => "US fluid ounces of water found in the case",
  delivery: () => "Delivery",
  deliveryAxis: () => "Measured flow over expected flow",
  atMost: (d) => "At most " + d.value,
  notedBelow: (d) => "Noted below " + d.value,
  groundedBelow: (d) => "Grounded below " + d.value,
  noneMeasured: () => "None measured yet.",
  onlyOne: (d) => "Last " + d.value + ", on " + d.day + ". It is the only one.",
  always: (d) =>
    "Last " +
    d.value +
    ", on " +
    d.day +
    ". " +
    d.count +
    " since " +
    d.first +
    ", always " +
    d.least +
    ". " +
    d.change,
  between: (d) =>
    "Last " +
    d.value +
    ", on " +
    d.day +
    ". " +
    d.count +
    " since " +
    d.first +
    ", from " +
    d.least +
    " to " +
    d.most +
    ". " +
    d.change,
  since: (d) => "Since about " + d.day + ": " + d.after + " rather than " + d.before + ", in the middle.",
  cause: (d) => d.mode + ": about " + d.tenths + " in 10",
  basisNone: () => "The chances are the pattern's judgement; no finding bears on them yet.",
  basis: (d) =>
    plural(d.count, 0, en, {
      one:
        "The chances are the pattern's judgement and " +
        strictNumber("en", d.count, 0, "count") +
        " finding on kits of it.",
      other:
        "The chances are the pattern's judgement and " +
        strictNumber("en", d.count, 0, "count") +
        " findings on kits of it.",
    }),
  onCasualties: () => "On casualties",
  onCasualtiesMore: () =>
    "From their sheets. Delivery is what the soundings there showed: an estimate, in no trend and no proof run.",
  casualtyRuns: () => "Runs on casualties",
  casualty: () => "Casualty",
  start: () => "Start",
  ran: () => "Ran",
  notTold: () => "not told",
  deliverySeen: () => "Delivery seen",
  notSeen: () => "not seen",
  wouldNotStart: () => "would not start",
  started: () => "started",
  seen: (d) => "about " + d.middle + " % of stated (" + d.low + " to " + d.high + ")",
};
export default words;
