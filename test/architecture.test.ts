import { dirname, join } from "node:path/posix";
import { describe, expect, it } from "vitest";
import { MAY_USE_NODE, PURE, ROOMS } from "./architecture/rooms.ts";
import { sourceFiles, withoutComments, type SourceFile } from "./architecture/source-files.ts";

const files = sourceFiles();
const production = files.filter((file) => !file.isTest);

describe("rooms", () => {
  it("has a line in the list for every room, and a front door in every room", () => {
    const rooms = [...new Set(files.map((file) => file.room))].toSorted();
    expect(rooms.filter((room) => !ROOMS[room])).toEqual([]);
    const doors = new Set(files.map((file) => file.path));
    const withoutDoor = rooms.filter((room) => !["web", "cli"].includes(room) && !doors.has(`src/${room}/index.ts`));
    expect(withoutDoor).toEqual([]);
  });

  it("imports other rooms only where the list allows it, and down", () => {
    expect(production.flatMap(forbiddenRooms)).toEqual([]);
    const upward = Object.entries(ROOMS).flatMap(([room, { layer, rooms }]) =>
      rooms.filter((other) => ROOMS[other]!.layer > layer).map((other) => `${room} -> ${other}`),
    );
    expect(upward).toEqual([]);
  });

  it("imports outside libraries only where the list allows it", () => {
    expect(production.flatMap(forbiddenLibraries)).toEqual([]);
  });

  it("stays inside its own room with relative imports", () => {
    expect(production.flatMap(relativeEscapes)).toEqual([]);
  });

  it("names files from a root instead of climbing two folders, and only tests name them from outside their room", () => {
    const climbs = files.flatMap(({ path, written }) =>
      written.filter((name) => name.startsWith("../../")).map(() => path),
    );
    expect(climbs).toEqual([]);
  });

  it("has no import cycles between files", () => {
    expect(findCycle(production)).toBeUndefined();
  });
});

describe("pure rooms", () => {
  const impure: readonly (readonly [string, RegExp])[] = [
    ["the clock", /\bDate\.now\(|\bnew Date\(\s*\)|\bperformance\.now\(|Temporal\.Now\b/],
    ["chance", /\bMath\.random\(|\bcrypto\./],
    ["the console", /\bconsole\./],
    ["the process", /\bprocess\./],
    ["the network", /\bfetch\(|XMLHttpRequest|WebSocket/],
    ["a timer", /\bset(Timeout|Interval)\(/],
    ["module state", /^(export )?let /m],
  ];
  it.each(impure)("never reach for %s", (_, pattern) => {
    const found = production.filter((file) => PURE.includes(file.room) && pattern.test(withoutComments(file.text)));
    expect(found.map((file) => file.path)).toEqual([]);
  });
});

describe("sizes", () => {
  it("keeps every source file under 400 lines", () => {
    const long = production.filter(
      (file) =>
        withoutComments(file.text)
          .split("\n")
          .filter((line) => line.trim()).length > 400,
    );
    expect(long.map((file) => file.path)).toEqual([]);
  });

  it("has no file named for a kind of code instead of a meaning", () => {
    const named = files.filter((file) => /\/(utils?|helpers?|common|misc|types)\.tsx?$/.test(file.path));
    expect(named.map((file) => file.path)).toEqual([]);
  });
});

function forbiddenRooms(file: SourceFile): string[] {
  return roomsImported(file)
    .filter((room) => room !== file.room && !ROOMS[file.room]?.rooms.includes(room))
    .map((room) => `${file.path} -> #${room}`);
}

function roomsImported(file: SourceFile): string[] {
  const byName = file.imports.filter((name) => name.startsWith("#")).map((name) => name.slice(1));
  const byPath = file.imports.filter((name) => name.startsWith(".")).map((name) => join(dirname(file.path), name));
  return [
    ...byName,
    ...byPath.flatMap((path) => (path.startsWith("src/store/") ? [path.split("/").slice(1, 3).join("/")] : [])),
  ];
}

function forbiddenLibraries(file: SourceFile): string[] {
  return file.imports
    .filter((name) => !name.startsWith("#") && !name.startsWith("."))
    .filter((name) => !libraryAllowed(file.room, name))
    .map((name) => `${file.path} -> ${name}`);
}

function libraryAllowed(room: string, name: string): boolean {
  if (name.startsWith("node:")) return MAY_USE_NODE.includes(room);
  return ROOMS[room]?.libraries.some((library) => name === library || name.startsWith(`${library}/`)) ?? false;
}

function relativeEscapes(file: SourceFile): string[] {
  const own = `src/${file.room}/`;
  return file.imports
    .filter((name) => name.startsWith("."))
    .filter((name) => !join(dirname(file.path), name).startsWith(own))
    .map((name) => `${file.path} -> ${name}`);
}

/** First cycle among files found by depth-first search, as the list of its paths. */
function findCycle(all: readonly SourceFile[]): readonly string[] | undefined {
  const byPath = new Map(all.map((file) => [file.path, file]));
  const done = new Set<string>();
  const visit = (path: string, trail: readonly string[]): readonly string[] | undefined => {
    if (trail.includes(path)) return [...trail.slice(trail.indexOf(path)), path];
    if (done.has(path)) return undefined;
    const cycle = neighbours(byPath.get(path)!, byPath)
      .map((next) => visit(next, [...trail, path]))
      .find(Boolean);
    done.add(path);
    return cycle;
  };
  return all.map((file) => visit(file.path, [])).find(Boolean);
}

function neighbours(file: SourceFile, byPath: ReadonlyMap<string, SourceFile>): string[] {
  return file.imports
    .flatMap((name) =>
      name.startsWith("#") ? `src/${name.slice(1)}/index.ts` : join(dirname(file.path), name.replace(/\?.*$/, "")),
    )
    .filter((path) => byPath.has(path));
}
