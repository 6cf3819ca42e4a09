/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StartsWords } from "#src/words/made/kit/starts.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: StartsWords = {
  ofTen: (d) => "about " + d.low + " of 10 times",
  ofTenRange: (d) => "between " + d.low + " and " + d.high + " of 10 times",
  neverAsked: () => "Nobody has asked it to start yet, that the log knows of.",
  everyTime: (d) =>
    plural(d.count, 0, en, {
      one:
        "Asked to start " +
        strictNumber("en", d.count, 0, "count") +
        " time, on " +
        d.since +
        ", it started and gave water every time.",
      other:
        "Asked to start " +
        strictNumber("en", d.count, 0, "count") +
        " times since " +
        d.since +
        ", it started and gave water every time.",
    }),
  failedSome: (d) =>
    plural(d.count, 0, en, {
      one: "Asked to start " + strictNumber("en", d.count, 0, "count") + " time, on " + d.since,
      other: "Asked to start " + strictNumber("en", d.count, 0, "count") + " times since " + d.since,
    }) +
    ", it failed to start or to give water " +
    plural(d.failures, 0, en, { one: "once", other: strictNumber("en", d.failures, 0, "failures") + " times" }) +
    ".",
  started: () => "started",
  noStart: () => "did not start",
  noWater: () => "started, no water",
  tooLittle: () => "started, too little water",
  byRecord: (d) => "By that record a kit like this, just proved, starts and gives water " + d.often + ".",
  restsOthers: (d) =>
    "The range holds nine times in ten. It rests on this kit's " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " start",
      other: strictNumber("en", d.count, 0, "count") + " starts",
    }) +
    ", and on " +
    plural(d.starts, 0, en, {
      one: strictNumber("en", d.starts, 0, "starts") + " start",
      other: strictNumber("en", d.starts, 0, "starts") + " starts",
    }) +
    " of " +
    plural(d.others, 0, en, {
      one: strictNumber("en", d.others, 0, "others") + " other kit",
      other: strictNumber("en", d.others, 0, "others") + " other kits",
    }) +
    " of its pattern.",
  tonightBy: (d) => d.tonight + ", by " + d.rests,
  ownStarts: (d) =>
    plural(d.count, 0, en, {
      one: "its " + strictNumber("en", d.count, 0, "count") + " start, on " + d.since,
      other: "its " + strictNumber("en", d.count, 0, "count") + " starts since " + d.since,
    }),
  noOwnStart: () => "no start of its own",
  andOthers: (d) =>
    d.own +
    " and " +
    d.count +
    " of " +
    plural(d.others, 0, en, {
      one: strictNumber("en", d.others, 0, "others") + " other",
      other: strictNumber("en", d.others, 0, "others") + " others",
    }),
  restsAlone: (d) =>
    "The range holds nine times in ten. It rests on this kit's " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " start",
      other: strictNumber("en", d.count, 0, "count") + " starts",
    }) +
    " alone, so it is wide: no other of its pattern was ever asked.",
  hiddenUnknown: () =>
    "No kit of its pattern has lain closed between two openings yet: what comes unseen cannot be told.",
  hiddenOwn: (d) =>
    "Opened " +
    plural(d.looks, 0, en, {
      one: strictNumber("en", d.looks, 0, "looks") + " time",
      other: strictNumber("en", d.looks, 0, "looks") + " times",
    }) +
    " after lying closed, this kit had " +
    plural(d.found, 0, en, {
      one: strictNumber("en", d.found, 0, "found") + " fault",
      other: strictNumber("en", d.found, 0, "found") + " faults",
    }) +
    " that would have stopped it.",
  hiddenRateAll: (d) =>
    plural(d.count, 0, en, {
      one:
        "By that and the other kits of its pattern about " +
        d.rate +
        " fault comes unseen in ten years of lying closed.",
      other:
        "By that and the other kits of its pattern about " +
        d.rate +
        " faults come unseen in ten years of lying closed.",
    }),
  hiddenRateOwn: (d) =>
    plural(d.count, 0, en, {
      one: "By that about " + d.rate + " fault comes unseen in ten years of lying closed.",
      other: "By that about " + d.rate + " faults come unseen in ten years of lying closed.",
    }),
  hiddenSteady: () => "Such faults are taken to come at a steady rate.",
  failedOnce: () => "A start that failed counts once, whatever was found after it in the same opening.",
  tonight: (d) => d.word + " tonight: " + d.often,
  unsure: () => "May or may not start and give water",
  veryLikely: () => "Very likely to start and give water",
  likely: () => "Likely to start and give water",
  may: () => "May start and give water",
  doubtful: () => "Doubtful to start and give water",
  tenths: (d) => "about " + d.high + " times in 10",
  tenthsRange: (d) => d.low + " to " + d.high + " times in 10",
  enough: (d) => "at least " + d.least + " of " + d.of + " start and give water tonight " + d.often,
  enoughUnsure: (d) =>
    "at least " + d.least + " of " + d.of + " start and give water tonight " + d.often + ", a wide range",
  enoughRests: (d) =>
    "The range holds nine times in ten. It rests on " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " start of these kits, on " + d.since,
      other: strictNumber("en", d.count, 0, "count") + " starts of these kits since " + d.since,
    }) +
    ".",
  enoughNone: () => "The range holds nine times in ten. It rests on no start of these kits, so it is wide.",
  enoughWithout: (d) =>
    "Not counted: " + d.kits + ", never proved, or of a pattern of which no kit has lain closed between two openings.",
  toldOf: (d) =>
    plural(d.count, 0, en, {
      one:
        "Not counted: " +
        strictNumber("en", d.count, 0, "count") +
        " turnaround that was only told of, of " +
        d.first +
        ".",
      other:
        "Not counted: " +
        strictNumber("en", d.count, 0, "count") +
        " turnarounds that were only told of, from " +
        d.first +
        " to " +
        d.last +
        ".",
    }) +
    " A sheet or a book says that it was done, but no line of it was answered: nothing tells what was looked at, found or started.",
  shareFuel: (d) => d.kits + " share fuel of one delivery.",
  shareLot: (d) => d.kits + " share " + d.of + " of one lot.",
  shareHands: (d) => d.kits + " share the hands of " + d.of + ", who closed them.",
  willItStart: () => "Will it start and give water?",
  afterProof: (d) => ", " + d.duration + " after it was last proved.",
  restsOn: () => "What that rests on",
  curveOf: (d) =>
    "The chance that it starts and gives water against the months since it was last proved. " +
    d.tonight +
    ", " +
    d.duration +
    " after. All in the table below.",
  today: () => "Today",
  bandIs: () => "The line is the middle, the band holds nine times in ten.",
  curveTable: () => "Chance since the last proof as a table",
  curveCaption: () => "Chance since the last proof",
  after: () => "After",
  works: () => "Starts and gives water",
  onCasualty: () => "on a casualty",
  inTurnaround: () => "in a turnaround",
  startedAt: (d) => ", " + d.where + ": " + d.outcome,
  wideRange: (d) =>
    plural(d.count, 0, en, {
      one:
        "Just proved, it could start and give water " +
        d.often +
        ". That range is wide: about " +
        strictNumber("en", d.count, 0, "count") +
        " more opening would narrow it.",
      other:
        "Just proved, it could start and give water " +
        d.often +
        ". That range is wide: about " +
        strictNumber("en", d.count, 0, "count") +
        " more openings would narrow it.",
    }),
  noChance: (d) => "No chance is told for tonight: " + d.why + ".",
  restsNone: () =>
    "The range holds nine times in ten. It rests on no start of this kit, so it is wide: fewer than two of its pattern were ever asked.",
  oneMore: (d) =>
    "Just proved, it is taken to fail " +
    d.now +
    " times in 100. One failure more of another kit of its pattern could make that " +
    d.more +
    ": how far a kit is drawn to the others hangs on how much they differ, and a failure changes that too. Take it for no better than was told.",
  oneMoreShort: (d) => d.told + "; one failure more of another could make it look better: take it for no better",
};
export default words;
