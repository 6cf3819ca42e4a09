import { block, idText, listOf, oneWord, quantityText, readingText } from "../file/schema-fields.ts";
import { MET } from "./after-use.ts";

/* What a pattern file says of a kit that comes back from use. */

const metBlock = block(
  {
    what: oneWord(MET, "What the kit met."),
    flushWithin: quantityText("time", "2 h", "Longest time from the last pumping to the first flush."),
    source: readingText(160, "Where that time is from: the maker's manual, or common practice."),
    cautions: listOf(idText("Id of a caution."), 0, "Cautions shown before the first aid.").default([]),
    firstAid: listOf(readingText(240, "One thing to do."), 1, "What to do at once, in order."),
    flushedBy: listOf(idText("Id of a step."), 1, "Steps of the turnaround that are the first flush."),
  },
  "What is done about one thing the kit met.",
);

const countedBlock = block(
  {
    item: idText("Id of an item."),
    missing: idText("Id of the mode of this item that says it is missing."),
  },
  "One item counted when the kit comes back.",
);

/** What a pattern file says of a kit that comes back. */
export const afterUseBlock = block(
  {
    met: listOf(metBlock, 1, "Salt water, oil, sewage, fuel: what is done about each."),
    counted: listOf(countedBlock, 1, "Items counted when it comes back, in the order in which they are looked for."),
  },
  "A kit that comes back from use.",
);

/** Steps that belong to what was met only. */
export const afterField = listOf(
  oneWord(MET, "What the kit met."),
  1,
  "Only in a turnaround after the kit met one of these; in every turnaround if not said.",
);
