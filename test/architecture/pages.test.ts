import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { withRooms } from "../../scripts/room-picture.ts";

const ROOT = join(import.meta.dirname, "..", "..");
const read = (path: string) => readFileSync(join(ROOT, path), "utf8");

describe.each(["docs/architecture.md", "docs/adding.md"])("%s", (page) => {
  it("names only files that are there", () => {
    const named = [...read(page).matchAll(/`((?:src|test|docs|scripts)\/[^`\s]+\.[a-z]+)`/g)].map(([, path]) => path!);
    expect(named.length).toBeGreaterThan(10);
    expect(named.filter((path) => !existsSync(join(ROOT, path)))).toEqual([]);
  });
});

describe("the picture of the rooms", () => {
  it("is what the list says: npx tsx scripts/room-picture.ts", () => {
    const page = read("docs/architecture.md");
    expect(withRooms(page)).toBe(page);
  });
});
