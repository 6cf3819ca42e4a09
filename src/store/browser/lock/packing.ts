type Row = Readonly<Record<string, unknown>>;

/** What becomes of a row's fields as bytes: their JSON, and behind it the bytes that some of them are. */
interface Head {
  readonly fields: Row;
  /** Fields that are bytes, in order, with their length [bytes] and whether they are a view. */
  readonly bytes: readonly { readonly name: string; readonly length: number; readonly isView: boolean }[];
}

const LENGTH_BYTES = 4;

/**
 * Fields of a row as one piece of bytes. Takes what JSON takes, and bytes as a field of their own.
 *
 * @throws Error where a field would not come back as it was
 */
export function pack(row: Row): Uint8Array<ArrayBuffer> {
  const parts = Object.entries(row).filter((field): field is [string, ArrayBuffer | Uint8Array] => isBytes(field[1]));
  const fields = Object.fromEntries(Object.entries(row).filter(([, value]) => !isBytes(value)));
  const bytes = parts.map(([name, part]) => ({ name, length: part.byteLength, isView: part instanceof Uint8Array }));
  const head = new TextEncoder().encode(JSON.stringify({ fields, bytes } satisfies Head, asItWas));
  return join([lengthOf(head), head, ...parts.map(([, part]) => new Uint8Array(part))]);
}

/** The fields that were packed. */
export function unpack(packed: Uint8Array): Row {
  const length = new DataView(packed.buffer, packed.byteOffset).getUint32(0);
  const head = packed.subarray(LENGTH_BYTES, LENGTH_BYTES + length);
  const { fields, bytes } = JSON.parse(new TextDecoder().decode(head)) as Head;
  const row: Record<string, unknown> = { ...fields };
  let at = LENGTH_BYTES + length;
  for (const { name, length: size, isView } of bytes) {
    const part = packed.slice(at, (at += size));
    row[name] = isView ? part : part.buffer;
  }
  return row;
}

function isBytes(value: unknown): value is ArrayBuffer | Uint8Array {
  return value instanceof ArrayBuffer || value instanceof Uint8Array;
}

/** JSON would turn these into something else without a word. */
function asItWas(name: string, value: unknown): unknown {
  const isPlain = typeof value !== "object" || value === null || Array.isArray(value);
  const isRecord = !isPlain && [Object.prototype, null].includes(Object.getPrototypeOf(value) as object | null);
  const isLost = typeof value === "bigint" || (typeof value === "number" && !Number.isFinite(value));
  if ((!isPlain && !isRecord) || isLost) throw new Error(`Broken invariant: ${name} cannot be sealed as it is`);
  return value;
}

function lengthOf(head: Uint8Array): Uint8Array {
  const length = new Uint8Array(LENGTH_BYTES);
  new DataView(length.buffer).setUint32(0, head.byteLength);
  return length;
}

export function join(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, part) => sum + part.byteLength, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.byteLength;
  }
  return whole;
}
