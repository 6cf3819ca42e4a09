import type { DeviceStore } from "./device-store.ts";

/**
 * Everything this device holds, one JSON object a line: first what it is, then the station's lines as kept, then the
 * lines not yet sent or refused with why, then photos not yet sent, as base64. A way out whatever has become of the
 * network, the server or the sign-in.
 */
export async function heldFile(store: DeviceStore, device: string, at: string): Promise<Blob> {
  const lines = [JSON.stringify({ drykeel: "held-on-device", version: 1, device, at })];
  for (const kept of await store.kept({})) lines.push(JSON.stringify({ kept }));
  for (const line of await store.outbox()) lines.push(JSON.stringify({ outbox: line }));
  for (const { hash } of await store.unsentPhotos()) {
    const photo = await store.photo(hash);
    if (photo) lines.push(JSON.stringify({ photo: { hash, mime: photo.mime, base64: toBase64(photo.bytes) } }));
  }
  return new Blob([`${lines.join("\n")}\n`], { type: "application/x-ndjson" });
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

function toBase64(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 0x8000) text += String.fromCharCode(...bytes.subarray(at, at + 0x8000));
  return btoa(text);
}
