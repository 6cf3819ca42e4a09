export type { HandedLine, Known, Sorted } from "./handed-lines.ts";
export { dropHanded, isOtherThan, putHanded, readHanded, waitingForHanded } from "./handed-shelf.ts";
