import { isInputError, type Fault } from "#base";
import { describe, expect, test } from "vitest";
import { emptyChain, extendChain } from "./chain.ts";
import { exportHeader, exportLine, exportLines, parseExport, type ExportItem } from "./exchange.ts";
import { makeEntry } from "./testing/entries.ts";

const received = "2027-01-01T00:01:00Z";
const harbour = extendChain(emptyChain("harbour"), [makeEntry(1), makeEntry(3)], received);
const island = extendChain(emptyChain("island"), [makeEntry(2, { place: "island" })], received);
const kept = [...harbour, ...island];
const lines = [...exportLines(kept)];

async function readAll(given: Iterable<string>): Promise<ExportItem[]> {
  const items: ExportItem[] = [];
  for await (const item of parseExport(given)) items.push(item);
  return items;
}

async function faultOf(given: readonly string[]): Promise<Fault | undefined> {
  try {
    await readAll(given);
  } catch (thrown) {
    if (isInputError(thrown)) return thrown.faults[0];
    throw thrown;
  }
  return undefined;
}

function replaceLine(at: number, line: string): string[] {
  return lines.map((old, number) => (number === at ? line : old));
}

describe("export and import", () => {
  test("LOG-15 give back what was kept", async () => {
    expect(await readAll([...lines, ""])).toEqual(kept.map((one) => ({ kind: "kept", kept: one })));
  });

  test("carry unsent entries and photos of a device", async () => {
    const unsent: ExportItem = { kind: "unsent", entry: makeEntry(9) };
    const bytes = Uint8Array.from({ length: 70_000 }, (_, at) => at % 251);
    const photo: ExportItem = { kind: "photo", hash: "ab", mime: "image/jpeg", bytes };
    expect(await readAll([exportHeader([]), exportLine(unsent), exportLine(photo)])).toEqual([unsent, photo]);
  });

  test.each([
    ["nothing", [], "LG-140", "line 1"],
    ["a picture", ["{}", ...lines], "LG-140", "line 1"],
    ["a line that is no JSON", replaceLine(2, "{half"), "LG-142", "line 3"],
    ["a list for a line", replaceLine(2, "[1]"), "LG-142", "line 3"],
    [
      "a newer version",
      replaceLine(0, lines[0]?.replace('"version":2', '"version":3') ?? ""),
      "LG-141",
      "line 1.version",
    ],
    ["chains without places", replaceLine(0, lines[0]?.replace("place", "plaice") ?? ""), "LG-140", "line 1.chains"],
    ["a missing line", lines.toSpliced(1, 1), "LG-144", "line 2.seq"],
    ["a changed entry", replaceLine(2, lines[2]?.replace("person-1", "person-2") ?? ""), "LG-144", "line 3.hash"],
    [
      "a changed time of receipt",
      replaceLine(2, lines[2]?.replace(received, "2027-01-01T00:02:00Z") ?? ""),
      "LG-144",
      "line 3.hash",
    ],
    ["an entry of no shape", replaceLine(1, '{"entry":{},"seq":1}'), "LG-103", "line 2.entry.id"],
    ["a time of no shape", replaceLine(1, lines[1]?.replace(received, "noon") ?? ""), "LG-143", "line 2.received"],
    ["a file cut short", lines.slice(0, 3), "LG-145", "file"],
    ["a photo without bytes", [...lines, '{"photo":{"hash":"ab","mime":"image/png"}}'], "LG-143", "line 5.photo"],
    [
      "a photo of no base64",
      [...lines, '{"photo":{"hash":"ab","mime":"a","base64":"*"}}'],
      "LG-143",
      "line 5.photo.base64",
    ],
  ])("say at which line %s cannot be read", async (_, given, code, field) => {
    expect(await faultOf(given)).toMatchObject({ code, field });
  });
});
