const LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";
const VALUES = new Map([...LETTERS].map((letter, value) => [letter, value]));

/**
 * Bytes in the 45 letters that a QR code packs closest: three for two bytes, two for a last single one.
 *
 * @source IETF RFC 9285, The Base45 Data Encoding, section 4, 2022
 */
export function toBase45(bytes: Uint8Array): string {
  let text = "";
  for (let at = 0; at < bytes.length; at += 2) {
    const isPair = at + 1 < bytes.length;
    let value = isPair ? bytes[at]! * 256 + bytes[at + 1]! : bytes[at]!;
    for (let count = isPair ? 3 : 2; count > 0; count--) {
      text += LETTERS[value % 45]!;
      value = Math.floor(value / 45);
    }
  }
  return text;
}

/**
 * The bytes of such a text; undefined where it is none: a letter that is not one of the 45, a group that is cut short or
 * stands for more than its bytes can hold.
 *
 * @source IETF RFC 9285, The Base45 Data Encoding, sections 4 and 6, 2022
 */
export function fromBase45(text: string): Uint8Array | undefined {
  if (text.length % 3 === 1) return undefined;
  const bytes: number[] = [];
  for (let at = 0; at < text.length; at += 3) {
    const values = Array.from(text.slice(at, at + 3), (letter) => VALUES.get(letter));
    if (values.includes(undefined)) return undefined;
    const value = values.reduce<number>((sum, one, place) => sum + one! * 45 ** place, 0);
    if (value > (values.length === 3 ? 0xffff : 0xff)) return undefined;
    if (values.length === 3) bytes.push(value >> 8);
    bytes.push(value & 0xff);
  }
  return Uint8Array.from(bytes);
}
