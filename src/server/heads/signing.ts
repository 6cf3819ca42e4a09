import { readKeyFile, type SigningKey } from "#store/keys";
import { statSync } from "node:fs";

/** What the server signs with. Nothing that a request says decides which file is read. */
export interface Signing {
  read(): SigningKey;
}

/** The key in a file, read anew when the file has changed: a new key counts without a new start. */
export function signingFrom(path: string, first: SigningKey): Signing {
  let key = first;
  let changed = changeOf(path);
  return {
    read: () => {
      const now = changeOf(path);
      if (now !== changed) [key, changed] = [readKeyFile(path) ?? key, now];
      return key;
    },
  };
}

function changeOf(path: string): number {
  return statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;
}
