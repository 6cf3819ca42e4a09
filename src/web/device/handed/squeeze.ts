/**
 * Text, made small: DEFLATE by the browser's own hand.
 *
 * @source IETF RFC 1951, DEFLATE Compressed Data Format, 1996
 */
export async function squeeze(text: string): Promise<Uint8Array> {
  const stream = new Blob([text]).stream().pipeThrough(new CompressionStream("deflate-raw"));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** The text again, or why there is none. */
export type Unsqueezed = { readonly text: string } | "too-large" | "damaged";

/**
 * Makes text of it again. Reads no further than it may: a few thousand bytes can be made to stand for many gigabytes.
 *
 * @param most - bytes of text [byte]
 */
export async function unsqueeze(bytes: Uint8Array, most: number): Promise<Unsqueezed> {
  const stream = new Blob([Uint8Array.from(bytes)]).stream().pipeThrough(new DecompressionStream("deflate-raw"));
  const parts = await readParts(stream.getReader(), most);
  if (typeof parts === "string") return parts;
  const whole = await new Blob(parts).arrayBuffer();
  return { text: new TextDecoder("utf-8").decode(whole) };
}

type Parts = Uint8Array<ArrayBuffer>[];

async function readParts(
  reader: ReadableStreamDefaultReader<Uint8Array<ArrayBuffer>>,
  most: number,
): Promise<Parts | "too-large" | "damaged"> {
  const parts: Parts = [];
  for (let size = 0; ;) {
    // A browser throws where the bytes are cut short or none of these at all: that is an answer here.
    const read = await reader.read().catch(() => "damaged" as const);
    if (read === "damaged") return read;
    if (read.done) return parts;
    size += read.value.byteLength;
    if (size > most) {
      await reader.cancel();
      return "too-large";
    }
    parts.push(read.value);
  }
}
