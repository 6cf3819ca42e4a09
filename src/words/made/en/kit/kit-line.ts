/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { KitLineWords } from "#src/words/made/kit/kit-line.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: KitLineWords = {
  today: () => "today",
  days: (d) =>
    plural(d.count, 0, en, {
      "0": "today",
      one: strictNumber("en", d.count, 0, "count") + " day",
      other: strictNumber("en", d.count, 0, "count") + " days",
    }),
  finish: () => "Turnaround to finish",
  turnaround: () => "Turnaround",
  fetch: () => "Away: to fetch",
  lent: () => "Lent with it, not back",
  settle: () => "Difference to settle",
  other: () => "To put right",
  proofRun: () => "Proof run",
  mend: () => "Finding to mend",
  prove: (d) =>
    plural(d.count, 0, en, {
      "0": "Prove what was mended",
      one: "Prove at line " + d.lines + " what was mended",
      other: "Prove at lines " + d.lines + " what was mended",
    }),
  renew: () => "Item to renew",
  muster: () => "Muster",
  flush: () => "Flush",
  plannedOpening: () => "Planned opening",
  severalOf: (d) => d.what + ", " + d.count,
  andAlso: (d) => d.first + "; " + d.next,
  nowGrounds: () => "Now: it grounds the kit.",
  nowOverdue: () => "Now: it is overdue.",
  wasDueBy: (d) =>
    plural(d.days, 0, en, {
      one: "Was to be done by " + d.day + ", " + strictNumber("en", d.days, 0, "days") + " day ago.",
      other: "Was to be done by " + d.day + ", " + strictNumber("en", d.days, 0, "days") + " days ago.",
    }),
  dueBy: (d) =>
    plural(d.days, 0, en, {
      "0": "By " + d.day + " (today).",
      one: "By " + d.day + " (" + strictNumber("en", d.days, 0, "days") + " day).",
      other: "By " + d.day + " (" + strictNumber("en", d.days, 0, "days") + " days).",
    }),
  effort: (d) =>
    plural(d.people, 0, en, {
      one: "About " + d.duration + ", " + strictNumber("en", d.people, 0, "people") + " person.",
      other: "About " + d.duration + ", " + strictNumber("en", d.people, 0, "people") + " people at once.",
    }),
  part: (d) => d.name + " × " + d.count,
  partOnShelf: (d) => d.name + " × " + d.count + ", on the shelf",
  partSomeOnShelf: (d) => d.name + " × " + d.count + ", " + d.there + " on the shelf",
  countWet: (d) => d.count + " back and not flushed",
  countOverdue: (d) => d.count + " overdue",
  countWeek: (d) => d.count + " this week",
  countMonth: (d) => d.count + " within a month",
  nothingDue: () => "Nothing is due within a month",
  flushLeft: (d) => "First flush: " + d.duration + " left, by " + d.time + ".",
  flushOverdue: (d) => "First flush overdue by " + d.duration + ": it was due by " + d.time + ". Flush now.",
  hangingUntil: (d) => "hanging until " + d.until,
  hungEnough: () => "has hung long enough",
  grounds: () => "Grounds the kit",
  limits: () => "May go, with a limit",
  limitsTo: (d) => "May go, with a limit: " + d.limit,
  notes: () => "Noted; the kit may still go",
  somethingElse: () => "something else",
  needsRemedy: () => "Nothing done yet",
  needsProof: () => "Remedy made, not proved",
  livedWith: () => "Lived with",
  closed: () => "Closed",
  workDue: () => "Work due",
  allWorkDue: () => "All work due",
  timeToday: (d) => d.time + " today",
  timeTomorrow: (d) => d.time + " tomorrow",
  timeOn: (d) => d.time + " on " + d.day,
  ready: (d) => d.count + " ready",
  readyLimited: (d) => d.count + " ready (" + d.limited + " with limits)",
  noneWanted: (d) => d.ready + ", none wanted",
  ofWanted: (d) => d.ready + " of " + d.must + " wanted",
  ofWantedShort: (d) => d.ready + " of " + d.must + " wanted, " + d.short + " short",
  until: (d) => "Until " + d.day + ": " + d.what,
  dayAhead: (d) =>
    plural(d.days, 0, en, {
      "0": d.day + " (today)",
      one: d.day + " (" + strictNumber("en", d.days, 0, "days") + " day)",
      other: d.day + " (" + strictNumber("en", d.days, 0, "days") + " days)",
    }),
  moreThings: (d) =>
    plural(d.count, 0, en, {
      one: "And " + strictNumber("en", d.count, 0, "count") + " more thing.",
      other: "And " + strictNumber("en", d.count, 0, "count") + " more things.",
    }),
  about: (d) => "About " + d.duration + ".",
  shortNow: (d) => "now: " + d.holds + " ready of " + d.must,
  shortNowUntil: (d) => "now, until " + d.until + ": " + d.holds + " ready of " + d.must,
  shortFrom: (d) => "from " + d.from + ": " + d.holds + " ready of " + d.must,
  shortFromTo: (d) => "from " + d.from + " to " + d.until + ": " + d.holds + " ready of " + d.must,
  goOnOpen: () => "Turnarounds that are open",
  goOn: (d) => "Go on: " + d.kit + ", " + d.where,
  goOnClock: (d) => "Go on: " + d.kit + ", " + d.where + ", " + d.clock,
  everyLine: () => "every line is answered",
  line: (d) => "line " + d.line,
  over: (d) => d.time + " over",
  gone: (d) => d.time + " gone",
  left: (d) => d.time + " left",
  otherMode: () => "Something else",
};
export default words;
