import { mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { makeFolder } from "./folder.ts";

const root = mkdtempSync(join(tmpdir(), "drykeel-folder-"));
afterAll(() => rmSync(root, { recursive: true }));

describe("a folder made where it is missing", () => {
  it("comes with those above it, and stays where it is there already", () => {
    const path = join(root, "one", "two", "three");
    makeFolder(path);
    makeFolder(path);
    expect(statSync(path).isDirectory()).toBe(true);
  });

  it("is refused below a file", () => {
    writeFileSync(join(root, "file"), "");
    expect(() => makeFolder(join(root, "file", "below"))).toThrow(expect.objectContaining({ code: "ENOTDIR" }));
    expect(() => makeFolder(join(root, "file"))).toThrow(expect.objectContaining({ code: "EEXIST" }));
  });

  it.runIf(process.platform === "linux")("is refused at once where no folder can be made", () => {
    expect(() => makeFolder("/proc/drykeel/data")).toThrow(expect.objectContaining({ code: "ENOENT" }));
  });
});
