/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StandingWords } from "#src/words/made/kit/standing.ts";
import { plural, select, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: StandingWords = {
  day: (d) =>
    d.day +
    " " +
    select(d.month, {
      "1": "January",
      "2": "February",
      "3": "March",
      "4": "April",
      "5": "May",
      "6": "June",
      "7": "July",
      "8": "August",
      "9": "September",
      "10": "October",
      "11": "November",
      other: "December",
    }) +
    " " +
    d.year,
  days: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " day",
      other: strictNumber("en", d.count, 0, "count") + " days",
    }),
  months: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " month",
      other: strictNumber("en", d.count, 0, "count") + " months",
    }),
  years: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " year",
      other: strictNumber("en", d.count, 0, "count") + " years",
    }),
  both: (d) => d.one + " and " + d.other,
  listed: (d) => d.some + ", " + d.next,
  met: (d) => select(d.what, { salt: "salt water", oil: "oil", sewage: "sewage", other: "fuel" }),
  noReason: () => "no reason given",
  line: (d) => "line " + d.line + ", " + d.asks,
  step: (d) => "step " + d.step,
  lowDelivery: (d) => d.line + ": delivers " + d.share + " % of what it should",
  lineWhy: (d) => d.line + " (" + d.why + ")",
  sound: () => "Sealed, in date and proved.",
  retired: (d) => "Retired: " + d.reason,
  notEnrolled: () => "Not yet enrolled.",
  enrol: () => "Enrol the kit.",
  handedOver: (d) => "Handed over to " + d.to + ".",
  handedOverUntil: (d) => "Handed over to " + d.to + ", expected back by " + d.back + ".",
  getBack: () => "Get it back, then do a turnaround.",
  returned: () => "Returned, and not yet turned round.",
  returnedMet: (d) => "Returned, and not yet turned round. It met " + d.met + ".",
  doTurnaround: () => "Do a turnaround.",
  lentNotBack: (d) => "Lent to " + d.to + ", not back: " + d.thing,
  lentNotCounted: (d) => "Lent to " + d.to + ", not counted: " + d.thing,
  stillLent: (d) => d.lent + ".",
  fetchLent: (d) => "Fetch what was lent: " + d.thing + ".",
  closedGrounded: (d) => "Closed as grounded: " + d.reason,
  closedNoReason: () => "Closed as grounded: no reason given.",
  isNew: () => "New, first turnaround to do.",
  doFirst: () => "Do the first turnaround.",
  open: () => "Open: a turnaround is under way.",
  finish: (d) =>
    "Finish the turnaround: " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line",
      other: strictNumber("en", d.count, 0, "count") + " lines",
    }) +
    " left.",
  notExamined: (d) => "Not examined: " + d.line,
  examineLine: (d) => "Examine what was not possible: " + d.line,
  sealSeen: (d) => "Seal seen " + d.seen + ", recorded " + d.expected + ".",
  sealMissing: (d) => "Seal missing, recorded " + d.expected + ".",
  noSeal: () => "No seal on record.",
  sealTwin: (d) => "Seal " + d.seal + " is on record for " + d.kit + " too.",
  openAndSeal: () => "Open it, count and examine everything, and seal it again.",
  unsound: () => "Container not sound at a muster.",
  unsoundNote: (d) => "Container not sound at a muster: " + d.note,
  examineContainer: () => "Examine the container and what is in it.",
  oldVersion: (d) => "Built to version " + d.version + " of its pattern; version " + d.newest + " is current.",
  rebuild: (d) => "Rebuild it to version " + d.newest + ".",
  owed: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " check",
      other: strictNumber("en", d.count, 0, "count") + " checks",
    }) +
    " of version " +
    d.version +
    " not made yet: last turned round under version " +
    d.under +
    ".",
  makeNew: (d) => "Make what is new in version " + d.version + ".",
  toSettle: (d) => "To settle: " + d.about,
  settle: (d) => "Settle: " + d.about,
  noPattern: (d) => "Pattern " + d.pattern + " is not here, so nothing can be said of this kit.",
  connectDevice: () => "On a device: connect it, so that it can fetch the pattern.",
  putPattern: (d) =>
    "On the station's computer: put the pattern file of " + d.pattern + " in the patterns folder and start again.",
  drillOn: (d) => "Set aside for a drill since " + d.day + ".",
  endDrill: () => "Name every planted fault removed, end the drill, then seal it.",
  stillPlanted: (d) => "Planted for a drill, and not named removed: " + d.name + ".",
  neverShown: () => "Faults were planted for a drill, and nobody showed which: not turned round as a whole since.",
  openedForDrill: () => "Opened for a drill, and not sealed since.",
  doWhole: () => "Do a whole turnaround.",
  outOfDateSince: (d) => d.item + " out of date since " + d.day + ".",
  outOfDate: (d) => d.item + " out of date",
  goesOutOfDate: (d) => d.item + " goes out of date",
  noDate: (d) => "No date on record for " + d.item + ".",
  readDate: (d) => "Read the date of " + d.item + ", or renew it.",
  unreadable: (d) => "The date of " + d.item + " cannot be read.",
  notRenewed: (d) => d.item + " not renewed at the last restow.",
  renew: (d) => "Renew " + d.item + ".",
  proofRunOld: (d) => "Proof run older than " + d.span + ": the last was on " + d.day + ".",
  proofRunNone: () => "No proof run on record.",
  proofRunDue: () => "proof run due",
  doProofRun: () => "Do a proof run.",
  turnaroundOld: (d) => "Turnaround older than " + d.span + ": the last was on " + d.day + ".",
  turnaroundNone: () => "No turnaround on record.",
  turnaroundDue: () => "turnaround due",
  musterOld: (d) => "Muster older than " + d.span + ": the last was on " + d.day + ".",
  musterNone: () => "No muster on record.",
  musterDue: () => "muster due",
  muster: () => "Muster it: read its seal.",
  finding: (d) => d.name + ".",
  findingUnproved: (d) => d.name + " (remedy not yet proved).",
  livedWith: (d) => "Lived with until " + d.day + " by " + d.by + ": " + d.name + ".",
  livedWithOnly: (d) => "Lived with only until " + d.day + ": " + d.name + ".",
  livingEnds: (d) => "living with " + d.name + " ends",
  mend: (d) => "Mend " + d.name + " and prove it.",
  fitBack: (d) => "Put " + d.item + " back in, or another, and prove it.",
  remedy: (d) => d.name + ": " + d.advice,
  prove: (d) => d.name + ": prove it.",
  proveAt: (d) => d.name + ": prove it at " + d.places + ".",
  placeLine: (d) => "line " + d.line,
  placeRun: (d) => "the run of line " + d.line,
  foundWrong: (d) => "Found wrong, and no finding raised: " + d.line,
  raiseOrAnswer: (d) => "Raise a finding, or answer again: " + d.line,
  changeFew: () => "Too few runs to tell a trend.",
  changeNone: (d) => "No clear trend over " + d.runs + " runs.",
  changePulls: (d) =>
    select(d.way, { rising: "More", other: "Fewer" }) + " pulls, by about " + d.by + ", over " + d.runs + " runs.",
  changePrime: (d) =>
    select(d.way, { rising: "Slower", other: "Quicker" }) + " by " + d.seconds + " s over " + d.runs + " runs.",
  changeVolume: (d) =>
    select(d.way, { rising: "More", other: "Less" }) + " by " + d.volume + " over " + d.runs + " runs.",
  changeDelivery: (d) =>
    select(d.way, { rising: "More", other: "Less" }) +
    " by " +
    d.share +
    " % of the expected flow over " +
    d.runs +
    " runs.",
  watch: (d) =>
    select(d.what, { pulls: "Pulls", prime: "Prime", fuel: "Fuel burnt", water: "Water found", other: "Delivery" }) +
    ": " +
    d.change +
    " Last " +
    d.last +
    "; at most " +
    d.limit +
    ".",
  watchShare: (d) => "Delivery: " + d.change + " Last " + d.last + " %; noted below " + d.limit + " %.",
};
export default words;
