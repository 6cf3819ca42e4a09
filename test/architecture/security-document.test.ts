import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { sourceFiles } from "./source-files.ts";

const ROOT = join(import.meta.dirname, "..", "..");
const text = readFileSync(join(ROOT, "docs", "security.md"), "utf8");

/** What talks to something else than who asked: read the table of chapter 13 before adding here. */
const OUTWARD = [
  "src/cli/witness/other-station.ts",
  "src/server/mail/mail-carrier.ts",
  "src/store/postgres/append-watch.ts",
  "src/store/postgres/patient-pool.ts",
];

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

  it("names all that the server and the command line talk to: database, mail server, another station that keeps heads", () => {
    const goesOut = /\bfetch\(|\bfrom "(?:nodemailer|pg|node:(?:net|tls|dgram)|undici)"|https?\.(?:request|get)\(/;
    const rooms = [
      "server",
      "cli",
      "station",
      "store/postgres",
      "store/sqlite",
      "store/sql",
      "store/keys",
      "store/patterns",
    ];
    const outward = sourceFiles()
      .filter(({ room, isTest }) => rooms.includes(room) && !isTest)
      .filter(({ text }) => goesOut.test(text.replace(/^import type .*$/gm, "")));
    expect(outward.map(({ path }) => path).toSorted()).toEqual(OUTWARD);
  });
});
