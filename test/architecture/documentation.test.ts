import { describe, expect, it } from "vitest";
import { publicFunctions, type PublicFunction } from "./public-functions.ts";
import { namesAtDoor, sourceFiles } from "./source-files.ts";

const production = sourceFiles().filter((file) => !file.isTest);
const throughDoors = (...rooms: string[]) => {
  const names = rooms.flatMap((room) => [...namesAtDoor(production, room)]);
  return inRooms(...rooms).filter(({ path, name }) => names.includes(`${path} ${name}`) || names.includes(`${path} *`));
};
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
      "reliability",
      "faults",
      "planning",
      "station",
    );
    expect(silent.filter((found) => found.documentation === "").map(place)).toEqual([]);
  });

  it("names no parameter that the signature lacks, and keeps their order", () => {
    const all = production.flatMap(publicFunctions).filter((found) => documented(found).length > 0);
    expect(all.filter((found) => !matchesSignature(found)).map(place)).toEqual([]);
  });

  it("gives every engineering function at a door its parameters, what it returns and where it is from", () => {
    const engineering = throughDoors("water", "hydraulics", "flooding", "reliability", "faults").filter(
      ({ parameters }) => parameters.length > 0,
    );
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
  if (found.parameters.includes("{}")) return names.length <= found.parameters.length;
  const known = found.parameters.filter((name) => names.includes(name));
  return known.join() === names.join();
}

function place(found: PublicFunction): string {
  return `${found.path}: ${found.name}(${found.parameters.join(", ")})`;
}
