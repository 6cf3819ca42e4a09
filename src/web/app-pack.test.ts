import { expect, test } from "vitest";
import { packFiles, unpackFiles } from "./app-pack.ts";

const utf8 = (text: string) => new TextEncoder().encode(text);
const files = [
  { url: "index.html", type: "text/html", bytes: utf8("<p>Brück</p>") },
  { url: "empty.css", type: "text/css", bytes: utf8("") },
  { url: "icon.png", type: "image/png", bytes: new Uint8Array([0, 255, 10, 13, 0]) },
];

test("a pack gives back every file, byte for byte and in order", () => {
  expect(unpackFiles(packFiles(files))).toEqual(files);
  expect(unpackFiles(packFiles([]))).toEqual([]);
});

test("a pack that was cut short, or has something behind it, is refused as a whole", () => {
  const whole = packFiles(files);
  const longer = new Uint8Array(whole.length + 1);
  longer.set(whole);
  expect(() => unpackFiles(whole.slice(0, -1))).toThrow(`${whole.length - 1} bytes of ${whole.length}`);
  expect(() => unpackFiles(longer)).toThrow(`${whole.length + 1} bytes of ${whole.length}`);
  for (const cut of [0, 3, 4, 10]) expect(() => unpackFiles(whole.slice(0, cut))).toThrow();
});
