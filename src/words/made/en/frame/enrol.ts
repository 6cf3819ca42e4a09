/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { EnrolWords } from "#src/words/made/frame/enrol.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
const words: EnrolWords = {
  title: () => "Enrol a kit",
  board: () => "Board",
  tables: () => "Tables",
  several: () => "Several kits of one pattern",
  notYou: () => "A keeper or an administrator enrols kits",
  pattern: () => "Built to the pattern",
  version: (d) => d.name + ", version " + d.version,
  keptAt: () => "Kept at",
  name: () => "Name",
  nameHint: () => "As people call it: Pump 4.",
  serial: () => "Serial",
  serialHint: () => "As on its plate.",
  seal: () => "Number of the seal on it",
  sealHint: () => "Read off the container. Leave empty where it has none.",
  datesMissing: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " date not read yet: it is asked in its first turnaround.",
      other: strictNumber("en", d.count, 0, "count") + " dates not read yet: each is asked in its first turnaround.",
    }),
  afterFirst: () => "A new kit stands ready after its first whole turnaround here. Only what was read is written down.",
  notEnrolled: () => "Not enrolled",
  enrolIt: () => "Enrol it",
  addPlace: () => "Add another place first",
  datesNow: (d) =>
    plural(d.count, 0, en, {
      one: "Dates you can read now, of " + strictNumber("en", d.count, 0, "count") + " thing",
      other: "Dates you can read now, of " + strictNumber("en", d.count, 0, "count") + " things",
    }),
  datesMore: () =>
    "Write down only what you read. Each date left out here is asked at the line of the first turnaround where the thing is in your hand.",
  lifeAt: (d) => d.place + "; " + d.life,
  whatDate: (d) => "What does the date of " + d.item + " say?",
  lastGoodOn: (d) => "Last good day on " + d.item,
  fittedOn: (d) => d.item + ": fitted on",
  madeOn: (d) => d.item + ": made on",
  manyTitle: () => "Enrol several kits",
  manyPattern: () => "All built to the pattern",
  manyMore: () =>
    "Dates and contents are left for the first turnaround of each, where the things are in your hand. Enter, in the last row, adds a row. What you write is kept on this device.",
  addRow: () => "Add a row",
  rowsWrong: (d) =>
    plural(d.count, 0, en, {
      one: strictNumber("en", d.count, 0, "count") + " row to put right; none is enrolled yet",
      other: strictNumber("en", d.count, 0, "count") + " rows to put right; none is enrolled yet",
    }),
  enrolMany: (d) =>
    plural(d.count, 0, en, {
      one: "Enrol " + strictNumber("en", d.count, 0, "count") + " kit",
      other: "Enrol " + strictNumber("en", d.count, 0, "count") + " kits",
    }),
  nextRow: () => "Next row",
  kitNumber: (d) => "Kit " + d.number,
  sealIfAny: () => "Seal, if it has one",
  takeOutRow: (d) => "Take out row " + d.number,
  takeOut: () => "Take out",
  place: () => "Place",
  choosePlace: () => "Choose a place",
  rowHasIt: (d) => "Row " + d.row + " has it too.",
  wanted: (d) => "Wanted: " + d.allowed + ". " + d.remedy,
};
export default words;
