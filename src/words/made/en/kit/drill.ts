/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DrillWords } from "#src/words/made/kit/drill.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: DrillWords = {
  title: (d) => "Drill on " + d.kit,
  all: () => "All drills of the station",
  hasEnded: () => "The drill has ended",
  hasEndedMore: () => "Look again at the lines that the sealing names, then seal the kit. It is not ready before.",
  toSealing: () => "Go on to the sealing",
  aside: (d) => d.kit + " is set aside: it must not go",
  sinceFor: (d) => "Since " + d.at + ", for " + d.who + ".",
  nothingPlanted: () => "Nothing is written down as planted yet.",
  planted: () => "Faults are planted.",
  find: () => "Find what was planted",
  findMore: () =>
    "Turn the kit round as always, and raise a finding for whatever is wrong. How many faults there are nobody says.",
  goOn: () => "Go on with the turnaround",
  openIt: () => "Open it for the turnaround",
  noneOn: () => "No drill is on: a keeper begins one",
  turnaroundOpen: () => "A turnaround is open: close it before a drill",
  mustFlush: (d) => "It met " + d.what + " and is not flushed yet: flush it before a drill",
  mustFlushMore: () =>
    "Do its first flush now, and write it down on the kit's page with Flushed now. Then it can be set aside.",
  toKit: () => "To the kit's page",
  setAside: () => "Set it aside for a drill",
  setAsideMore: () =>
    "The kit does not count as ready from here on, until it has been turned round and sealed after the drill. Whoever plants the faults is not drilled, and does it unseen.",
  sealRead: () => "Seal number, read off the container",
  noSeal: () => "There is no seal on it",
  sealDiffers: () => "That is not what the record says",
  sealDiffersMore: () =>
    "Look at the seal once more. If it reads so, somebody has opened the kit since: begin all the same, and it stands in the log as read.",
  notBegun: () => "Not begun",
  begin: () => "Break the seal and begin the drill",
  whoDrilled: () => "Who is drilled?",
  plant: () => "Plant the faults",
  plantMore: () =>
    "Do this unseen. What you plant stays on this device: the station's log gets a number that proves it afterwards, and shows nothing of it before.",
  canInjure: () => "A planted fault can injure",
  canInjureMore: () =>
    "Plant nothing that can hurt who looks for it or who runs the pump: no fuel that leaks, no guard taken off, no gas alarm put out of use. If in doubt, leave it out.",
  sealAfter: () => "Seal put on after planting, if you put one on",
  notWritten: () => "Not written down",
  arePlanted: () => "They are planted",
  takeOffNamed: (d) => "Take " + d.fault + " off the list",
  takeOff: () => "Take off the list",
  add: () => "Add this fault to the list",
  onItem: () => "On which item?",
  chooseItem: () => "Choose an item",
  whichFault: () => "Which fault?",
  chooseFault: () => "Choose a fault",
  someKept: () => "Some of its faults are not offered: they could burn or shock who looks for them.",
  whatDone: () => "What exactly is done to it",
  whatDoneHint: () => "So that it can be taken out again by somebody who did not see it.",
  youPlanted: () => "What you planted",
  youPlantedMore: () => "Nobody else sees this before you reveal it. Turn the screen away from who is drilled.",
  show: () => "Show it, to write it down or to take it out",
  lettersWith: (d) => "Letters that go with the list: " + d.letters,
  lettersMore: () =>
    "Write both on paper. If this device is lost, the list typed again with these letters still proves what was planted; without them the drill cannot be compared.",
  notRevealed: () => "Not revealed",
  haveLooked: () => "They have looked: reveal what was planted",
  revealAsk: () => "Reveal what was planted?",
  revealDo: () => "Reveal it to everybody",
  notYet: () => "Not yet",
  revealMore: () => "Everybody sees it then, and it cannot be hidden again. What is not found by now counts as missed.",
  revealUnopened: () => "Nobody has opened the kit yet",
  revealUnopenedMore: () => "All that was planted would count as missed.",
  fromPaper: () => "Reveal from paper",
  onOtherDevice: () => "What was planted is on the device it was planted on",
  onOtherDeviceMore: () =>
    "It is best revealed there, by who planted it. If that device is lost, type the list and its letters from paper: it is taken only if it is the one that was planted.",
  typeList: () => "Type the list from paper",
  letters: () => "Letters that go with the list",
  revealList: () => "Reveal this list",
  whatPlanted: () => "What was planted",
  inKit: () => "Planted faults are in this kit",
  inKitMore: () => "A pump with a fault in it fails on the boat that needs it. Take each one out, then name it here.",
  takenOut: () => "Taken out.",
  takenOutNamed: (d) => "Taken out: " + d.fault,
  isTakenOut: () => "It is taken out",
  notPlanted: () => "Found, and not planted",
  nothingWrong: () => "Nothing was wrong there.",
  isRealPutRight: () => "It is real, and is put right like any other.",
  secondSays: () => "The second person says whether it is real.",
  isReal: () => "It is real",
  isNothing: () => "Nothing is wrong there",
  end: () => "End the drill",
  leftToDo: (d) =>
    "Left to do: " +
    plural(d.planted, 0, en, { other: d.planted + " planted" }) +
    " to take out, " +
    plural(d.found, 0, en, { other: d.found + " found" }) +
    " to judge.",
  thenSeal: () => "Then look again at the lines that the turnaround names, and seal it.",
  notEnded: () => "Not ended",
  listLost: () => "The list of what was planted is lost",
  callOff: () => "Call the drill off",
  listLostMore: () =>
    "The drill ends without its result, and the kit stays grounded until it has been turned round as a whole: search it for what was planted.",
  callOffMore: () =>
    "Nothing is written down as planted. The kit stays grounded until it has been turned round and sealed.",
  why: () => "Why",
  endNotCompared: () => "End it as not compared",
};
export default words;
