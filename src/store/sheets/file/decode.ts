/** Text of a file, and in which letters it was read where that was not UTF-8. */
export interface Decoded {
  readonly text: string;
  readonly notice?: string;
}

/** Text from bytes: UTF-8 with or without a mark, UTF-16 with one, else windows-1252 with a notice. */
export function decodeText(bytes: Uint8Array): Decoded {
  if (startsWith(bytes, 0xff, 0xfe)) return { text: new TextDecoder("utf-16le").decode(bytes) };
  if (startsWith(bytes, 0xfe, 0xff)) return { text: new TextDecoder("utf-16be").decode(bytes) };
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    const notice = "It is not UTF-8 and was read as windows-1252: look at letters with accents, and at signs.";
    return { text: new TextDecoder("windows-1252").decode(bytes), notice };
  }
}

export function startsWith(bytes: Uint8Array, ...first: readonly number[]): boolean {
  return first.every((byte, at) => bytes[at] === byte);
}
