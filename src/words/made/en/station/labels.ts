/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { LabelsWords } from "#src/words/made/station/labels.ts";

const words: LabelsWords = {
  noPlace: () => "No such place",
  noPlaceNews: () => "This device knows no such place",
  title: (d) => "Labels and shelves, " + d.place,
  labels: () => "Labels",
  labelsMore: () =>
    "Each has the name, the serial and a code that the camera reads. Print at 100 %, not fitted to the page. The code names the kit or the shelf, and nothing else.",
  sheet: () => "The sheet in the printer",
  used: () => "Labels used up on the first sheet",
  kitsPdf: () => "Labels of the kits as PDF",
  shelvesPdf: () => "Labels of the shelves as PDF",
  read: () => "Read a label",
  readHint: () => "Hold the camera over the code on the kit or the shelf.",
  readNoPlace: () => "This device knows no such place.",
  shelves: () => "Shelves, in the order in which a muster goes round",
  anotherShelf: () => "Name of another shelf",
  addShelf: () => "Add the shelf",
  saveShelves: () => "Save the shelves",
  notSaved: () => "Not saved",
  onNoShelf: (d) => "On no shelf, so last at a muster: " + d.kits,
  before: () => "Before",
  kitBefore: (d) => d.kit + " before",
  offShelf: () => "Off the shelf",
  kitOffShelf: (d) => d.kit + " off the shelf",
  putOn: (d) => "Put on " + d.shelf,
  chooseKit: () => "Choose a kit",
  takeAway: () => "Take the shelf away",
  takeNamedAway: (d) => "Take " + d.shelf + " away",
};
export default words;
