import { mkdir, readFile, writeFile } from "node:fs/promises";
import chromium from "@sparticuz/chromium";
import { chromium as browserType } from "playwright-core";

/** Draws the app's PNG icons from its one SVG: `npx tsx scripts/draw-icons.ts`. The results are kept in the tree. */
const folder = new URL("../src/web/public/icons/", import.meta.url);
const sizes = [180, 192, 512];

const svg = await readFile(new URL("drykeel.svg", folder), "utf8");
const browser = await browserType.launch({
  executablePath: await chromium.executablePath(),
  args: [...chromium.args.filter((flag) => flag !== "--single-process"), "--no-sandbox"],
});
await mkdir(folder, { recursive: true });
for (const size of sizes) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
  await writeFile(new URL(`drykeel-${size}.png`, folder), await page.screenshot());
  await page.close();
}
await browser.close();
