import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { entryKinds, isCasualtyKind, isKitKind, isStockKind, kindSchemas, subjectOfKind, WRITING } from "#readiness";
import { describe, expect, it } from "vitest";
import { kindFiles, renderRegistry } from "../../scripts/kind-registry.ts";

const REGISTRY = join(import.meta.dirname, "..", "..", "src", "readiness", "registry");
const files = kindFiles();

/* One file for each kind of entry, and the registry that is made from them: whatever is in one is in the other. */

describe("the registry of kinds of entry", () => {
  it("is what `npx tsx scripts/kind-registry.ts` makes of the files of the kinds, and has no other file", () => {
    const kept = readdirSync(REGISTRY).map((name) => [name, readFileSync(join(REGISTRY, name), "utf8")] as const);
    expect(Object.fromEntries(kept)).toEqual(Object.fromEntries(renderRegistry(files)));
  });

  it("has each file of a kind, and every kind has a file, once", () => {
    const kinds = files.map(({ kind }) => kind).toSorted();
    expect(entryKinds.toSorted()).toEqual(kinds);
    expect(new Set(kinds).size).toBe(kinds.length);
  });

  it("has a schema and writers for each kind, and no others", () => {
    const kinds = files.map(({ kind }) => kind).toSorted();
    expect(Object.keys(kindSchemas).toSorted()).toEqual(kinds);
    expect(Object.keys(WRITING).toSorted()).toEqual(kinds);
  });

  it.each(files)("knows the subject of $kind as its file says it", ({ kind, subject }) => {
    expect(subject).toBeDefined();
    expect(subjectOfKind(kind as never)).toBe(subject === "any" ? undefined : subject);
    expect([isKitKind(kind), isCasualtyKind(kind), isStockKind(kind)]).toEqual(
      ["kit", "casualty", "part"].map((one) => one === subject),
    );
  });

  it.each(files)("finds schema, writers and fold of $kind in its own file", async ({ path, subject }) => {
    const found = (await import(`../../src/readiness/${path}`)) as Readonly<Record<string, unknown>>;
    expect(Object.keys(found).toSorted()).toEqual(
      subject === "any" ? ["schema", "subject", "writers"] : ["fold", "schema", "subject", "writers"],
    );
  });
});
