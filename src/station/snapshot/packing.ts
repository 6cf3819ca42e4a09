/**
 * A JSON value in which each string, and each list of field names, is written once: a snapshot says the same few hundred
 * words a million times, and a phone reads every letter of it.
 *
 * In `root` a whole number is a string's place in `strings`; a text is a number; a list whose first is -1 is a list, any
 * other an object: its first is the place of its field names in `shapes`.
 */
export interface PackedValue {
  readonly strings: readonly string[];
  readonly shapes: readonly (readonly number[])[];
  readonly root: Packed;
}

type Packed = number | string | boolean | null | readonly Packed[];

const LIST = -1;
/** Set as any other field it would change what the object is. */
const INBORN = "__proto__";

/** @param value - anything that JSON can say; it comes back as JSON would bring it */
export function packValue(value: unknown): PackedValue {
  const packer = new Packer();
  const root = packer.pack(value);
  return { strings: packer.strings.all, shapes: packer.shapes.all, root };
}

/** The value as JSON would bring it. */
export function unpackValue({ strings, shapes, root }: PackedValue): unknown {
  const fields = shapes.map((shape) => shape.map((name) => strings[name]!));
  const unpack = (packed: Packed): unknown => {
    if (typeof packed === "number") return strings[packed];
    if (typeof packed === "string") return Number(packed);
    if (packed === null || typeof packed === "boolean") return packed;
    const said: unknown[] = Array.from({ length: packed.length - 1 });
    for (let at = 1; at < packed.length; at++) said[at - 1] = unpack(packed[at]!);
    return packed[0] === LIST ? said : objectOf(fields[packed[0] as number]!, said);
  };
  return unpack(root);
}

function objectOf(names: readonly string[], values: readonly unknown[]): object {
  const made: Record<string, unknown> = {};
  for (let at = 0; at < names.length; at++) {
    const name = names[at]!;
    if (name === INBORN) return Object.fromEntries(names.map((one, place) => [one, values[place]]));
    made[name] = values[at];
  }
  return made;
}

/** Values by the order in which they were first met. */
class Places<Value> {
  readonly all: Value[] = [];
  readonly #places = new Map<string, number>();

  placeOf(key: string, value: Value): number {
    const known = this.#places.get(key);
    if (known !== undefined) return known;
    this.#places.set(key, this.all.length);
    return this.all.push(value) - 1;
  }
}

class Packer {
  readonly strings = new Places<string>();
  readonly shapes = new Places<readonly number[]>();

  pack(value: unknown): Packed {
    if (typeof value === "string") return this.strings.placeOf(value, value);
    if (typeof value === "number") return Number.isFinite(value) ? String(value) : null;
    if (typeof value === "boolean") return value;
    if (Array.isArray(value)) return [LIST, ...value.map((one) => this.pack(one))];
    return typeof value === "object" && value !== null ? this.#object(value) : null;
  }

  #object(value: object): Packed {
    const said = Object.entries(value).filter(([, one]) => one !== undefined);
    const names = said.map(([name]) => this.strings.placeOf(name, name));
    return [this.shapes.placeOf(names.join(), names), ...said.map(([, one]) => this.pack(one))];
  }
}
