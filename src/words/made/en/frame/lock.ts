/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LockWords } from "#src/words/made/frame/lock.ts";

const words: LockWords = {
  title: () => "This device is locked",
  locked: () => "Locked.",
  lockedMore: () => "Without the station's kits, boats and sheets. Kept here in the clear, not sent.",
  takingWater: () => "Boat taking water",
  yourPin: () => "Your PIN",
  yourPinHint: () => "Of anybody who has locked or signed in on this device. No network is needed.",
  notOpened: () => "Not opened",
  open: () => "Open this device",
  openPasskey: () => "Open with a passkey",
  wrongPin: () => "This PIN does not open this device",
  wrongPinMore: () =>
    "Nothing is lost, and you may try as often as you like. A PIN changed on another device is the old one here.",
  wrongPasskey: () => "The passkey did not open this device",
  wrongPasskeyMore: () => "Try again, or enter a PIN.",
  whileLocked: () => "While it is locked",
  sheetBegun: () => "A sheet was begun here. It goes on where it was left, and is taken in once this is opened.",
  worksBeside: () => "A fresh casualty sheet and the card for strangers work, without the station's kits and boats.",
  refuelCalls: () => "A refuelling reminder that was set on this device still calls.",
  dueCalls: () =>
    "What was due on an open sheet, and waits of a turnaround, still call; what they are about shows once it is opened.",
  sendingStands: () => "Sending and fetching stand still until it is opened.",
  nobody: () => "Nobody can open it",
  nobodyMore: () =>
    "Anybody's PIN that opened it before still does. If none is left, remove what is locked, have an administrator invite you, and sign in anew: the station's log comes back.",
  remove: () => "Remove what is locked",
  notRemoved: () => "Not removed",
  removeAsk: () => "Remove everything that is locked?",
  removeDo: () => "Remove it",
  removeLoses: () => "Lines and photos on this device that were not sent are lost. Nobody can say how many those are.",
  removeKeeps: () => "What was sent is with the station. A sheet written without opening stays.",
  due: () => "Something is due: unlock to see",
  now: () => "now",
  over: (d) => d.duration + " over",
  dueMore: () => "What it is stands behind the lock. It calls again in a minute, until this device is opened.",
  inAMinute: () => "In a minute",
  unlock: () => "Unlock to see",
  stopAlarm: () => "Stop the alarm only",
  alarmSet: () => "An alarm is set on this device",
  callsAt: (d) => "It calls at " + d.time + ". What it is about shows once this is opened.",
  wasDueAt: (d) => "It was due at " + d.time + ". What it is about shows once this is opened.",
  touchOnce: () => "Touch this screen once: until then the browser may keep it silent. Leave the screen on.",
};
export default words;
