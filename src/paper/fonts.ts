import { createRequire } from "node:module";

const FAMILY = "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin";

const WIDE = "@fontsource/noto-sans/files/noto-sans";
const NARROW_FILES = { latin: FAMILY, "latin-ext": `${FAMILY}-ext` };
const WIDE_FILES = {
  latin: `${WIDE}-latin`,
  "latin-ext": `${WIDE}-latin-ext`,
  cyrillic: `${WIDE}-cyrillic`,
  vietnamese: `${WIDE}-vietnamese`,
};

/** The typefaces of a card: our own, and a wider one for languages whose letters it lacks. */
export function registerCardFonts(pdf: PDFKit.PDFDocument): void {
  const { resolve } = createRequire(import.meta.url);
  for (const [face, files] of Object.entries({ narrow: NARROW_FILES, wide: WIDE_FILES }))
    for (const [letters, file] of Object.entries(files))
      for (const weight of ["400", "700"])
        pdf.registerFont(`${face}-${letters}-${weight}`, resolve(`${file}-${weight}-normal.woff`));
}

/** The screen's own typeface, embedded: the fonts built into PDF lack symbols that quantities need. */
export function registerFonts(pdf: PDFKit.PDFDocument): void {
  const { resolve } = createRequire(import.meta.url);
  pdf.registerFont("regular", resolve(`${FAMILY}-400-normal.woff`));
  pdf.registerFont("bold", resolve(`${FAMILY}-700-normal.woff`));
}
