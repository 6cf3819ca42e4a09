import { walkXml } from "./walk-xml.ts";

const ESCAPED = /_x([0-9A-Fa-f]{4})_/g;
/** Formats that every workbook has, of a day with or without a clock: ECMA-376 part 1, 18.8.30 | FROM MEMORY. */
const DAY_FORMATS: readonly (readonly [number, number])[] = [
  [14, 17],
  [22, 22],
  [27, 31],
  [34, 36],
  [50, 54],
  [57, 58],
];

/** Texts that cells point to. How a word is to be spoken is left out. */
export function readSharedStrings(xml: string): readonly string[] {
  const texts: string[] = [];
  const at = { text: "", isText: false, spoken: 0 };
  walkXml(xml, {
    open: (name) => {
      if (name === "si") at.text = "";
      if (name === "rPh") at.spoken++;
      at.isText = name === "t" && at.spoken === 0;
    },
    close: (name) => {
      if (name === "si") texts.push(unescapeText(at.text));
      if (name === "rPh") at.spoken--;
      at.isText = false;
    },
    text: (text) => {
      if (at.isText) at.text += text;
    },
  });
  return texts;
}

/** Signs that XML cannot carry stand as _x000D_. */
export function unescapeText(text: string): string {
  return text.replace(ESCAPED, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)));
}

/** Which styles of a cell show a number as a day. */
export function readDayStyles(xml: string): ReadonlySet<number> {
  const own = new Map<number, string>();
  const formats: number[] = [];
  const at = { isCells: false };
  walkXml(xml, {
    open: (name, attributes) => {
      if (name === "numFmt") own.set(Number(attributes()["numFmtId"]), attributes()["formatCode"] ?? "");
      if (name === "cellXfs") at.isCells = true;
      if (name === "xf" && at.isCells) formats.push(Number(attributes()["numFmtId"] ?? 0));
    },
    close: (name) => {
      if (name === "cellXfs") at.isCells = false;
    },
  });
  return new Set(formats.flatMap((format, style) => (isDayFormat(format, own.get(format)) ? [style] : [])));
}

function isDayFormat(id: number, code: string | undefined): boolean {
  if (code === undefined) return DAY_FORMATS.some(([from, to]) => id >= from && id <= to);
  const [plain = ""] = code.replace(/"[^"]*"|\\.|\[[^\]]*\]|_./g, "").split(";");
  return /[dy]/i.test(plain);
}
