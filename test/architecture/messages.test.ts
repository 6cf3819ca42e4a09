import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { groups, languages, laidOut, madeAt, readCatalogue, renderMessages } from "../../scripts/messages.ts";
import { literalTexts } from "./literal-text.ts";

const WEB = join(import.meta.dirname, "..", "..", "src", "web");

function screens(): readonly string[] {
  return readdirSync(WEB, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".tsx"))
    .map((path) => path.replaceAll("\\", "/"));
}

function textsIn(path: string): readonly string[] {
  const found = literalTexts(path, readFileSync(join(WEB, path), "utf8"));
  return found.map(({ line, text }) => `${path}:${line} ${text}`);
}

test("screens take what they say from the catalogues", () => {
  expect(screens().flatMap(textsIn)).toEqual([]);
});

test("a text in the code of a screen is found between tags, in attributes and by choice", () => {
  const code = `const a = <p title={isOpen ? "Open" : "Shut"}>Two words {n} <b>{"more"}</b><i className="quiet"/></p>;`;
  expect(literalTexts("a.tsx", code).map(({ text }) => text)).toEqual(["Open", "Shut", "Two words", "more"]);
});

test("the functions of every language are those that its catalogue makes", async () => {
  for (const [file, text] of renderMessages()) {
    const path = madeAt(file);
    expect(readFileSync(path, "utf8"), `Run npx tsx scripts/messages.ts: ${file}`).toBe(await laidOut(path, text));
  }
});

test("every language has the keys of the first in its order, so that two catalogues can be read side by side", () => {
  const [first = "", ...others] = languages();
  for (const group of groups()) {
    const keys = Object.keys(readCatalogue(first, group));
    for (const language of others) expect(Object.keys(readCatalogue(language, group)), group).toEqual(keys);
  }
});
