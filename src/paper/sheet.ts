import PdfKit from "pdfkit";
import { registerFonts } from "./fonts.ts";
import { printable } from "./printable.ts";
import { instantWords } from "#station";

/** Paper sizes in points: 1 pt = 1/72 in. */
const MM = 72 / 25.4;
export const MARGIN = 15 * MM;
const FOOTER_HEIGHT = 8 * MM;

export interface SheetOptions {
  readonly title: string;
  /** RFC 3339: printed in the footer and kept as the file's date. */
  readonly now: string;
  readonly footer: string;
}

/** A4 pages filled from the top, with a footer on each. */
export interface Sheet {
  readonly pdf: PDFKit.PDFDocument;
  readonly width: number;
  /** Starts a new page where less than this is left [pt]. */
  need(height: number): void;
  heading(text: string): void;
  title(text: string): void;
  paragraph(
    text: string,
    options?: { readonly bold?: boolean; readonly size?: number; readonly colour?: string },
  ): void;
  gap(points: number): void;
  /** Ends the document and gives its bytes. */
  finish(): Promise<Uint8Array>;
}

/** How many pages a sheet has so far. */
export function pagesOf({ pdf }: Sheet): number {
  return pdf.bufferedPageRange().count;
}

/**
 * Writes a sheet in the first of some sizes of letters that keeps to so many pages.
 *
 * @param sizes - the best first [pt]
 * @returns the size and the sheet written in it; undefined where none keeps to them
 */
export function writeToFit(
  sizes: readonly number[],
  most: number,
  write: (size: number) => Sheet,
): { readonly size: number; readonly sheet: Sheet } | undefined {
  for (const size of sizes) {
    const sheet = write(size);
    if (pagesOf(sheet) <= most) return { size, sheet };
  }
  return undefined;
}

/** An empty sheet. */
export function createSheet(options: SheetOptions): Sheet {
  const pdf = new PdfKit({
    size: "A4",
    margins: { top: MARGIN, left: MARGIN, right: MARGIN, bottom: MARGIN + FOOTER_HEIGHT },
    bufferPages: true,
    info: { Title: options.title, Creator: "Drykeel", CreationDate: new Date(options.now) },
  });
  registerFonts(pdf);
  const bytes = collectPdf(pdf);
  const width = pdf.page.width - 2 * MARGIN;
  const need = (height: number): void => {
    if (pdf.y + height > pdf.page.height - MARGIN - FOOTER_HEIGHT) pdf.addPage();
  };
  const paragraph: Sheet["paragraph"] = (given, { bold = false, size = 9, colour = "#000" } = {}) => {
    const text = printable(given);
    pdf
      .font(bold ? "bold" : "regular")
      .fontSize(size)
      .fillColor(colour);
    need(pdf.heightOfString(text, { width }));
    pdf.text(text, MARGIN, pdf.y, { width });
  };
  return {
    pdf,
    width,
    need,
    paragraph,
    title: (text) => paragraph(text, { bold: true, size: 17 }),
    heading: (text) => {
      need(40);
      pdf.moveDown(0.6);
      paragraph(text, { bold: true, size: 12 });
      pdf.moveDown(0.2);
    },
    gap: (points) => {
      pdf.y += points;
    },
    finish: async () => {
      writeFooters(pdf, options);
      pdf.end();
      return bytes;
    },
  };
}

function writeFooters(pdf: PDFKit.PDFDocument, { footer, now }: SheetOptions): void {
  const { start, count } = pdf.bufferedPageRange();
  for (let page = start; page < start + count; page += 1) {
    pdf.switchToPage(page);
    const { margins } = pdf.page;
    // Text below the bottom margin would start a page of its own.
    pdf.page.margins = { ...margins, bottom: 0 };
    pdf.font("regular").fontSize(7.5).fillColor("#000");
    const line = `${printable(footer)}   printed ${instantWords(now)} UTC   page ${page - start + 1} of ${count}`;
    pdf.text(line, MARGIN, pdf.page.height - MARGIN - FOOTER_HEIGHT / 2, { lineBreak: false });
    pdf.page.margins = margins;
  }
}

/** The bytes of a document, once it has ended. */
export function collectPdf(pdf: PDFKit.PDFDocument): Promise<Uint8Array> {
  const chunks: Buffer[] = [];
  return new Promise((resolve, reject) => {
    pdf.on("data", (chunk: Buffer) => chunks.push(chunk));
    pdf.on("end", () => resolve(new Uint8Array(Buffer.concat(chunks))));
    pdf.on("error", reject);
  });
}
