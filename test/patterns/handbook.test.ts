import { CAUTIONS_FOR, LINT_RULES } from "#kit";
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const HANDBOOK = readFileSync(new URL("../../docs/handbook/patterns.md", import.meta.url), "utf8");
const rows = HANDBOOK.split("\n").filter((line) => line.startsWith("| `"));

describe("the handbook's page on patterns", () => {
  it.each(Object.entries(CAUTIONS_FOR))("says which cautions %s demands", (hazard, cautions) => {
    const row = rows.find((line) => line.startsWith(`| \`${hazard}\` `));
    expect(row?.match(/`[a-z-]+`/g)).toEqual([hazard, ...cautions].map((id) => `\`${id}\``));
  });

  it.each(LINT_RULES)("explains rule %s", (rule) => {
    expect(rows.some((line) => line.startsWith(`| \`${rule}\` `))).toBe(true);
  });
});
