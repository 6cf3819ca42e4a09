import { writeFileSync } from "node:fs";
import type { Page } from "playwright-core";

/** Pictures a second, and how many a camera takes of each code. */
const [RATE, EACH] = [5, 4];

/**
 * Makes a film of pictures, as a camera would give it, for a browser that has none: YUV4MPEG2, without colour.
 *
 * @param pictures - PNGs of one size
 * @param lamp - a page to decode them in
 * @returns flags by which a browser sees the film through its camera
 */
export async function filmOf(pictures: readonly Buffer[], path: string, lamp: Page): Promise<readonly string[]> {
  const frames: Buffer[] = [];
  let size = { width: 0, height: 0 };
  for (const picture of pictures) {
    const { luma, ...found } = await lamp.evaluate(greyOf, picture.toString("base64"));
    size = found;
    const chroma = Buffer.alloc((found.width * found.height) / 2, 128);
    const frame = Buffer.concat([Buffer.from("FRAME\n"), Buffer.from(luma, "base64"), chroma]);
    for (let time = 0; time < EACH; time += 1) frames.push(frame);
  }
  const head = Buffer.from(`YUV4MPEG2 W${size.width} H${size.height} F${RATE}:1 Ip A1:1 C420jpeg\n`);
  writeFileSync(path, Buffer.concat([head, ...frames]));
  return [
    "--use-fake-ui-for-media-stream",
    "--use-fake-device-for-media-stream",
    `--use-file-for-fake-video-capture=${path}`,
  ];
}

/** In a page: the brightness of each dot, of a picture of an even number of dots, in the middle of grey surroundings. */
async function greyOf(
  picture: string,
): Promise<{ readonly luma: string; readonly width: number; readonly height: number }> {
  const bytes = Uint8Array.from(atob(picture), (letter) => letter.codePointAt(0)!);
  const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
  const [width, height] = [640, 480];
  const drawing = new OffscreenCanvas(width, height).getContext("2d")!;
  drawing.fillStyle = "#777";
  drawing.fillRect(0, 0, width, height);
  drawing.drawImage(bitmap, (width - 440) / 2, (height - 440) / 2, 440, 440);
  const { data } = drawing.getImageData(0, 0, width, height);
  let luma = "";
  for (let at = 0; at < data.length; at += 4) {
    luma += String.fromCharCode(Math.round(0.299 * data[at]! + 0.587 * data[at + 1]! + 0.114 * data[at + 2]!));
  }
  return { luma: btoa(luma), width, height };
}
