import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { errorCatalogue, renderCatalogue, ROOM_LETTERS } from "../../scripts/error-catalogue.ts";

const catalogue = errorCatalogue();
const printed = join(import.meta.dirname, "..", "..", "docs", "errors.md");

describe("error codes", () => {
  it("carry the letters of the room that raises them", () => {
    const strays = catalogue.filter(({ code, room }) => ROOM_LETTERS[code.slice(0, 2)] !== room.split("/")[0]);
    expect(strays).toEqual([]);
  });

  it("mean one thing: a code is raised from one file", () => {
    const shared = catalogue.filter((one) =>
      catalogue.some((other) => other.code === one.code && other.path !== one.path),
    );
    expect(shared.map(({ code, path }) => `${code}: ${path}`)).toEqual([]);
  });

  it("are all printed in docs/errors.md, and nothing else is", () => {
    expect(readFileSync(printed, "utf8")).toBe(renderCatalogue(catalogue));
  });
});
