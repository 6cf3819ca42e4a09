import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { csvCell, csvLines, readCsvCell } from "./csv.ts";

const whole = (rows: readonly (readonly (string | number)[])[]) => [...csvLines(rows)].join("");

describe("comma-separated values as RFC 4180 has them, section 2", () => {
  it("rule 1 and 2: each record on its own line, ended by CR LF", () => {
    expect(
      whole([
        ["aaa", "bbb", "ccc"],
        ["zzz", "yyy", "xxx"],
      ]),
    ).toBe("aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n");
  });

  it("rule 6: line breaks, quotes and commas stand in quotes", () => {
    expect(whole([["aaa", "b\r\nbb", "ccc"]])).toBe('aaa,"b\r\nbb",ccc\r\n');
    expect(whole([["a,b"]])).toBe('"a,b"\r\n');
  });

  it("rule 7: a quote within quotes is doubled", () => {
    expect(whole([["aaa", 'b"bb', "ccc"]])).toBe('aaa,"b""bb",ccc\r\n');
  });
});

describe("cells that a spreadsheet would run, after OWASP, CSV Injection", () => {
  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", '=HYPERLINK("x")', "＝1", "'=1"])(
    "%j is led by an apostrophe",
    (text) => {
      expect(csvCell(text).replaceAll('"', "").startsWith("'")).toBe(true);
    },
  );

  it("leaves numbers as numbers, a loss too", () => {
    expect(whole([["on the shelf"], [-2]])).toBe("on the shelf\r\n-2\r\n");
  });

  it("come back the same, whatever they said", () => {
    const text = fc.oneof(fc.string(), fc.stringMatching(/^'{0,3}[=+\-@\t]{1,2}'?[a-z,"]{0,3}$/));
    fc.assert(
      fc.property(text, (given) => {
        const cell = csvCell(given);
        const read = cell.startsWith('"') ? cell.slice(1, -1).replaceAll('""', '"') : cell;
        expect(readCsvCell(read)).toBe(given);
      }),
      { seed: 4180, numRuns: 1000 },
    );
  });
});
