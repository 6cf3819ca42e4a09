import "fake-indexeddb/auto";
import { describe, test } from "vitest";
import { memoryCopies, sqliteCopies } from "./copies.ts";
import { liveThrough } from "./three-devices.ts";

const seeds = (count: number, first: number) => Array.from({ length: count }, (_, at) => first + at);

describe("three devices and a database put back to any earlier copy, over and over, lose nothing and agree", () => {
  test.each(seeds(12, 1))("in memory, seed %i", (seed) => liveThrough(seed, memoryCopies()));
  test.each(seeds(8, 101))("in SQLite, seed %i", async (seed) => liveThrough(seed, await sqliteCopies()));
});
