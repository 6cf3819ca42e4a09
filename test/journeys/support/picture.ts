import { crc32, deflateSync } from "node:zlib";

/** A picture larger than a phone's screen: a light patch on dark ground, as PNG. */
export function pictureOfLight(width = 2400, height = 1800): Buffer {
  const rows = Buffer.alloc(height * (1 + width * 3));
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) {
      const lit = (x - width / 2) ** 2 + (y - height / 2) ** 2 < (height / 3) ** 2;
      rows.fill(lit ? 220 : 40, y * (1 + width * 3) + 1 + x * 3, y * (1 + width * 3) + 4 + x * 3);
    }
  }
  const size = Buffer.alloc(13);
  size.writeUInt32BE(width, 0);
  size.writeUInt32BE(height, 4);
  size.set([8, 2, 0, 0, 0], 8);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk("IHDR", size),
    chunk("IDAT", deflateSync(rows)),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(name: string, data: Buffer): Buffer {
  const body = Buffer.concat([Buffer.from(name, "latin1"), data]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const check = Buffer.alloc(4);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
}
