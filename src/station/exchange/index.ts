export { exportWhole, pagesOf, photosNamed, type ExportCounts } from "./export-whole.ts";
export { sniffPhoto, type PhotoKind } from "./sniff-photo.ts";
