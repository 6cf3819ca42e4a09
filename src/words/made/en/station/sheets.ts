/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SheetsWords } from "#src/words/made/station/sheets.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { number, plural } from "#src/words/cases.ts";
const words: SheetsWords = {
  in: () => "In",
  inMore: () => "People, kits, parts and past turnarounds from a CSV file or a workbook: all rows of it, or none.",
  takeIn: () => "Take in from a sheet",
  enrolMany: () => "Enrol several kits on one page",
  out: () => "Out",
  outMore: () =>
    "Each as CSV, made of what this device holds, also without a network. Days are written as 2027-03-14. A cell that a spreadsheet would take for a formula is led by an apostrophe.",
  early: () => "Not all lines are on this device yet",
  earlyOut: () => "A table saved now is of what is here.",
  earlyIn: () => "A sheet is judged by what the station has already. Wait until all of it is here.",
  notSaved: () => "Not saved",
  saveAs: (d) => "Save " + d.table + " as CSV",
  whoTakesIn: () => "A keeper or an administrator takes sheets in",
  whatIsOn: () => "What is on the sheet",
  people: () => "People",
  peopleMore: () => "Name and role. A way in is made for each afterwards, on the page of people.",
  kits: () => "Kits",
  kitsMore: () =>
    "Name, serial, pattern, place, seal, and the dates of what is in them. Each stands as new until its first turnaround.",
  parts: () => "Parts and what is on the shelves",
  partsMore: () => "Number and name, and by place how many there are, with lot and printed date.",
  turnarounds: () => "Past turnarounds",
  turnaroundsMore: () =>
    "Kit and day, by whom, how it went. They stand in the history and make no kit ready. Take the kits in first.",
  sortsBetween: () => " and ",
  administratorOnly: (d) => d.sorts + ": only an administrator takes those in.",
  file: () => "The file",
  taken: (d) => plural(d.count, 0, en, { one: d.count + " row", other: d.count + " rows" }) + " taken in, all of them",
  takenMore: () =>
    "They are on this device, marked as told by the sheet and taken in by you. The station gets them next.",
  see: () => "See them",
  nothingTaken: () => "Nothing was taken in",
  nothingNew: () => "Nothing on it is new: all of it is here already, as it says.",
  takeRows: (d) => plural(d.count, 0, en, { one: "Take in the 1 row", other: "Take in all " + d.count + " rows" }),
  reading: () => "Reading the file",
  chooseAnother: () => "Choose another file, or the mended one",
  choose: () => "Choose the file",
  limits: (d) =>
    "CSV or XLSX, at most " +
    number("en", d.rows, 0) +
    " rows and " +
    d.megabytes +
    " MB. It is read on this device; nothing is sent and nothing is written until you say so.",
  notRead: () => "Not read",
  fileRows: (d) => d.file + ": " + plural(d.count, 0, en, { one: d.count + " row", other: d.count + " rows" }) + ".",
  whichSheet: () => "Which sheet of the workbook",
  whichColumn: () => "Which column is which",
  whichColumnMore: () => "Guessed from the headings. Put right what is wrong; what is left out is not taken in.",
  empty: () => "empty",
  example: (d) => "such as " + d.example,
  columnLeftOut: () => "left out",
  sameForAll: (d) => d.field + ", the same for every row",
  noColumn: () => "No column says it.",
  chooseOne: () => "Choose one",
  none: () => "none",
  sayColumns: () => "Say first which column is which",
  wanted: (d) => "Wanted: " + d.allowed + ".",
  whatIsDate: (d) => "What is " + d.text + ", in this sheet?",
  dateHint: () => "Day and month could stand either way round. It holds for every date of the sheet.",
  dayFirst: (d) => d.day + ": the day comes first",
  monthFirst: (d) => d.day + ": the month comes first",
  cannotTake: (d) =>
    plural(d.count, 0, en, { one: d.count + " row", other: d.count + " rows" }) + " cannot be taken in, so none is",
  mendMore: () =>
    "Mend them here, or in the sheet: save it, and choose it again. What you said of the columns stands; what is mended here leaves the file as it is.",
  badRows: () => "Bad rows",
  moreRows: (d) =>
    "And " +
    plural(d.count, 0, en, { one: d.count + " more row", other: d.count + " more rows" }) +
    ". They stand here once these are mended.",
  row: (d) => "Row " + d.row,
  rowColumn: (d) => "Row " + d.row + ", " + d.column,
  fault: (d) => d.at + ": got " + d.got + "; allowed: " + d.allowed + ".",
  leftOutByYou: (d) => "Left out by you: " + plural(d.count, 0, en, { one: "row", other: "rows" }) + " " + d.rows,
  putBack: (d) => plural(d.count, 0, en, { one: "Put it back", other: "Put them back" }),
  rowHead: () => "Row",
  toKnow: () => "To know",
  notesBetween: () => "; ",
  asRead: () => "As it was read",
  rowsAsRead: () => "Rows as they were read",
  showAll: (d) => plural(d.count, 0, en, { other: "Show all " + d.count + " rows" }),
  changeRow: (d) => "Change row " + d.row,
  change: () => "Change",
  checkAgain: (d) => "Check row " + d.row + " again",
  leaveOut: (d) => "Leave row " + d.row + " out",
};
export default words;
