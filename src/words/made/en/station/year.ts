/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { YearWords } from "#src/words/made/station/year.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: YearWords = {
  title: () => "The year planned",
  plan: () => "Plan",
  weeks: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " week",
      other: strictNumber("en", d.count, 0, "count") + " weeks",
    }),
  planYear: () => "Plan the year",
  planAgain: () => "Plan again",
  notPlanned: () => "Not planned",
  howOften: () => "How often to open",
  shortIn: (d) =>
    plural(d.count, 0, en, {
      one: "Falls short in " + strictNumber("en", d.count, 0, "count") + " week",
      other: "Falls short in " + strictNumber("en", d.count, 0, "count") + " weeks",
    }),
  shortAt: (d) => d.place + ", week of " + d.day + ": " + d.count + " short",
  andMore: (d) => "and " + d.count + " more",
  quickPlan: () =>
    "This is the quick plan of this device. There is no network. With one, the station looks for a better plan.",
  standsAccepted: () => "This plan stands accepted.",
  notAllWritten: () => "Not all of it was written down",
  accept: () => "Accept this plan",
  noPlan: () => "No plan is accepted yet",
  acceptedPlan: () => "The accepted plan",
  acceptedBy: (d) => "Last accepted by " + d.person + " " + d.at + ".",
  planned: () => "Openings planned",
  weekOf: () => "Week of",
  kit: () => "Kit",
  renewed: () => "Renewed or done",
  by: () => "By",
  compared: () => "Compared",
  comparedTable: () => "The plan beside doing each thing on its last day",
  wholeTime: () => "Of the whole time",
  lastDay: () => "Each on its last day",
  thisPlan: () => "This plan",
  openings: () => "Openings",
  worstWeek: () => "Hours of the worst week",
  hours: (d) => d.hours + " h",
  weeksShort: () => "Weeks short, each place counted",
  lifeLost: () => "Life thrown away",
  days: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " day",
      other: strictNumber("en", d.count, 0, "count") + " days",
    }),
  best: () => "No plan has fewer kits short, fewer lapsed weeks or fewer openings.",
  notProvedBest: (d) =>
    "Not proved best: what it could not bring to the least may be up to " + d.percent + " % from it.",
  openingsOfPlan: () => "Openings of this plan",
  weekAndKit: (d) => "Week of " + d.day + ": " + d.kit,
  openingFree: (d) => d.week + ". " + d.renews + ". By " + d.people + ".",
  openingFixed: (d) => d.week + " (fixed). " + d.renews + ". By " + d.people + ".",
  earlier: () => "Earlier",
  kitEarlier: (d) => "A week earlier: " + d.kit,
  later: () => "Later",
  kitLater: (d) => "A week later: " + d.kit,
  letMove: () => "Let it move",
  keepThere: () => "Keep it there",
  beside: (d) => "Beside them, to see it done or to lift: " + d.people + ".",
  handsLacking: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " hand more is needed at once than is there.",
      other: strictNumber("en", d.count, 0, "count") + " hands more are needed at once than are there.",
    }),
  kitLetMove: (d) => "Let it move: " + d.kit,
  kitKeepThere: (d) => "Keep it there: " + d.kit,
  notProved: () => "Not proved best, and how far it is from the best is not known.",
  planning: () => "Working out a quick plan on this device.",
  askingStation: () => "The quick plan stands below. The station looks for a better one; that may take a minute.",
  fixedNow: () => "Fixed, and to be let go one by one:",
  flushFirst: () => "Flush first. This waits for no plan.",
  quickSoFar: () => "This is the quick plan of this device.",
  quickNoTime: () =>
    "This is the quick plan of this device. The station ran out of time before it found a better one. Plan again when it has less to do.",
  quickRefused: (d) => "This is the quick plan of this device. The station gave no better one: " + d.because,
  opensNothing: () => "This plan opens nothing.",
  worseShort: (d) =>
    "This plan falls short in " +
    plural(d.plan, 0, en, {
      one: strictNumber("en", d.plan, 0, "plan") + " week",
      other: strictNumber("en", d.plan, 0, "plan") + " weeks",
    }) +
    "; each thing on its last day, " +
    d.lastDay +
    ", if hours and parts allowed it.",
  worseOpenings: (d) =>
    "This plan takes " +
    plural(d.plan, 0, en, {
      one: strictNumber("en", d.plan, 0, "plan") + " opening",
      other: strictNumber("en", d.plan, 0, "plan") + " openings",
    }) +
    "; each thing on its last day, " +
    d.lastDay +
    ", if hours and parts allowed it.",
  acceptAllTheSame: () => "Accept it all the same",
  acceptLater: () => "It can be accepted once planning has ended.",
};
export default words;
