/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SettingsLockWords } from "#src/words/made/station/settings-lock.ts";
import { number, plural, select, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: SettingsLockWords = {
  title: () => "Lock on this device",
  changing: (d) => "Changing the lock: " + d.done + " of " + d.all + " written anew",
  changingMore: () => "You may go on meanwhile. If it is interrupted it goes on when somebody opens this device.",
  offInsecure: () => "Off. It needs an address that begins with https: only there can a browser encrypt.",
  off: () =>
    "Off. Whoever can open this device reads everything kept here. Locked, it is encrypted until a PIN opens it.",
  notLocked: () => "Not locked",
  turnOn: () => "Lock this device by PIN",
  costs: () => "What it costs, and what it does not do",
  costPin: (d) =>
    "Nothing can be read or sent before a PIN is entered: at each start, after each reload of the page, and when nobody has touched it for " +
    d.minutes +
    " minutes. That time can be chosen once it is on.",
  costForgotten: () => "Where nobody knows a PIN that opens it any more, lines and photos that were not sent are lost.",
  costBeside: () =>
    "A fresh casualty sheet can always be written without opening. What was due on an open sheet or in a turnaround still calls, and says what it is once this is opened.",
  costGuess: (d) =>
    "A short PIN can be guessed by who has a copy of this device's memory. Each guess costs " +
    number("en", d.rounds, 0) +
    " rounds of SHA-256; at 15,000 guesses a second, as one fast graphics card makes them, all PINs of 6 figures take about a minute, of 8 about two hours, of 10 eight days, of 12 two years.",
  costOpen: () => "It does nothing while this device is open, nor against somebody who watches the PIN being entered.",
  costReadable: () =>
    "Ids, numbers and times of lines, the kits' patterns, this device's name, when an alarm is due, refuelling reminders and what is told before a launch stay readable. What was written before may be found in the browser's files for a while.",
  on: (d) =>
    plural(d.count, 0, en, {
      one: "On. What is kept here is encrypted; one person's PIN opens it. Whoever signs in here with a PIN can open it from then on.",
      other:
        "On. What is kept here is encrypted; the PINs of " +
        strictNumber("en", d.count, 0, "count") +
        " people open it. Whoever signs in here with a PIN can open it from then on.",
    }),
  lockNow: () => "Lock now",
  wrongPin: () => "This PIN does not open this device.",
  notTurnedOff: () => "Not turned off",
  turnOff: () => "Turn the lock off",
  pinToChange: () => "Your PIN, to change the lock",
  idle: () => "Locks itself when nobody has touched it for",
  idleHint: () => "On this device. What is being written is kept, and goes on where it was left.",
  idleNever: () => "It does not lock itself",
  idleHour: () => "1 hour",
  idleMinutes: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " minute",
      other: strictNumber("en", d.count, 0, "count") + " minutes",
    }),
  asAtFirst: () => "As set at first",
  whileOpen: () => "While a casualty sheet is open, or a clock of a turnaround runs here",
  stayOpen: () => "Stay open",
  stayOpenNote: () => "Nobody types a PIN with a boat sinking",
  lockAllTheSame: () => "Lock all the same",
  lockAllTheSameNote: () => "Alarms sound, and say what it is once opened",
  heldOpen: () => "A casualty sheet is open: this device does not lock itself now",
  onlyWhoOpens: () => "Only who can open it may choose that",
  pinThatOpens: () => "Your PIN, as it opens this device",
  pinThatOpensHint: () => "Whoever finds it open could choose this otherwise.",
  notOpened: () => "This does not open this device.",
  noPasskeyGiven: () => "No passkey was given.",
  passkeyCannot: () => "This passkey cannot open a lock. The PIN does.",
  notChanged: () => "Not changed",
  withPin: (d) =>
    select(d.wanted, {
      stay: "With this PIN, stay open meanwhile",
      never: "With this PIN, never lock by itself",
      other: "With this PIN, lock after " + d.time,
    }),
  withPasskey: (d) =>
    select(d.wanted, {
      stay: "With a passkey, stay open meanwhile",
      never: "With a passkey, never lock by itself",
      other: "With a passkey, lock after " + d.time,
    }),
  leaveIt: () => "Leave it as it is",
  passkeyOpens: () => "The passkey opens this device.",
  passkeyCannotPrf: () =>
    "This passkey cannot open a lock: it, or this browser, derives no secrets (PRF). The PIN does.",
  noPasskey: () => "You have no passkey at this station, or it cannot be asked just now. Add one under Signing in.",
  passkeysThatOpen: (d) =>
    plural(d.count, 0, en, {
      "0": "No passkey opens it. A passkey cannot be guessed; the PIN beside it still can.",
      other:
        "Passkeys that open it: " +
        strictNumber("en", d.count, 0, "count") +
        ". A passkey cannot be guessed; the PIN beside it still can.",
    }),
  letPasskey: () => "Let my passkey open it",
  notAdded: () => "Not added",
};
export default words;
