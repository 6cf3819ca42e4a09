import { spawn } from "node:child_process";
import { once } from "node:events";
import { join } from "node:path";
import { expect, it } from "vitest";

const root = join(import.meta.dirname, "..", "..");

it("ends quietly with 141 where whoever read its output has gone", async () => {
  const words = ["--import", "tsx", "src/cli/main.ts", "ask", "--json"];
  const child = spawn(process.execPath, words, { cwd: root, stdio: ["ignore", "pipe", "pipe"] });
  child.stdout.destroy();
  let complaint = "";
  child.stderr.on("data", (piece: Buffer) => (complaint += piece.toString()));
  const [exit] = (await once(child, "close")) as [number];
  expect({ exit, complaint }).toEqual({ exit: 141, complaint: "" });
}, 30_000);
