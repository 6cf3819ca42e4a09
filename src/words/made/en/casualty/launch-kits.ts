/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LaunchKitsWords } from "#src/words/made/casualty/launch-kits.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: LaunchKitsWords = {
  kits: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " kit",
      other: strictNumber("en", d.count, 0, "count") + " kits",
    }),
  toFollow: (d) => d.count + " to follow",
  moreToFollow: () => "more to follow",
  takeNone: (d) => "No kit to take: a patch, " + d.more,
  noPump: () => "No pump of this station can come: ask another station now, and take a patch",
  takeMoreThan: (d) =>
    plural(d.count, 0, en, {
      one: "More than " + strictNumber("en", d.count, 0, "count") + " kit, and a patch",
      other: "More than " + strictNumber("en", d.count, 0, "count") + " kits, and a patch",
    }),
  take: (d) =>
    plural(d.count, 0, en, {
      one: "Take " + strictNumber("en", d.count, 0, "count") + " kit",
      other: "Take " + strictNumber("en", d.count, 0, "count") + " kits",
    }),
  takeAndPatch: (d) =>
    plural(d.count, 0, en, {
      one: "Take " + strictNumber("en", d.count, 0, "count") + " kit and a patch",
      other: "Take " + strictNumber("en", d.count, 0, "count") + " kits and a patch",
    }),
  takeNow: (d) => "Take " + d.count + " now, " + d.more,
  takeNowAndPatch: (d) => "Take " + d.count + " now, " + d.more + ", and a patch",
  takeNowPatch: (d) => "Take " + d.count + " now, a patch, " + d.more,
  late: (d) => "Chance that her deck edge is still dry when your first pump runs: about " + d.chance + ".",
  lateWarning: (d) =>
    "Chance that her deck edge is still dry when your first pump runs: about " +
    d.chance +
    ". Ask for boats nearer. Have her people ready to leave her.",
  lateHazard: () => "She may be gone before you can pump",
  lateShort: () => "WARNING: she may be gone before you can pump.",
  tellMore: () => "Tell more: hole, water inside, how fast it rises",
  firstNone: () => "No kit can go with the first boat",
  firstKits: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " kit with the first boat",
      other: strictNumber("en", d.count, 0, "count") + " kits with the first boat",
    }),
  thenKits: (d) => "then " + d.kits,
  askAll: () => "ask another station for all it has",
  askFor: (d) => "ask another station for " + d.count,
  next: (d) => d.before + "; " + d.next,
  sentence: (d) => d.clauses + ".",
  whyNone: (d) =>
    plural(d.count, 0, en, {
      one:
        "Even " +
        strictNumber("en", d.count, 0, "count") +
        " kit holds with a chance of only about " +
        d.chance +
        ". Slow the hole first; take all there are.",
      other:
        "Even " +
        strictNumber("en", d.count, 0, "count") +
        " kits hold with a chance of only about " +
        d.chance +
        ". Slow the hole first; take all there are.",
    }),
  gain: (d) =>
    plural(d.count, 0, en, {
      one:
        strictNumber("en", d.count, 0, "count") +
        " kit to gain on the water, nine times in ten, kits that fail to start counted in.",
      other:
        strictNumber("en", d.count, 0, "count") +
        " kits to gain on the water, nine times in ten, kits that fail to start counted in.",
    }),
  gainIfAfloat: (d) =>
    plural(d.count, 0, en, {
      one:
        strictNumber("en", d.count, 0, "count") +
        " kit to gain on the water, nine times in ten if she still floats then, kits that fail to start counted in.",
      other:
        strictNumber("en", d.count, 0, "count") +
        " kits to gain on the water, nine times in ten if she still floats then, kits that fail to start counted in.",
    }),
  hold: (d) =>
    plural(d.count, 0, en, {
      one:
        strictNumber("en", d.count, 0, "count") +
        " kit to hold the water, but not to gain on it, nine times in ten, kits that fail to start counted in.",
      other:
        strictNumber("en", d.count, 0, "count") +
        " kits to hold the water, but not to gain on it, nine times in ten, kits that fail to start counted in.",
    }),
  holdIfAfloat: (d) =>
    plural(d.count, 0, en, {
      one:
        strictNumber("en", d.count, 0, "count") +
        " kit to hold the water, but not to gain on it, nine times in ten if she still floats then, kits that fail to start counted in.",
      other:
        strictNumber("en", d.count, 0, "count") +
        " kits to hold the water, but not to gain on it, nine times in ten if she still floats then, kits that fail to start counted in.",
    }),
  alone: (d) => d.why + " Two all the same: one that fails leaves none.",
  patchNone: (d) =>
    plural(d.count, 0, en, {
      one:
        "With the hole halved, even " +
        strictNumber("en", d.count, 0, "count") +
        " kit may not hold: get people off early.",
      other:
        "With the hole halved, even " +
        strictNumber("en", d.count, 0, "count") +
        " kits may not hold: get people off early.",
    }),
  patchHolds: (d) =>
    plural(d.count, 0, en, {
      one:
        "With the hole halved by a plug or a patch, " +
        strictNumber("en", d.count, 0, "count") +
        " kit holds with a chance of about " +
        d.chance +
        ".",
      other:
        "With the hole halved by a plug or a patch, " +
        strictNumber("en", d.count, 0, "count") +
        " kits hold with a chance of about " +
        d.chance +
        ".",
    }),
  noCans: (d) =>
    "Fuel: full tanks last the " +
    d.duration +
    " counted on. How full they are is not known here: look before they go.",
  cansGuessed: (d) =>
    plural(d.count, 0, en, {
      one:
        "Fuel: tank and burn are not known. As a guess " +
        strictNumber("en", d.count, 0, "count") +
        " can of 5 L with each kit, " +
        d.total +
        " in all.",
      other:
        "Fuel: tank and burn are not known. As a guess " +
        strictNumber("en", d.count, 0, "count") +
        " cans of 5 L with each kit, " +
        d.total +
        " in all.",
    }),
  cans: (d) =>
    plural(d.count, 0, en, {
      one: "Fuel: " + strictNumber("en", d.count, 0, "count") + " can of 5 L with each kit, " + d.total + " in all.",
      other: "Fuel: " + strictNumber("en", d.count, 0, "count") + " cans of 5 L with each kit, " + d.total + " in all.",
    }),
  arrival: (d) =>
    "Your first pump can be pumping in " +
    d.duration +
    ". Chance that her deck edge is still dry then: about " +
    d.chance +
    ".",
  arrivalNone: () =>
    "No pump of this station can come: there is no time of a first pump to tell. Have her people ready to leave her.",
  arrivalFollows: () => "The first boat brings no pump. When one that follows can be pumping is not known here.",
  duration: (d) => d.from + " to " + d.to,
  anyChance: () => "anything between none and all",
  inHundred: (d) =>
    plural(d.count, 0, en, {
      "0": "less than 1 in 100",
      "100": "more than 99 in 100",
      other: strictNumber("en", d.count, 0, "count") + " in 100",
    }),
  between: (d) => d.low + " to " + d.high + " in 100",
  moreThan: (d) => "more than " + d.low + " in 100",
  lessThan: (d) => "less than " + d.high + " in 100",
};
export default words;
