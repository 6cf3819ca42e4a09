import { strFromU8, unzipSync } from "fflate";
import { SHEET_LIMITS } from "../limits.ts";
import { damaged, sheetError } from "../sheet-faults.ts";

/** Parts of a workbook by name, unpacked when asked for. */
export interface Package {
  readonly names: ReadonlySet<string>;
  /** Text of a part; undefined where there is none. */
  text(name: string): string | undefined;
}

/**
 * Opens a workbook without unpacking it. What a part says it unpacks to is held against what is left before it is
 * unpacked, and no part gives more than it said.
 *
 * @throws InputError ST-212 where it is no archive or would be too much
 */
export function openPackage(bytes: Uint8Array): Package {
  const sizes = new Map<string, number>();
  unzip(bytes, ({ name, originalSize }) => {
    if (sizes.size >= SHEET_LIMITS.parts) throw tooMuch(`more than ${SHEET_LIMITS.parts} parts`);
    sizes.set(name, originalSize);
    return false;
  });
  let left: number = SHEET_LIMITS.unpacked;
  return {
    names: new Set(sizes.keys()),
    text: (name) => {
      const size = sizes.get(name);
      if (size === undefined) return undefined;
      left -= size;
      if (left < 0) throw tooMuch(`${name} unpacks to ${size} bytes`);
      const part = unzip(bytes, (file) => file.name === name)[name];
      if (part === undefined || part.length !== size) throw damaged(`${name} is not as long as it says`);
      return strFromU8(part);
    },
  };
}

function unzip(bytes: Uint8Array, filter: (file: { name: string; originalSize: number }) => boolean) {
  try {
    return unzipSync(bytes, { filter });
  } catch (cause) {
    if ((cause as { readonly faults?: unknown }).faults !== undefined) throw cause;
    throw damaged((cause as Error).message);
  }
}

function tooMuch(got: string): Error {
  const allowed = `a workbook that unpacks to at most ${SHEET_LIMITS.unpacked / 1e6} MB`;
  const remedy = "Copy the one table that is wanted into a new file. Nothing was taken in.";
  return sheetError("ST-214", got, allowed, remedy);
}
