/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { FrameWords } from "#src/words/made/frame/frame.ts";
import { number, plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: FrameWords = {
  skip: () => "Skip to the page",
  night: () => "Night",
  day: () => "Day",
  colours: () => "colours",
  pages: () => "Station",
  board: () => "Board",
  work: () => "Work due",
  findings: () => "Findings",
  casualty: () => "Casualty",
  stock: () => "Parts",
  people: () => "People",
  tables: () => "Tables",
  devices: () => "Devices",
  settings: () => "Settings",
  open: (d) => d.count + " open",
  allSent: () => "All sent",
  refused: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line refused",
      other: strictNumber("en", d.count, 0, "count") + " lines refused",
    }),
  refusedShort: (d) => d.count + " refused",
  linesNotSent: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line not sent since " + d.since,
      other: strictNumber("en", d.count, 0, "count") + " lines not sent since " + d.since,
    }),
  photosNotSent: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " photo not sent since " + d.since,
      other: strictNumber("en", d.count, 0, "count") + " photos not sent since " + d.since,
    }),
  notSentShort: (d) => d.count + " not sent",
  signedOut: () => "This device is signed out. What you write stays here and is not sent.",
  signInAgain: () => "Sign in again",
  clockOff: () => "This device's clock is off.",
  clockOffMore: () =>
    "Set its date, time and time zone to automatic. Lines dated ahead of the station's clock are refused.",
  refusedNews: (d) =>
    plural(d.count, 0, en, {
      one: "The station refused " + strictNumber("en", d.count, 0, "count") + " line from this device",
      other: "The station refused " + strictNumber("en", d.count, 0, "count") + " lines from this device",
    }),
  refusedMore: () => "What was written is seen on this device only.",
  refusedLink: () => "See why, and what to do",
  newer: () => "A newer version of the app is on this device",
  newerMore: () => "It takes over when you say so. What you wrote stays as it is.",
  newerUse: () => "Use the newer version",
  early: () => "This is the station's summary. Its log is still being fetched.",
  earlyMade: (d) => "Made by the station on " + d.at + ", and not yet checked on this device.",
  earlyCounts: (d) => number("en", d.here, 0) + " of " + number("en", d.of, 0) + " lines are here.",
  earlyMore: () =>
    "Until all are, histories, records, trends and older casualties are not whole, and what others write may show late. What you write is kept and sent as ever.",
  received: () => "Received",
  clockAhead: (d) => "This device's clock is " + d.span + " ahead of the station's.",
  clockBehind: (d) => "This device's clock is " + d.span + " behind the station's.",
  clockWasAhead: (d) => "This device's clock was " + d.span + " ahead of the station's.",
  clockWasBehind: (d) => "This device's clock was " + d.span + " behind the station's.",
};
export default words;
