/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetWords } from "#src/words/made/casualty/sheet.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: SheetWords = {
  fuelHazard: () => "Fuel smelt or seen",
  fuelStop: () => "Stop every pump and engine now.",
  fuelStopMore: (d) =>
    d.first + " No switches, no flame, no smoking. The log says all pumps off from " + d.at + ", by " + d.person + ".",
  fuelPeople: () => "People into open air,",
  fuelPeopleMore: (d) =>
    d.first +
    " upwind of hatches, lifejackets on, ready to leave her. Nobody below, not for a sounding either. Someone counts heads and calls for help.",
  fuelWind: () => "Let the wind clear her:",
  fuelWindMore: (d) =>
    d.first +
    " open hatches and doors by hand. Petrol vapour is heavier than air and lies low. No electric blower or fan; do not pump the fuel over the side.",
  nothingStarts: () => "Nothing starts again until the person in charge has found it clear.",
  clearBy: () => "Found clear: by whom, and how they know",
  wroteClear: () => "found clear of fuel",
  foundClear: () => "Found clear",
  aboutPeople: () => "People",
  aboutBoat: () => "The boat",
  aboutOther: () => "Other",
  notes: () => "People and notes",
  noteLine: (d) => d.at + " " + d.person + ": " + d.note,
  about: () => "About",
  note: () => "Note",
  noteHint: () => "People aboard, hurt, taken off; what the skipper says.",
  wroteNote: () => "note",
  writeNote: () => "Write the note",
  goingToHer: () => "Going to her",
  herName: () => "Her name, or what to call her",
  leftOut: () => "May be left out.",
  notOpened: () => "Not opened",
  openSheet: () => "Open her sheet",
  timeline: () => "Timeline",
  goThrough: () => "Go through it afterwards",
  timelinePdf: () => "Timeline as PDF",
  card: () => "Card for a stranger",
  goesDark: () => "This screen may go dark: the clocks go on, but no alarm will sound. Set a watch too.",
  entries: () => "Entries",
  linesNewest: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " line, newest first",
      other: strictNumber("en", d.count, 0, "count") + " lines, newest first",
    }),
  allLines: () => "All lines",
  entriesNewest: () => "Entries, newest first",
  what: () => "What",
  when: () => "When",
  who: () => "By",
  strike: () => "Strike",
  strikeLine: (d) => "Strike: " + d.kind + ", " + d.at,
  entryTold: (d) => d.kind + ": " + d.told,
  struck: (d) => "struck: " + d.reason,
  notWritten: () => "Not written down",
  wrote: (d) => "Written: " + d.what + ".",
  undo: () => "Undo",
  undone: () => "Undone at once.",
};
export default words;
