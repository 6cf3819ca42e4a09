import type { Page } from "playwright-core";

/**
 * Mean relative luminance of what a page shows, as WCAG 2.2 defines it for each pixel: how much light the screen gives.
 *
 * @param page - what is looked at
 * @param lamp - another page, in which the picture is measured
 * @param looks - how often it is looked at, for what flashes; the brightest counts
 */
export async function brightest(page: Page, lamp: Page, looks = 8): Promise<number> {
  let most = 0;
  for (let look = 0; look < looks; look += 1) {
    const picture = (await page.screenshot()).toString("base64");
    most = Math.max(most, await lamp.evaluate(measure, picture));
  }
  return most;
}

/** In a page: decodes the picture and takes the mean over all of it. */
async function measure(picture: string): Promise<number> {
  const bytes = Uint8Array.from(atob(picture), (letter) => letter.codePointAt(0)!);
  const bitmap = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
  const drawing = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d")!;
  drawing.drawImage(bitmap, 0, 0);
  const { data } = drawing.getImageData(0, 0, bitmap.width, bitmap.height);
  const linear = Array.from({ length: 256 }, (_, level) => {
    const share = level / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  let sum = 0;
  for (let at = 0; at < data.length; at += 4) {
    sum += 0.2126 * linear[data[at]!]! + 0.7152 * linear[data[at + 1]!]! + 0.0722 * linear[data[at + 2]!]!;
  }
  return sum / (data.length / 4);
}
