/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { NoticesWords } from "#src/words/made/frame/notices.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: NoticesWords = {
  haveRead: () => "I have read this",
  emptied: () => "This device's memory was emptied",
  emptiedMore: (d) =>
    "It was in use until " +
    d.at +
    ". The browser, or somebody, has since removed what was kept. Lines that had been sent come back from the station. Lines that had not been sent are lost: look what is missing and write it again.",
  emptiedDo: () => "Put this app on the home screen, and do not clear the browser's data.",
  insecure: () => "At this address the app cannot be kept on the device",
  insecureMore: () =>
    "It is not encrypted, so the browser opens it only while the station can be reached. Ask whoever looks after the server for an address that begins with https. What you write is kept here all the same.",
  putBack: () => "The station was put back to an earlier copy of its log",
  putBackFound: (d) => "This device found out on " + d.at + ".",
  putBackNone: () => "It lacked no line that is on this device.",
  putBackCame: (d) =>
    plural(d.count, 0, en, {
      one:
        "It lacked " +
        strictNumber("en", d.count, 0, "count") +
        " line that this device holds; the station has it again.",
      other:
        "It lacked " +
        strictNumber("en", d.count, 0, "count") +
        " lines that this device holds; the station has every one of them again.",
    }),
  putBackOthers: () =>
    "What only other devices hold comes back when each of them next reaches the station: open the app on all of them.",
  putBackLacks: (d) =>
    plural(d.count, 0, en, {
      one: "It lacks " + strictNumber("en", d.count, 0, "count") + " line that is on this device.",
      other: "It lacks " + strictNumber("en", d.count, 0, "count") + " lines that are on this device.",
    }) + " Here they still count; other devices may not show what they say.",
  putBackAllMove: () => "They go back by themselves.",
  putBackSomeMove: (d) =>
    plural(d.count, 0, en, {
      one: "Of these, " + strictNumber("en", d.count, 0, "count") + " goes back by itself.",
      other: "Of these, " + strictNumber("en", d.count, 0, "count") + " go back by themselves.",
    }),
  putBackKeepOpen: () =>
    "Keep the app open and the network on until this says that they are there. Do not sign out and remove everything.",
  putBackAllStuck: () => "They do not go by themselves.",
  putBackSomeStuck: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " does not go by itself.",
      other: strictNumber("en", d.count, 0, "count") + " do not go by themselves.",
    }),
  putBackLink: () => "See which, and what to do",
  flaw: () => "The station's log does not add up. New lines from it are not taken here.",
  flawMore: () => "What you write here is kept and still sent. Others may see what this device does not.",
  otherHistory: () => "The station's log is not the one this device saw before",
  otherHistoryMore: () =>
    "Either the station was put back to an earlier copy, or somebody changed its log. Lines may be missing or changed. Tell whoever looks after the station, and save what this device kept: it is the proof.",
  otherHistorySave: () => "Save the proof to a file",
  otherHistoryKnow: () => "They know: go on from here",
  falseSummary: () => "The board this device showed at first was not what the log says",
  falseSummaryMore: (d) =>
    "It came from the station as a summary. Once all lines were here, on " +
    d.at +
    ", they did not bear it out: the summary was wrong, or the station has since lost lines. It has been thrown away, and what you see now comes from the lines alone. Look again at whatever you decided by the first board, and tell whoever looks after the server.",
  stationClockMore: () =>
    "Do not set this device by it. Lines keep the time of this device, and the station takes them; when they were received is noted by the wrong clock. Tell whoever looks after the station's computer to set its date, time and time zone to automatic.",
  stationAhead: (d) => "The station's clock is " + d.span + " ahead.",
  stationBehind: (d) => "The station's clock is " + d.span + " behind.",
};
export default words;
