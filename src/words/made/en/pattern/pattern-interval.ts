/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternIntervalWords } from "#src/words/made/pattern/pattern-interval.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: PatternIntervalWords = {
  title: (d) => "How often to open: " + d.pattern,
  counting: () => "Counting what the log says.",
  yearPlanned: () => "The year planned",
  reportCard: () => "Report card of the pattern",
  early: () => "Not all lines are on this device yet",
  earlyMore: () =>
    "Openings, findings and calls are counted from every line there ever was. How often to open is told once all lines are here.",
  nothing: () => "Nothing to go by yet",
  nothingMore: () =>
    "No kit of this pattern has lain closed between two openings. One opening of each would be a beginning.",
  logSays: () => "What the log says",
  weight: () => "One kit that fails on the night: how many hours of work would sparing that be worth?",
  weightHint: () =>
    "This is your judgement; the answer turns on it. Four times the weight about halves the interval, so weights that are tenfold apart lie far apart in it.",
  weightOther: () => "Another weight, in hours of work",
  rounded: () =>
    "The best is worked out to the day for the weight that you give. What is advised is that in whole days to a fortnight, in weeks to half a year, in months beyond, always rounded down: no other steps are weighed.",
  weightHours: (d) => d.hours + " hours",
  correctCosts: () => "Correct the costs first: a figure among them is not taken.",
  notWritten: () => "Not written down",
  accept: (d) => "Accept " + d.every + " for the plan",
  restsOn: () => "What that rests on",
  proposalOnly: () =>
    "A proposal, no more: it knows no fault that no check sees, and none that grows with age. The rule of the unit's own manual stands first, and nothing here is ever longer than it.",
  accepted: () => "Accepted for the plan",
  acceptedMore: (d) =>
    "Opened " +
    d.every +
    ": accepted by " +
    d.who +
    " on " +
    d.day +
    ". The plan of the year opens its kits by then; it grounds none, and the manual's own interval stands beside it.",
  backToManual: () => "Go back to the manual's interval",
  costs: (d) => "What else an opening costs: " + d.count + " of " + d.all + " stated",
  costsNone: () => "What else an opening costs: nothing stated",
  costsMore: () => "Your judgement too. What is left empty is not counted, and the answer says so.",
  costParts: () => "Parts of one opening: worth how many hours of work?",
  costWear: () => "Wear of one start: worth how many hours?",
  costDay: () => "One day without the kit: worth how many hours?",
  costHarmed: () => "Of 1000 openings, how many leave a fault behind?",
  standingNone: () => "Neither the unit's manual nor the station says how often it is opened.",
  standing: (d) => "It is to be opened " + d.every + ".",
  standingManual: (d) => "It is to be opened " + d.every + ", as the unit's manual has it.",
  standingBeside: (d) => "It is to be opened " + d.every + "; the unit's manual has " + d.manual + ".",
  everyDays: (d) => plural(d.count, 0, en, { "1": "every day", other: "every " + d.count + " days" }),
  everyWeeks: (d) => "every " + d.count + " weeks",
  everyMonths: (d) => plural(d.count, 0, en, { "1": "every month", other: "every " + d.count + " months" }),
  everyYears: (d) => plural(d.count, 0, en, { "1": "every year", other: "every " + d.count + " years" }),
  whatIsDone: () => "what is done now",
  cannotTell: (d) =>
    "Too little to tell whether " + d.now + " is too often or too seldom: it would take " + d.more + ".",
  keepTo: (d) => "Keep to " + d.now + ": nothing else would be better by more than one part in twenty.",
  shorter: (d) => "Open it " + d.every + " rather than " + d.now + ".",
  longer: (d) => "To open it " + d.every + " would do; the rule now is " + d.now + ".",
  manualStands: (d) =>
    "Keep to " +
    d.now +
    ": by the log longer would do, but the manual stands first. To show its maker that half as long again would do, it would take " +
    d.more +
    " without a fault.",
  notSeen: (d) =>
    "Keep to " +
    d.now +
    ": if faults went on coming at the same rate longer would do, but no kit of it has lain closed nearly so long. Open one after as long as the rule now is, and the log can tell.",
  moreThan: (d) => "more than " + d.count + " more openings",
  moreAbout: (d) =>
    "about " + plural(d.count, 0, en, { one: d.count + " more opening", other: d.count + " more openings" }),
  best: (d) => "By these figures the best lies between " + d.shortest + " and " + d.longest + ", nine times in ten.",
  beyondSeen: (d) =>
    "No kit lay closed for longer than " +
    d.seen +
    ": what lies beyond supposes that faults go on coming at the same rate, and nothing seen bears that out. Nothing longer than " +
    d.bound +
    " is proposed, half as long again as was seen.",
  flat: (d) =>
    "Of what is likeliest, about " +
    d.middle +
    ", anything from " +
    d.from +
    " to " +
    d.to +
    " costs less than one part in twenty more.",
  yearCosts: (d) => "At the likeliest best, one kit and year weigh as much as " + d.costs + ", and " + d.last + ".",
  hours: (d) => d.hours + " hours",
  costOpening: (d) => d.hours + " opening it",
  costInParts: (d) => d.hours + " in parts",
  costInWear: (d) => d.hours + " in wear",
  costNotReady: (d) => d.hours + " for days without it",
  costNights: (d) => d.hours + " for nights on which it fails",
  tenYears: () => "more than ten years",
  evidenceLooks: (d) =>
    plural(d.looks, 0, en, { one: d.looks + " opening", other: d.looks + " openings" }) +
    " of " +
    plural(d.kits, 0, en, { one: d.kits + " kit", other: d.kits + " kits" }) +
    " after lying closed for " +
    d.years +
    " years in all: " +
    plural(d.found, 0, en, { one: d.found + " fault", other: d.found + " faults" }) +
    " that would have stopped the kit.",
  evidenceRate: (d) =>
    "So in ten years of lying closed " +
    d.low +
    " to " +
    d.high +
    " such faults come, nine times in ten, at a steady rate; kits are taken as alike.",
  startsNotCounted: () =>
    "How often it fails when it is asked to start was never counted: half the times is reckoned with.",
  startsFail: (d) =>
    "Asked to start " +
    d.times +
    ", it fails " +
    d.low +
    " to " +
    d.high +
    " times in 100, nine times in ten, whatever its age, just opened or not.",
  calls: (d) =>
    "Put to work on casualties " +
    d.times +
    ": " +
    d.low +
    " to " +
    d.high +
    " calls a year on one kit, nine times in ten; reckoned with " +
    d.mean +
    ".",
  started: (d) => "It is started " + d.times + ".",
  times: (d) => plural(d.count, 0, en, { "1": "once", "2": "twice", other: d.count + " times" }),
  allStated: () => "All that an opening costs was stated.",
  notCounted: (d) => "Not counted, as nobody stated it: " + d.costs + ".",
  ofParts: () => "parts",
  ofWear: () => "wear of starts",
  ofDays: () => "days without the kit",
  ofHarmed: () => "faults that an opening leaves behind",
  noDrill: () => "No drill planted such a fault: every opening is taken to find each of them.",
  drillsFew: (d) =>
    "Of " +
    plural(d.planted, 0, en, { one: d.planted + " such fault", other: d.planted + " such faults" }) +
    " planted in drills the opening found " +
    d.found +
    ": fewer than " +
    d.least +
    " tell too little, and every opening is taken to find each.",
  drills: (d) =>
    "Of " +
    plural(d.planted, 0, en, { one: d.planted + " such fault", other: d.planted + " such faults" }) +
    " planted in drills the opening found " +
    d.found +
    ", so " +
    d.low +
    " to " +
    d.high +
    " of 10, nine times in ten. What one overlooks the next may find; counted with " +
    d.mean +
    " of 10.",
  workOut: (d) =>
    "By the pattern an opening takes " +
    d.hours +
    " hours of work, and the kit is out for " +
    d.out +
    " hours and for what it hangs to dry beyond that.",
  workTimed: (d) =>
    "By the pattern an opening takes " +
    d.hours +
    " hours of work; seal to seal the kit was out for " +
    d.out +
    " hours, on average of " +
    d.count +
    " openings.",
  reallyOpened: (d) =>
    "By the log it is really opened about every " +
    d.median +
    ": " +
    plural(d.count, 0, en, {
      "1": "so long it was the one time from one opening of a kit to its next",
      other:
        "half of the " +
        d.count +
        " times from one opening of a kit to its next lie between " +
        d.from +
        " and " +
        d.to,
    }) +
    ".",
  neverTwice: () => "No kit of it was opened twice yet: how often it is really opened cannot be told.",
};
export default words;
