import { InputError } from "#base";
import { sha256 } from "@noble/hashes/sha2.js";
import { bytesToHex } from "@noble/hashes/utils.js";
import type { PhotoRef } from "#readiness";

/** Longest side of a kept photo [px]: well under what any device's canvas refuses. */
export const LONGEST_SIDE = 1600;
const QUALITY = 0.82;

export interface ShrunkPhoto {
  readonly ref: PhotoRef;
  readonly bytes: Uint8Array;
}

/**
 * Downscales a photo to a JPEG of at most 1600 px and names it by its content.
 * The bytes are kept, not the Blob: some phones lose Blobs that came from the camera.
 *
 * @throws InputError WE-110 no image this device can read, WE-111 the device drew it blank
 */
export async function shrinkPhoto(file: Blob): Promise<ShrunkPhoto> {
  const bitmap = await readImage(file);
  const size = fitWithin(bitmap, LONGEST_SIDE);
  const canvas = new OffscreenCanvas(size.width, size.height);
  const brush = canvas.getContext("2d");
  if (!brush) throw photoFault("WE-111", "no canvas", "Close other pages and try again.");
  brush.drawImage(bitmap, 0, 0, size.width, size.height);
  bitmap.close();
  const jpeg = await canvas.convertToBlob({ type: "image/jpeg", quality: QUALITY });
  const bytes = new Uint8Array(await jpeg.arrayBuffer());
  if (isBlank(brush, size)) throw photoFault("WE-111", "a blank picture", "Take the photo again.");
  return { bytes, ref: { hash: bytesToHex(sha256(bytes)), mime: "image/jpeg", bytes: bytes.length, ...size } };
}

/** The greatest size of the same shape that fits, never larger than it is. */
export function fitWithin(
  { width, height }: { readonly width: number; readonly height: number },
  longest: number,
): { readonly width: number; readonly height: number } {
  const scale = Math.min(1, longest / Math.max(width, height));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

async function readImage(file: Blob): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(file);
  } catch {
    throw photoFault("WE-110", file.type || "a file of unknown kind", "Take a photo, or choose a JPEG or PNG picture.");
  }
}

/** A canvas that ran out of memory comes out all transparent, without an error. */
function isBlank(
  brush: OffscreenCanvasRenderingContext2D,
  { width, height }: { readonly width: number; readonly height: number },
): boolean {
  const corners = [0, 1, 2, 3].map((at) => [(at % 2) * (width - 1), (at >> 1) * (height - 1)] as const);
  return corners.every(([x, y]) => brush.getImageData(x, y, 1, 1).data[3] === 0);
}

function photoFault(code: string, got: string, remedy: string): InputError {
  return new InputError([{ code, field: "photo", got, allowed: "a photo this device can read", remedy }]);
}
