/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { BoardWords } from "#src/words/made/station/board.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: BoardWords = {
  title: () => "Board",
  find: () => "Find a kit by name or serial",
  foundNone: () => "No kit here has that in its name or serial",
  year: () => "The year ahead, if nobody does anything",
  readLabel: () => "Read a label",
  enrol: () => "Enrol a kit",
  place: (d) => d.place + ": " + d.notReady + " not ready, " + d.ready + " ready",
  retired: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " retired kit",
      other: strictNumber("en", d.count, 0, "count") + " retired kits",
    }),
  noKits: () => "No kit is enrolled yet",
  placesSoFar: (d) =>
    "The station's places so far: " +
    d.places +
    ". Add the others first, each with how many ready kits it must hold; then enrol the kits.",
  keeperTakes: () => "A keeper enrols the first kit.",
  places: () => "Places of the station",
  strengths: () => "Strength by place",
  endsFirst: () => "Ends first:",
  endsAfter: (d) => ", after " + d.day + ": " + d.what + ".",
  strengthHolds: (d) => "Strength holds everywhere until " + d.day + ".",
  fallsShort: () => "Falls short, if nobody does anything:",
  moreChanges: (d) =>
    plural(d.count, 0, en, {
      one: "and " + strictNumber("en", d.count, 0, "count") + " more change within the year",
      other: "and " + strictNumber("en", d.count, 0, "count") + " more changes within the year",
    }),
  placesShown: () => "Places shown",
  allPlaces: () => "All places",
  noKitsHere: () => "No kits here yet",
  notReady: (d) => "Not ready, " + d.count,
  ready: (d) => "Ready, " + d.count + ", what ends first on top",
  musterPlace: (d) => "Muster " + d.place,
  showMore: (d) =>
    plural(d.count, 0, en, {
      one: "Show " + strictNumber("en", d.count, 0, "count") + " more kit",
      other: "Show " + strictNumber("en", d.count, 0, "count") + " more kits",
    }),
  drawMore: (d) =>
    plural(d.count, 0, en, {
      one: "Draw " + strictNumber("en", d.count, 0, "count") + " more kit",
      other: "Draw " + strictNumber("en", d.count, 0, "count") + " more kits",
    }),
  reasonsMore: (d) => "And " + d.count + " more.",
  nothingEnds: () => "Nothing dated will end this.",
  toRestore: (d) => "To restore: " + d.what,
  toWatch: (d) => "To watch: " + d.what,
  yearOf: (d) =>
    "Standing of the kits at " + d.place + " from " + d.from + " to " + d.to + "; the same in the table below.",
  asTable: (d) => d.place + " as a table",
  yearAt: (d) => "The year ahead at " + d.place,
  kit: () => "Kit",
  from: () => "From",
  to: () => "To",
  standing: () => "Standing",
  because: () => "Because",
  ofReady: (d) => "Of the ready kits " + d.enough + ".",
  shareNothing: () => "They share no delivery of fuel, no lot and no hands that the log knows of.",
  sharedStrikes: () =>
    "What is shared is taken to strike all who share it in one failure of ten: that is judgement, not the log.",
};
export default words;
