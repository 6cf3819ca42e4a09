import { isInputError } from "#base";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { SHEET_LIMITS } from "./limits.ts";
import { readSheet } from "./read-sheet.ts";
import type { SheetTable } from "./sheet-table.ts";

const csv = (text: string) => readSheet(new TextEncoder().encode(text), "kits.csv");
const texts = ({ heads, rows }: SheetTable) => [heads, ...rows.map(({ cells }) => cells.map(({ text }) => text))];

async function codeOf(reading: Promise<unknown>): Promise<string | undefined> {
  try {
    await reading;
    return undefined;
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults[0]?.code;
    throw thrown;
  }
}

describe("a CSV file", () => {
  it("is read as RFC 4180 has it, section 2: line breaks, commas and doubled quotes within quotes", async () => {
    const table = await csv('aaa,"b\r\nbb",ccc\r\nzzz,"y,y",xxx\r\n"a","b""bb","c"');
    expect(texts(table)).toEqual([
      ["aaa", "b\r\nbb", "ccc"],
      ["zzz", "y,y", "xxx"],
      ["a", 'b"bb', "c"],
    ]);
  });

  it.each([
    ["commas", "name,serial\nA,1\nB,2"],
    ["semicolons", "name;cost\nA;1,50\nB;2,75"],
    ["commas", 'number,part\r\n0,";a"\r\n1,"b;"\r\n'],
    ["tabs", "name\tserial\nA, B\t1\nB\t2"],
  ])("is divided by %s, and that is said", async (name, text) => {
    const table = await csv(text);
    expect(table.heads).toHaveLength(2);
    expect(table.notices).toEqual([`Read as divided by ${name}.`]);
  });

  it("may say its delimiter in a line of its own, and rows keep the numbers that a spreadsheet shows", async () => {
    const table = await csv("sep=;\nname;serial\n\nA;1");
    expect(table.rows).toEqual([{ number: 4, cells: [{ text: "A" }, { text: "1" }] }]);
  });

  it("is UTF-8 with or without its mark, UTF-16 with one, else windows-1252 with a notice", async () => {
    const text = "name,place\nMåløy,Øst";
    const marked = await readSheet(new Uint8Array([0xef, 0xbb, 0xbf, ...new TextEncoder().encode(text)]), "a.csv");
    const wide = new Uint8Array([
      0xff,
      0xfe,
      ...new Uint8Array(Uint16Array.from(text, (one) => one.charCodeAt(0)).buffer),
    ]);
    const latin = Uint8Array.from(text, (letter) => letter.charCodeAt(0));
    for (const table of [await csv(text), marked, await readSheet(wide, "a.csv"), await readSheet(latin, "a.csv")]) {
      expect(texts(table)).toEqual([
        ["name", "place"],
        ["Måløy", "Øst"],
      ]);
    }
    expect((await readSheet(latin, "a.csv")).notices.join(" ")).toContain("windows-1252");
    expect(marked.notices).toHaveLength(1);
  });

  it("gives back a cell that was made harmless as it was", async () => {
    expect(texts(await csv("name,serial\n'=1+1,'@a\n'-2,it's"))).toEqual([
      ["name", "serial"],
      ["=1+1", "@a"],
      ["-2", "it's"],
    ]);
  });

  it.each([
    ["an empty file", "", "ST-211"],
    ["headings alone", "name,serial\n", "ST-218"],
    ["a quote that is not closed", 'name,serial\n"A,1\nB,2', "ST-216"],
    ["signs that no text has", "name\0,serial\nA,1", "ST-211"],
    ["a cell too long", `name,serial\nA,${"x".repeat(SHEET_LIMITS.cell + 1)}`, "ST-215"],
    ["too many columns", `${"a,".repeat(SHEET_LIMITS.columns)}a\n1,2`, "ST-215"],
    ["too many rows", `name,serial\n${"A,1\n".repeat(SHEET_LIMITS.rows + 1)}`, "ST-213"],
  ])("is refused with what to do: %s", async (_, text, code) => {
    expect(await codeOf(csv(text))).toBe(code);
  });

  it("of the greatest number of rows is read", async () => {
    expect((await csv(`name,serial\n${"A,1\n".repeat(SHEET_LIMITS.rows)}`)).rows).toHaveLength(SHEET_LIMITS.rows);
  });
});

const fixture = (name: string) => readFileSync(join(import.meta.dirname, "../../../../test/sheets", name));

describe.each(["openpyxl.xlsx", "gnumeric.xlsx"])("a workbook as %s wrote it", (name) => {
  it("has its texts, numbers, days and other letters", async () => {
    const table = await readSheet(fixture(name), name);
    expect(table.heads.slice(0, 3)).toEqual(["Name", "Serial no.", "Pump type"]);
    expect(table.rows.map(({ number }) => number)).toEqual([3, 5, 6]);
    expect(table.rows.map(({ cells }) => cells[5]?.text)).toEqual(["2027-03-31", "2026-12-01", "03/04/2026"]);
    expect(table.rows.map(({ cells }) => cells[4])).toEqual([
      { text: "00417" },
      { text: "417", number: 417 },
      { text: "" },
    ]);
    expect(table.rows[2]?.cells[0]?.text).toBe("Pümp & <3>");
    expect(table.notices).toEqual(["Rows above the headings were left out: 1."]);
  });

  it("has several sheets, of which one is chosen", async () => {
    const table = await readSheet(fixture(name), name, "People");
    expect(table.sheets.slice(0, 2)).toEqual(["Kits", "People"]);
    expect([table.file, ...texts(table)]).toEqual([`${name}, People`, ["Name", "Role"], ["Rosa Vik", "keeper"]]);
  });
});

