import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";

const ROOT = join(import.meta.dirname, "..", "..");
const text = readFileSync(join(ROOT, "docs", "security.md"), "utf8");

describe("the walk through the security standard", () => {
  it("names only tests that exist", () => {
    const named = [...text.matchAll(/`((?:src|test)\/[^`]+)`/g)].map((match) => match[1]!);
    expect(named.length).toBeGreaterThan(40);
    expect([...new Set(named)].filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });

  it("goes through every chapter, V1 to V17", () => {
    const chapters = [...text.matchAll(/\bV(\d+)\b/g)].map((match) => Number(match[1]));
    expect([...new Set(chapters)].toSorted((one, other) => one - other)).toEqual(
      Array.from({ length: 17 }, (_, at) => at + 1),
    );
  });

  it("links only to pages that exist", () => {
    const links = [...text.matchAll(/\]\(([^)#]+)/g)].map((match) => match[1]!);
    expect(links.filter((link) => !existsSync(join(ROOT, "docs", link)))).toEqual([]);
  });
});
