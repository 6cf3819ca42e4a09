/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { OutboxWords } from "#src/words/made/frame/outbox.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: OutboxWords = {
  title: () => "Not yet sent",
  offline: () => "No way to the station just now",
  offlineMore: () => "This device keeps trying by itself. Everything here is kept on its own disk meanwhile.",
  byOthers: () => "Written here by others",
  byOthersMore: () => "Sent when they sign in on this device again.",
  byOthersLines: () => "Lines of other people",
  waiting: () => "Waiting to be sent",
  waitingPhotos: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " photo, sent after the lines.",
      other: strictNumber("en", d.count, 0, "count") + " photos, sent after the lines.",
    }),
  waitingLines: () => "Lines waiting to be sent",
  allSent: () => "Nothing of yours is waiting",
  allSentMore: () => "Every line you wrote on this device is with the station.",
  byHand: () => "By hand",
  sendNow: () => "Try to send now",
  saveHeld: () => "Save everything held here to a file",
  line: () => "Line",
  about: () => "About",
  written: () => "Written",
  by: () => "By",
  refused: () => "Refused by the station",
  refusedMore: () => "What these say is seen on this device only.",
  sendAgain: () => "Send it again as it is",
  removeLine: () => "Remove it from this device",
  removeAsk: () => "Remove this line?",
  removeDo: () => "Remove it",
  removeMore: () => "The station never had it. Once removed here it is nowhere.",
  forClock: () => "Refused for the clock",
  forClockLines: () => "Lines refused for the clock",
  clockUnknown: () => "How far the clock was off when these were written is not known",
  clockUnknownMore: (d) =>
    "Nothing is lost: they stay here. Say when the first of them was really written, the one dated " +
    d.at +
    ". All are moved by the same difference and sent again; what they say stays as it is.",
  dayWritten: () => "Day it was written",
  timeWritten: () => "Time it was written",
  notYetCome: () => "That has not come yet.",
  putRight: () => "Put the times right and send",
  notPutRight: () => "Not put right",
  clockRefused: (d) => d.difference + " These lines were refused for it.",
  clockStillOff: (d) =>
    "It still is: first set this device's date, time and time zone to automatic. Then these lines can be sent again with their times put right by the same difference: the first, written at " +
    d.written +
    ", becomes " +
    d.corrected +
    ".",
  clockRightNow: (d) =>
    "It has been put right since. These lines can be sent again with their times put right by the same difference: the first, written at " +
    d.written +
    ", becomes " +
    d.corrected +
    ".",
  sendAsTheyAre: () => "It was the station's clock: send them as they are",
  putRightAsk: (d) =>
    plural(d.count, 0, en, {
      one: "Put " + strictNumber("en", d.count, 0, "count") + " line right?",
      other: "Put " + strictNumber("en", d.count, 0, "count") + " lines right?",
    }),
  putRightDo: () => "Put right and send",
  putRightMore: (d) => d.difference + " Their times are moved by that much. What they say stays as you wrote it.",
  kitUnknown: () => "a kit this device does not know",
  placeUnknown: () => "a place this device does not know",
  personUnknown: () => "a person this device does not know",
  partUnknown: () => "a part this device does not know",
  boatUnknown: () => "a rescue boat this device does not know",
  qualificationUnknown: () => "a qualification this device does not know",
  casualtyUnknown: () => "a casualty this device does not know",
  visit: () => "a visit",
  device: () => "a device",
  station: () => "the station",
  pattern: () => "a pattern",
};
export default words;
