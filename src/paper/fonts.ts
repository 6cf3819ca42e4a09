import { createRequire } from "node:module";

const FAMILY = "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin";

/** The screen's own typeface, embedded: the fonts built into PDF lack symbols that quantities need. */
export function registerFonts(pdf: PDFKit.PDFDocument): void {
  const { resolve } = createRequire(import.meta.url);
  pdf.registerFont("regular", resolve(`${FAMILY}-400-normal.woff`));
  pdf.registerFont("bold", resolve(`${FAMILY}-700-normal.woff`));
}
