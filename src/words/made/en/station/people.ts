/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PeopleWords } from "#src/words/made/station/people.ts";
import { plural, select, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: PeopleWords = {
  listTitle: () => "People of the station",
  qualifications: () => "Qualifications",
  drills: () => "Drills",
  visits: () => "Visits",
  gone: () => "No longer here",
  name: () => "Name",
  role: () => "Role",
  invitedOnly: () => "(invited, has written nothing yet)",
  change: () => "Change",
  changeNamed: (d) => "Change " + d.name,
  notChanged: () => "Not changed",
  saveChange: () => "Save the change",
  leaveAsIs: () => "Leave as it is",
  notNoted: () => "Not noted",
  hasLeft: (d) => d.name + " has left the station",
  hasLeftAsk: (d) => d.name + " has left?",
  noteLeft: () => "Note that they left",
  noteLeftMore: () => "They are signed out everywhere and cannot sign in. What they wrote stays, under their name.",
  invite: () => "Invite somebody",
  nameHint: () => "As written at the station, unlike any other there.",
  makeInvite: () => "Make an invite",
  inviteAgain: (d) => "Make a code to let " + d.name + " in again",
  inviteNeedsNetwork: () => "Inviting needs the network. The station cannot be reached.",
  passOn: () => "Pass this on. It is shown once and works once.",
  link: (d) => "Link: " + d.link,
  goodUntil: (d) => "Good until " + d.at + ".",
  copied: () => "Link copied",
  copy: () => "Copy the link",
  wrongPins: () => "Wrong PINs were tried",
  wrongPinsOf: (d) =>
    d.name +
    ": " +
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " wrong PIN",
      other: strictNumber("en", d.count, 0, "count") + " wrong PINs",
    }) +
    " on devices never used by them" +
    select(d.hasLast, { yes: ", the last " + d.last, other: "" }) +
    ".",
  needsInvite: () => "A new device of theirs needs an invite now.",
  wrongPinsMore: () => "Ask them whether that was themselves. A new invite sets the count back.",
  noPerson: () => "No such person",
  noPersonNews: () => "Nobody of this station has this address",
  record: () => "Training record",
  noneSet: () => "The station has set no qualification",
  whatHolds: (d) => "What " + d.name + " holds",
  recordFile: (d) => "training record of " + d.name,
  printRecord: () => "Print the training record",
  qualification: () => "Qualification",
  holdsUntil: () => "Holds it until",
  lastCounted: () => "Last counted",
  nothingYet: () => "nothing yet",
  seenBy: () => "May be seen doing it by",
  nobody: () => "nobody",
  neverHeld: () => "never held",
  lapsedOn: (d) => "lapsed on " + d.day,
  done: () => "Done",
  newestOf: (d) => "The newest " + d.shown + " of " + d.count + "; the paper has all.",
  doneLine: (d) => d.day + ": " + d.qualification + ". " + d.where + ", " + d.counts + ".",
  toldByMistake: () => "Told by mistake",
  notStruck: () => "Not struck",
  strikeAsk: () => "Strike what was told?",
  strikeDo: () => "Strike it",
  strikeMore: () => "It counts no more; the line stays in the log, struck by you.",
  elsewhere: () => "Done elsewhere",
  elsewhereMore: () => "A course, a drill evening, another station. It counts as told by you.",
  dayDone: () => "Day it was done",
  whatDone: () => "What was done, and where",
  whoSaw: () => "Who saw it, if somebody of this station",
  nobodyHere: () => "Nobody of this station",
  notWritten: () => "Not written down",
  write: () => "Write it down",
  time: () => "Time for kits",
  timeSaid: (d) =>
    d.name + ": " + d.hours + " h a week" + select(d.isAway, { yes: "; away " + d.days, other: "" }) + ".",
  timeAssumed: (d) =>
    d.name +
    ": hours not said, " +
    d.assumed +
    " counted" +
    select(d.isAway, { yes: "; away " + d.days, other: "" }) +
    ".",
  fromTo: (d) => d.from + " to " + d.to,
  timeOf: (d) => "Time of " + d.name,
  hoursOf: (d) => "Hours a week of " + d.name + ", 0 to 168",
  saveHours: () => "Save the hours",
  firstAway: () => "First day away",
  lastAway: () => "Last day away",
  ofNamed: (d) => "Of " + d.name + ".",
  saveAway: () => "Save the days away",
  notAway: (d) => "Not away from " + d.day,
  keeper: () => "Keeper",
  crew: () => "Crew",
  assessor: () => "Assessor",
  commander: () => "Commander",
  administrator: () => "Administrator",
  keeperNote: () => "Keeps the kits: everything about kits and findings, shuts out lost devices.",
  crewNote: () => "Works on kits: turnarounds, findings, musters, hand-overs.",
  assessorNote: () => "Looks at every place and raises findings.",
  commanderNote: () => "Reads everything.",
  administratorNote: () => "Keeps people, places and policy, and may do all that a keeper may.",
};
export default words;