const formulas = async (name: string) => (await readSheet(fixture(name), name)).rows.map(({ cells }) => cells[6]);

describe("a formula", () => {
  it("says that its result was kept, that it was not, or that there is none", async () => {
    expect((await formulas("openpyxl.xlsx")).slice(0, 2)).toEqual([
      { text: "", formula: "lost" },
      { text: "", formula: "lost" },
    ]);
    expect((await formulas("gnumeric.xlsx")).slice(0, 2)).toEqual([
      { text: "6", number: 6, formula: "kept" },
      { text: "#DIV/0!", broken: "#DIV/0!", formula: "kept" },
    ]);
  });
});

const WORKBOOK = '<workbook><sheets><sheet name="A" sheetId="1" r:id="r1" xmlns:r="r"/></sheets></workbook>';
const RELATIONS = '<Relationships><Relationship Id="r1" Type="t/worksheet" Target="sheet.xml"/></Relationships>';

function workbook(sheet: string, workbookXml = WORKBOOK): Uint8Array {
  return zipSync({
    "xl/workbook.xml": strToU8(workbookXml),
    "xl/_rels/workbook.xml.rels": strToU8(RELATIONS),
    "xl/sheet.xml": strToU8(sheet),
  });
}

const inline = (text: string) => `<c t="inlineStr"><is><t>${text}</t></is></c>`;

describe("a workbook made by hand", () => {
  it("may leave out references, use prefixes, count from 1904 and write texts in the cell", async () => {
    const prefixed = `<x:worksheet xmlns:x="x"><x:sheetData><x:row><x:c t="inlineStr"><x:is><x:t>a_x0041_</x:t></x:is></x:c>
      <x:c t="str"><x:v>b</x:v></x:c></x:row><x:row r="7"><x:c r="B7"><x:v>0.30000000000000004</x:v></x:c></x:row></x:sheetData></x:worksheet>`;
    const book = workbook(prefixed, WORKBOOK.replace("<sheets>", '<workbookPr date1904="1"/><sheets>'));
    const table = await readSheet(book, "a.xlsx");
    expect(table).toMatchObject({ file: "a.xlsx", heads: ["aA", "b"], serials: 1904 });
    expect(table.rows).toEqual([{ number: 7, cells: [{ text: "" }, { text: "0.3", number: 0.30000000000000004 }] }]);
  });

  it("is no workbook where it names no sheet, or its XML is none", async () => {
    expect(await codeOf(readSheet(zipSync({ "a.txt": strToU8("hello") }), "a.xlsx"))).toBe("ST-212");
    expect(await codeOf(readSheet(workbook("<row", "<workbook/>"), "a.xlsx"))).toBe("ST-212");
    expect(await codeOf(readSheet(workbook("<a><b></a>"), "a.xlsx"))).toBe("ST-212");
    expect(await codeOf(readSheet(new Uint8Array([0x50, 0x4b, 3, 4, 1, 2, 3]), "a.xlsx"))).toBe("ST-212");
  });

  it("of the older kind, or locked, is told apart", async () => {
    expect(await codeOf(readSheet(new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0]), "a.xls"))).toBe("ST-217");
  });
});

describe("a workbook that would be too much", () => {
  it("is refused at 100,000 rows", async () => {
    const row = `<row>${inline("a")}${inline("b")}</row>`;
    const book = workbook(`<worksheet><sheetData>${row.repeat(100_000)}</sheetData></worksheet>`);
    expect(await codeOf(readSheet(book, "a.xlsx"))).toBe("ST-213");
  });

  it("is refused where it unpacks to more than is allowed, before it is unpacked", async () => {
    const bomb = zipSync({
      "xl/workbook.xml": strToU8(WORKBOOK),
      "xl/_rels/workbook.xml.rels": strToU8(RELATIONS),
      "xl/sheet.xml": new Uint8Array(SHEET_LIMITS.unpacked + 1),
    });
    expect(bomb.length).toBeLessThan(SHEET_LIMITS.bytes);
    const before = process.memoryUsage.rss();
    expect(await codeOf(readSheet(bomb, "a.xlsx"))).toBe("ST-214");
    expect(process.memoryUsage.rss() - before).toBeLessThan(SHEET_LIMITS.unpacked);
  });

  it("is refused where it unpacks to more than it says", async () => {
    const book = workbook(`<worksheet><sheetData>${" ".repeat(1_000_000)}</sheetData></worksheet>`);
    const lying = tellSize(book, "xl/sheet.xml", 100);
    expect(await codeOf(readSheet(lying, "a.xlsx"))).toBe("ST-212");
  });

  it("is refused where it has more parts than any", async () => {
    const parts = Object.fromEntries(
      Array.from({ length: SHEET_LIMITS.parts + 1 }, (_, at) => [`p${at}`, strToU8("")]),
    );
    expect(await codeOf(readSheet(zipSync(parts), "a.xlsx"))).toBe("ST-214");
  });

  it("is refused by its length, before anything of it is looked at", async () => {
    expect(await codeOf(readSheet(new Uint8Array(SHEET_LIMITS.bytes + 1), "a.xlsx"))).toBe("ST-210");
  });
});

/** The same archive, whose directory says that a part unpacks to so many bytes. */
function tellSize(archive: Uint8Array, name: string, size: number): Uint8Array {
  const lying = archive.slice();
  const view = new DataView(lying.buffer);
  for (let at = 0; at + 46 < lying.length; at++) {
    if (view.getUint32(at, true) !== 0x02014b50) continue;
    const length = view.getUint16(at + 28, true);
    const here = new TextDecoder().decode(lying.subarray(at + 46, at + 46 + length));
    if (here === name) view.setUint32(at + 24, size, true);
  }
  return lying;
}
