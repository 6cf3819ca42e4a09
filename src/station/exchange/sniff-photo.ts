/** Kinds of picture that a station keeps. */
export type PhotoKind = "image/jpeg" | "image/png" | "image/webp";

/** Kind of picture by its first bytes, whatever the sender calls it; undefined for what is none. */
export function sniffPhoto(bytes: Uint8Array): PhotoKind | undefined {
  const head = String.fromCharCode(...bytes.subarray(0, 12));
  if (head.startsWith("\xff\xd8\xff")) return "image/jpeg";
  if (head.startsWith("\x89PNG\r\n\x1a\n")) return "image/png";
  return head.startsWith("RIFF") && head.slice(8) === "WEBP" ? "image/webp" : undefined;
}
