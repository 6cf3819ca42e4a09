/** One file of the app: its address without the leading slash, its media type, and what is in it. */
export interface AppFile {
  readonly url: string;
  readonly type: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** All files whose names carry what is in them, in one: a device asks once, and not some four hundred times. */
export const PACK = "app.pack";

/** Bytes that say how long the list of files is: an unsigned number, the most significant byte first. */
const LENGTH_BYTES = 4;

/** Lays files one after the other, behind their list: how long it is, then address, type and length of each as JSON. */
export function packFiles(files: readonly AppFile[]): Uint8Array<ArrayBuffer> {
  const list = new TextEncoder().encode(JSON.stringify(files.map(({ url, type, bytes }) => [url, type, bytes.length])));
  const starts = startsOf([LENGTH_BYTES, list.length, ...files.map(({ bytes }) => bytes.length)]);
  const pack = new Uint8Array(starts.at(-1)!);
  new DataView(pack.buffer).setUint32(0, list.length);
  [list, ...files.map(({ bytes }) => bytes)].forEach((part, at) => pack.set(part, starts[at + 1]!));
  return pack;
}

/**
 * @returns the files of a pack, in the order in which they were packed
 * @throws Error where the pack was cut short or is longer than its list says
 */
export function unpackFiles(pack: Uint8Array<ArrayBuffer>): readonly AppFile[] {
  const listed = new DataView(pack.buffer, pack.byteOffset).getUint32(0);
  const text = new TextDecoder().decode(pack.subarray(LENGTH_BYTES, LENGTH_BYTES + listed));
  const list = JSON.parse(text) as readonly (readonly [url: string, type: string, length: number])[];
  const starts = startsOf([LENGTH_BYTES, listed, ...list.map(([, , length]) => length)]);
  if (starts.at(-1) !== pack.length) throw new Error(`The app came in ${pack.length} bytes of ${starts.at(-1)}.`);
  return list.map(([url, type], at) => ({ url, type, bytes: pack.subarray(starts[at + 2], starts[at + 3]) }));
}

/** Where parts of these lengths begin when they lie one after the other, and at last where all of them end. */
function startsOf(lengths: readonly number[]): readonly number[] {
  return lengths.reduce<readonly number[]>((starts, length) => [...starts, starts.at(-1)! + length], [0]);
}
