import { describe, expect, it } from "vitest";
import { readPlace } from "./use-place.ts";

const read = (query: string, start?: number) => readPlace(new URLSearchParams(query), start);

describe("what the runner's address shows", () => {
  it("shows the line named, and the ask where one is named", () => {
    expect(read("line=12")).toEqual({ kind: "line", position: { line: 12 } });
    expect(read("line=12&ask=rig/cord")).toEqual({ kind: "line", position: { line: 12, ask: "rig/cord" } });
  });

  it("shows an ask taken out of its group alone again, after a reload too", () => {
    const position = { line: 4, ask: "count/front", isAlone: true };
    expect(read("line=4&ask=count%2Ffront&alone=1")).toEqual({ kind: "line", position });
  });

  it("resumes where nothing is named, and is done where nothing is left", () => {
    expect(read("", 7)).toEqual({ kind: "line", position: { line: 7 } });
    expect(read("line=none", 7)).toEqual({ kind: "line", position: { line: 7 } });
    expect(read("")).toEqual({ kind: "done" });
  });

  it("shows the list and the sealing by name", () => {
    expect(read("at=lines", 7).kind).toBe("lines");
    expect(read("at=seal", 7).kind).toBe("seal");
    expect(read("at=grounded", 7).kind).toBe("grounded");
  });
});
