import { describe, expect, it } from "vitest";
import { renderLabels } from "./labels.ts";

const labels = Array.from({ length: 5 }, (_, index) => ({
  title: `Pump ${index} ${"with a long name ".repeat(index)}`.slice(0, 80),
  line: `BR-P0${index}`,
  code: `drykeel:kit:br-0${index}`,
}));

async function pagesOf(sheet: "card" | "a4-21" | "letter-30", skip: number): Promise<number> {
  const pdf = Buffer.from(await renderLabels({ labels, sheet, skip, now: "2027-01-10T08:00:00Z" })).toString("latin1");
  return pdf.match(/\/Type \/Page\b(?!s)/g)!.length;
}

describe("labels on paper", () => {
  it("take as many sheets as there are labels, and begin after those that are used up", async () => {
    expect(await pagesOf("a4-21", 0)).toBe(1);
    expect(await pagesOf("a4-21", 16)).toBe(1);
    expect(await pagesOf("a4-21", 17)).toBe(2);
    expect(await pagesOf("letter-30", 0)).toBe(1);
    expect(await pagesOf("card", 0)).toBe(2);
  });
});
