import { expect, test } from "vitest";
import { versionOf, versionsToDrop } from "./service-worker-versions.ts";

const shelf = [
  { url: "index.html", revision: "a1" },
  { url: "assets/app-9f.js", revision: null },
];

test("a version's name does not depend on the order in which its files are listed", () => {
  expect(versionOf([...shelf].reverse())).toBe(versionOf(shelf));
});

test("a version's name changes when any file does", () => {
  expect(versionOf([{ url: "index.html", revision: "a2" }, shelf[1]!])).not.toBe(versionOf(shelf));
  expect(versionOf([shelf[0]!, { url: "assets/app-a0.js", revision: null }])).not.toBe(versionOf(shelf));
});

test("the version shown is never dropped, nor the two before it", () => {
  expect(versionsToDrop(["v1", "v2", "v3", "v4"], "v4", 2)).toEqual(["v1"]);
  expect(versionsToDrop(["v1", "v2"], "v2", 2)).toEqual([]);
  expect(versionsToDrop(["v1", "v2", "v3", "v4"], "v1", 2)).toEqual(["v2"]);
});
