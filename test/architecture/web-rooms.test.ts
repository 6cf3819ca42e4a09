import { dirname, join } from "node:path/posix";
import { describe, expect, it } from "vitest";
import { sourceFiles, type SourceFile } from "./source-files.ts";
import { WEB_ROOMS, webRoomOf } from "./web-rooms.ts";

const files = sourceFiles();
const web = files.filter((file) => file.room === "web" && !file.isTest);

describe("rooms inside the web", () => {
  it("have a line in the list for every folder", () => {
    const rooms = [...new Set(web.map((file) => webRoomOf(file.path)))].toSorted();
    expect(rooms).toEqual(Object.keys(WEB_ROOMS).toSorted());
  });

  it("import each other only where the list allows it: no page another page", () => {
    expect(web.flatMap(forbidden)).toEqual([]);
  });

  it("are listed without a circle", () => {
    expect(Object.keys(WEB_ROOMS).filter((room) => below(room).has(room))).toEqual([]);
  });
});

describe("folders", () => {
  it("hold at most 25 source files side by side, tests aside", () => {
    const counts = new Map<string, number>();
    const written = files.filter(({ isTest }) => !isTest);
    for (const { path } of written) counts.set(dirname(path), (counts.get(dirname(path)) ?? 0) + 1);
    expect([...counts].filter(([, count]) => count > 25)).toEqual([]);
  });
});

function forbidden(file: SourceFile): string[] {
  const own = webRoomOf(file.path);
  return file.imports
    .filter((name) => name.startsWith("."))
    .map((name) => join(dirname(file.path), name))
    .filter((path) => webRoomOf(path) !== own && !WEB_ROOMS[own]?.includes(webRoomOf(path)))
    .map((path) => `${file.path} -> ${path}`);
}

function below(room: string, seen = new Set<string>()): ReadonlySet<string> {
  for (const next of WEB_ROOMS[room] ?? []) {
    if (seen.has(next)) continue;
    seen.add(next);
    below(next, seen);
  }
  return seen;
}
