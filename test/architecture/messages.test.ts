import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { groups, languages, laidOut, madeAt, readCatalogue, renderMessages } from "../../scripts/messages.ts";
import { literalTexts } from "./literal-text.ts";
import { spokenTexts } from "./spoken-text.ts";
import { STILL_IN_CODE } from "./still-in-code.ts";

const SRC = join(import.meta.dirname, "..", "..", "src");
const WEB = join(SRC, "web");

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

/** Rooms whose pure files mean what they say by codes, and leave the words to who shows them. */
const CODED = ["base", "readiness", "station", "web"];

function pureFiles(): readonly string[] {
  return CODED.flatMap((room) =>
    readdirSync(join(SRC, room), { recursive: true, encoding: "utf8" })
      .filter((path) => path.endsWith(".ts") && !path.endsWith(".test.ts"))
      .map((path) => `${room}/${path.replaceAll("\\", "/")}`),
  );
}

test("pure files say nothing in a language, but for those still listed, and each of these still does", () => {
  const speaking = pureFiles().filter((path) => spokenTexts(path, readFileSync(join(SRC, path), "utf8")).length > 0);
  expect(speaking.toSorted()).toEqual(Object.values(STILL_IN_CODE).flat().toSorted());
});

test("a sentence in a pure file is found by itself and with parts put in, and what is thrown to programmers is not", () => {
  const code = `const a = ["Renew it.", \`\${item} out of date\`, "two words", "Word", "a-code", \`Line \${line}\`];
    const b: "Of a type" = f(); throw new Error("Not for people.");`;
  expect(spokenTexts("a.ts", code).map(({ text }) => text)).toEqual(["Renew it.", "… out of date", "Line …"]);
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
