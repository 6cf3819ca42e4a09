/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { OutboxOtherWords } from "#src/words/made/frame/outbox-other.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural, strictNumber } from "#src/words/cases.ts";
const words: OutboxOtherWords = {
  goingBack: () => "Lost by the station, going back",
  goingBackMore: () =>
    "It once had these, and shows that by its own mark on them. They go back by themselves, whoever wrote them.",
  goingBackLines: () => "Lines going back to the station",
  onlyHere: () => "Only on this device",
  onlyHereNews: (d) =>
    plural(d.count, 0, en, {
      one: "Nothing shows that the station had this line",
      other: "Nothing shows that the station had these lines",
    }),
  onlyHereMore: () =>
    "Its copy is older than its mark on them, or its database is another one. Each goes back when the person who wrote it signs in on the device it was written on. Or an administrator says, here, that they are genuine: the station then takes them all, and its log says who said so.",
  onlyHereLines: () => "Lines only on this device",
  genuine: () => "They are genuine: take them in",
  askAdministrator: () => "Ask an administrator to sign in on this device. Until then, do not remove anything from it.",
  notTakenIn: () => "Not taken in",
  notReached: (d) => "The station was not reached: " + d.because + ".",
  differ: () => "Differ from the station's",
  differNews: () => "The station has other lines under the same ids",
  differMore: () =>
    "That does not happen by itself. Save everything held here to a file, and give it to an administrator.",
  differLines: () => "Lines that differ from the station's",
  broughtBack: () => "Brought back by devices",
  broughtBackMore: () =>
    "The station was put back to an earlier copy. It had lost these lines; devices that held them gave them back.",
  takenForOthers: () => "Taken in for other devices",
  takenForOthersMore: () =>
    "Lines of sheets that never came from the device that wrote them. Another device had them by code or file, and an administrator said that they are genuine.",
  when: () => "When",
  lines: () => "Lines",
  lineCount: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line",
      other: strictNumber("en", d.count, 0, "count") + " lines",
    }),
  from: () => "From",
  inUseBy: () => "In use by",
  shownBy: () => "Shown by",
  byMark: () => "the station's own mark",
  byWord: () => "their word",
  handed: () => "From other devices",
  handedMore: () =>
    "Taken by code or file. They are not proved: the station takes each from the device that wrote it, and then it goes from here by itself. Bring that device to a network.",
  handedLines: () => "Lines from other devices",
  removeHanded: () => "Remove them from this device",
  notRemoved: () => "Not removed",
  removeHandedAsk: () => "Remove the lines of other devices?",
  removeHandedDo: () => "Remove them here",
  removeHandedMore: () => "They do not count here any more. Where their own device is lost too, they are gone.",
  writerLost: () => "The device that wrote them is lost or broken?",
  writerLostMore: () =>
    "You may say that they are genuine. The station then takes them under their writers' names, and its log says for good that you said so. If that device comes after all, what it has of them is the same or is refused.",
};
export default words;
