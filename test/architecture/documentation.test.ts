import { describe, expect, it } from "vitest";
import { publicFunctions, type PublicFunction } from "./public-functions.ts";
import { sourceFiles } from "./source-files.ts";

const production = sourceFiles().filter((file) => !file.isTest);
const inRooms = (...rooms: string[]) => production.filter((file) => rooms.includes(file.room)).flatMap(publicFunctions);

describe("documentation of public functions", () => {
  it("says something about every public function of the pure rooms", () => {
    const silent = inRooms(
      "base",
      "numerics",
      "water",
      "hydraulics",
      "flooding",
      "kit",
      "log",
      "readiness",
      "station",
      "reliability",
      "faults",
    );
    expect(silent.filter((found) => found.documentation === "").map(place)).toEqual([]);
  });

  it("names, where it names parameters, exactly those of the signature, in order", () => {
    const all = production.flatMap(publicFunctions).filter((found) => documented(found).length > 0);
    expect(all.filter((found) => !matchesSignature(found)).map(place)).toEqual([]);
  });

  it("gives every engineering function its parameters, what it returns and where it is from", () => {
    const engineering = inRooms("water", "hydraulics", "flooding").filter((found) => found.parameters.length > 0);
    const lacking = engineering.filter(
      (found) => !/@returns/.test(found.documentation) || !/@source/.test(found.documentation),
    );
    expect(lacking.map(place)).toEqual([]);
    expect(engineering.filter((found) => documented(found).length === 0).map(place)).toEqual([]);
  });
});

function documented(found: PublicFunction): string[] {
  return [...found.documentation.matchAll(/@param\s+(?:\{[^}]*\}\s+)?(\[?[\w.]+)/g)]
    .map((match) => match[1]!.replace("[", ""))
    .filter((name) => !name.includes("."));
}

function matchesSignature(found: PublicFunction): boolean {
  const names = documented(found);
  if (names.length !== found.parameters.length) return false;
  return found.parameters.every((name, index) => name === "{}" || name === names[index]);
}

function place(found: PublicFunction): string {
  return `${found.path}: ${found.name}(${found.parameters.join(", ")})`;
}
