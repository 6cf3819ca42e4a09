/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternFormWords } from "#src/words/made/pattern/pattern-form.ts";
import { en } from "@messageformat/runtime/lib/cardinals";
import { plural, select } from "#src/words/cases.ts";
const words: PatternFormWords = {
  kind: () => "Kind",
  kindOption: (d) => d.word + ": " + d.about,
  notSaid: () => "Not said.",
  sayIt: (d) => "Say it: " + d.field,
  takeOutField: (d) => "Take out: " + d.field,
  anotherId: () => "Another: its id",
  addIt: () => "Add it",
  moveUp: (d) => "Move up: " + d.entry,
  up: () => "Up",
  moveDown: (d) => "Move down: " + d.entry,
  down: () => "Down",
  copyNamed: (d) => "Copy: " + d.entry,
  copy: () => "Copy",
  takeOutNamed: (d) => "Take out: " + d.entry,
  takeOut: () => "Take out",
  takeOutAsk: (d) => "Take out “" + d.entry + "”?",
  takeOutDo: () => "Take it out",
  noUses: () => "Nothing else in the pattern points at it.",
  uses: () => "These point at it, and would point at nothing until they are changed:",
  bringsBack: () => "“Take the last change back” brings it back as it was.",
  number: (d) => "Number " + d.number,
  wholeFromTo: (d) => "A whole number from " + d.least + " to " + d.most + ".",
  fromTo: (d) => "From " + d.least + " to " + d.most + ".",
  atMost: (d) => "At most " + d.most + " characters.",
  suchAs: (d) => "Such as " + d.examples + ".",
  under: (d) => d.over + ": " + d.field,
  counts: (d) =>
    plural(d.errors, 0, en, { "0": "No errors", one: d.errors + " error", other: d.errors + " errors" }) +
    ", " +
    plural(d.warnings, 0, en, { "0": "no warnings", one: d.warnings + " warning", other: d.warnings + " warnings" }) +
    ", " +
    plural(d.notes, 0, en, { "0": "no notes", one: d.notes + " note", other: d.notes + " notes" }),
  whoIssues: () => "Keepers and administrators issue patterns",
  giveFile: () => "Download the file and give it to one of them.",
  layOut: () => "Lay it out for a dry run",
  dryRun: () => "Dry run",
  laidOut: () => "Laid out: open “Walk a draft” under Patterns on any device of the station.",
  notSent: () => "Not sent",
  issueVersion: (d) => "Issue version " + d.version + " to the station",
  issueAsk: (d) => "Issue version " + d.version + "?",
  issueDo: () => "Issue it",
  notYet: () => "Not yet",
  issueMore: () =>
    "Every device has it with its next exchange, and it stays: what is wrong in it is mended by another version.",
  olderKits: (d) =>
    "These kits stay built to the version they are, and are ready with limits at most until a keeper moves each: " +
    d.kits +
    ".",
  lintReads: () => "The lint is reading it.",
  lintErrors: (d) =>
    "Not to be issued yet: " +
    plural(d.count, 0, en, { "1": "one error", other: d.count + " errors" }) +
    " of the lint.",
  offline: () => "Not to be issued now: the station cannot be reached. The draft stays on this device.",
  unreachable: (d) => "The station cannot be reached: " + d.because + ".",
  unreachableMore: () => "The draft stays on this device. Issue it once there is a network.",
  makeVersion: (d) => "Make it version " + d.version,
  errors: () => "Errors",
  errorsMore: () => "With an error it is not issued.",
  warnings: () => "Warnings",
  warningsMore: () => "To be read; it can be issued.",
  notes: () => "Notes",
  notesMore: () => "May stay.",
  lintFinds: () => "What the lint finds",
  lint: () => "Lint",
  reading: () => "Reading the pattern …",
  readingOn: (d) => d.counts + "; reading on …",
  lintLimits: () =>
    "The lint cannot tell whether the pattern is right. Let somebody who has never seen the kit do a turnaround by it, and watch.",
  countOf: (d) => d.name + " (" + d.count + ")",
  markOf: (d) => "(" + select(d.weight, { error: "error", warning: "warning", other: "note" }) + ")",
  addTo: (d) => "Add to: " + d.field,
  choose: () => "Choose",
  add: (d) => "Add " + d.entry,
  facts: () => "Facts",
  chosenPart: () => "The chosen part",
  parts: () => "Parts of the pattern",
  partNotSaid: (d) => d.part + ", not said",
  allAndAnother: () => "All, and another",
  mayBeLeftOut: (d) => d.field + " (may be left out)",
  notThere: (d) => d.held + ": not there",
  notSaidOtherwise: (d) => "Not said: " + d.otherwise,
  notSaidField: () => "Not said",
  lineOf: (d) => d.stage + ", line " + d.line,
  quoted: (d) => "“" + d.field + "”",
  nothingWritten: (d) => "Nothing is written here yet. Allowed: " + d.allowed + ".",
  writtenIs: (d) => "Written is " + d.got + ". Allowed: " + d.allowed + ".",
  wholeFile: () => "The whole pattern",
};
export default words;
