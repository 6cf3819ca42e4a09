import type { Photo } from "#station";

/**
 * True for a picture that a PDF takes as it is: a whole JPEG, or a whole PNG of eight bits without transparency or
 * interlacing. The PDF library takes apart any other, with a kind word for none that is broken: one forged PNG could
 * ask it for gigabytes. Its frame is therefore read here first.
 */
export function isEmbeddable({ mime, bytes }: Photo): boolean {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (mime === "image/jpeg") return isWholeJpeg(view);
  return mime === "image/png" && isPlainPng(view);
}

const PNG_HEAD = 8;
/** Length, name and check sum around the content of a PNG chunk [byte]. */
const CHUNK_FRAME = 12;
const IHDR = 0x49484452;
const IDAT = 0x49444154;
const IEND = 0x49454e44;

/**
 * Walks the chunks to the end: each within the file, a header first, data between.
 *
 * @source W3C, Portable Network Graphics (PNG) Specification (Third Edition), sections 5.3 and 11.2.1, 2025, FROM MEMORY
 */
function isPlainPng(view: DataView): boolean {
  let hasData = false;
  for (let at = PNG_HEAD; at + CHUNK_FRAME <= view.byteLength;) {
    const [length, name] = [view.getUint32(at), view.getUint32(at + 4)];
    if (length > view.byteLength - at - CHUNK_FRAME) return false;
    const isFirst = at === PNG_HEAD;
    if (isFirst !== (name === IHDR) || (isFirst && !isPlainHeader(view, at + 8, length))) return false;
    if (name === IEND) return hasData;
    hasData ||= name === IDAT;
    at += length + CHUNK_FRAME;
  }
  return false;
}

/** Grey or colour, eight bits, no transparency, not interlaced. */
function isPlainHeader(view: DataView, at: number, length: number): boolean {
  if (length !== 13 || view.getUint32(at) === 0 || view.getUint32(at + 4) === 0) return false;
  const [depth, colour, interlaced] = [view.getUint8(at + 8), view.getUint8(at + 9), view.getUint8(at + 12)];
  return depth === 8 && (colour === 0 || colour === 2) && interlaced === 0;
}

/**
 * Walks the segments to the frame header, which names size and colours.
 *
 * @source ITU-T T.81, sections B.1.1 and B.2.2, 1992, FROM MEMORY
 */
function isWholeJpeg(view: DataView): boolean {
  for (let at = 2; at + 10 <= view.byteLength;) {
    const marker = view.getUint16(at);
    if (isFrame(marker)) return isFrameHeader(view, at + 2);
    const length = view.getUint16(at + 2);
    if (marker < 0xffc0 || length < 2) return false;
    at += 2 + length;
  }
  return false;
}

/** SOF0 to SOF15 but for the three numbers among them that are tables. */
function isFrame(marker: number): boolean {
  return marker >= 0xffc0 && marker <= 0xffcf && ![0xffc4, 0xffc8, 0xffcc].includes(marker);
}

function isFrameHeader(view: DataView, at: number): boolean {
  const [height, width, colours] = [view.getUint16(at + 3), view.getUint16(at + 5), view.getUint8(at + 7)];
  return height > 0 && width > 0 && [1, 3, 4].includes(colours);
}
