import { exportLine } from "#log";
import type { DeviceStore } from "./device-store.ts";
import { readHanded } from "../handed/index.ts";

/** Everything this device holds as an exported log: a way out, whatever has become of network, server or sign-in. */
export async function heldFile(store: DeviceStore): Promise<Blob> {
  const lines: string[] = [];
  for await (const line of store.exportAll()) lines.push(`${line}\n`);
  for (const { entry } of await readHanded(store)) lines.push(`${exportLine({ kind: "unsent", entry })}\n`);
  return new Blob(lines, { type: "application/x-ndjson" });
}

/** "drykeel-device-2026-03-14-1402.ndjson" */
export function heldFileName(at: string): string {
  return `drykeel-device-${at.slice(0, 16).replace("T", "-").replace(":", "")}.ndjson`;
}

/** Hands a file to the browser to save. */
export function saveFile(file: Blob, name: string): void {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
