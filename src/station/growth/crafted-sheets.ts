import { lines, pumpSet, type Crafted, type Line } from "./crafted-line.ts";

function opened(sheet: number): Line {
  const space = { id: "a", name: "Saloon", sort: "cabin", part: "middle" };
  const boat = { kind: "sailing yacht", length: 11 };
  return { kind: "casualty-opened", body: { name: `Ketch ${sheet}`, boat, space } };
}

function joined(sheet: number): Line {
  if (sheet === 0) return { kind: "casualty-noted", body: { about: "boat", note: "x" } };
  return { kind: "casualty-joined", body: { with: `c${sheet - 1}`, spaces: [], pumps: [] } };
}

function runs(pump: string, kit: string): Line {
  const { kind, body } = pumpSet(pump, true);
  return { kind, body: { ...(body as object), kit } };
}

/** Sheets one after the other, each with these lines. */
function sheets(count: number, each: readonly ((sheet: number) => Line)[]): ReturnType<Crafted> {
  return lines("", count, (number) => {
    const sheet = Math.floor(number / each.length);
    return { subject: `casualty:c${sheet}`, ...each[number % each.length]!(sheet) };
  });
}

const closed = (): Line => ({ kind: "casualty-closed", body: { outcome: "afloat" } });

/** By what they are made to slow down: casualties of which many sheets were begun. */
export const CRAFTED_SHEETS: Readonly<Record<string, Crafted>> = {
  "casualties opened, joined in pairs": (count) =>
    sheets(count, [opened, (sheet) => (sheet % 2 === 1 ? joined(sheet) : joined(0))]),
  "sheets opened, joined in one chain": (count) => sheets(count, [opened, joined]),
  "sheets in one chain, each closed before the last came to them": (count) =>
    sheets(count, [opened, (sheet) => pumpSet(`p${sheet}`, true), joined, closed]),
  "sheets in one chain, the same kit on each": (count) => sheets(count, [opened, () => runs("p", "k"), joined]),
  "sheets in one chain, each with pumps of ever other kits": (count) =>
    sheets(count, [opened, (sheet) => runs(`p${sheet}`, `k${sheet}`), joined]),
  "one sheet closed again and again while pumps run on the other": (count) =>
    lines("casualty:c0", count, (number) => {
      if (number < 2) return { ...opened(number), subject: `casualty:c${number}` };
      if (number === count - 1) return { ...joined(1), subject: "casualty:c1" };
      if (number < count / 2) return pumpSet(`p${number}`, true);
      return { ...closed(), subject: "casualty:c1" };
    }),
};
