/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { DevicesWords } from "#src/words/made/station/devices.ts";

const words: DevicesWords = {
  listTitle: () => "Devices of the station",
  shutOut: () => "Shut out",
  areShutOut: () => "Shut out",
  device: () => "Device",
  thisDevice: (d) => d.device + " (this device)",
  joined: () => "Joined",
  lastLine: () => "Last line",
  lost: () => "Lost or stolen",
  notKnown: () => "not known here",
  writtenBy: (d) => d.at + " by " + d.who,
  signOutInstead: () => "To leave this device, sign out in Settings",
  shutOutNamed: (d) => "Shut out " + d.device,
  shutOutAsk: (d) => "Shut out " + d.device + "?",
  shutOutDo: () => "Shut it out",
  joinedLine: (d) => "Joined " + d.line + ".",
  joinedNotKnown: () => "Joined not known here.",
  shutOutMore: () =>
    "Everyone on it is signed out, and it cannot sign in again. Lines on it that were not sent stay on it.",
  why: () => "Why",
  whyHint: () => "Such as lost overboard.",
  notShutOut: () => "Not shut out",
};
export default words;
