import PdfKit from "pdfkit";
import { describe, expect, it } from "vitest";
import { shippedPattern } from "#test/patterns/shipped-patterns.ts";
import { registerFonts } from "../fonts.ts";
import { cardPieces } from "./card-pieces.ts";

/** Every text that the pieces write, in order. */
function writtenOf(key: string): readonly string[] {
  const written: string[] = [];
  const pdf = new PdfKit();
  registerFonts(pdf);
  pdf.text = (text: string) => (written.push(text), pdf);
  const pattern = shippedPattern(key);
  for (const piece of cardPieces({ pattern, units: "metric" }, 10, new Map())) piece.draw(pdf, 0, 200);
  return written;
}

describe("the card on paper", () => {
  it("says what is done after the answers of a line below its last check", () => {
    const rows = writtenOf("brinnet-450@2");
    const then = rows.findIndex((row) => row.includes("Then: Couple it and listen for the click."));
    expect(rows[then]).toMatch(/^26 {2}Then: /);
    expect(rows[then - 1]).toMatch(/^26b /);
  });

  it("asks for the height of a letter when it is new, and speaks of no new paint where it is only read", () => {
    const rows = writtenOf("brinnet-450@2").filter((row) => row.includes("THIS SIDE UP on the lid"));
    expect(rows).toHaveLength(1);
    expect(rows[0]).toContain("when new at least 48.0\u00a0mm");
    expect(rows[0]).not.toMatch(/paint/i);
  });
});
