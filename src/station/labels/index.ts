export { findShelf, findTyped, labelCode, readLabel, type Labelled } from "./label-code.ts";
export { LABEL_SHEETS, type LabelSheet, type LabelSheetId } from "./label-sheets.ts";
export { musterOrder, type KitOnShelf } from "./muster-order.ts";
