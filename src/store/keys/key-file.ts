import { InputError, parsedJson, printGiven } from "#base";
import { firstKey, followingKey, publicKeyOf, type StationKey } from "#log";
import { randomBytes, randomUUID } from "node:crypto";
import { mkdirSync, readFileSync, statSync } from "node:fs";
import { link, open, rename, unlink } from "node:fs/promises";
import { dirname, join, resolve } from "node:path";
import { z } from "zod";

/** What a station signs the heads of its log with. */
export interface SigningKey {
  /** Every public key it ever had, oldest first; the last signs now. */
  readonly keys: readonly StationKey[];
  /** Ed25519 seed of the last key. Never shown, printed, logged or put in the database. */
  readonly secret: Uint8Array;
}

/** Below the data folder, where no other path is set. */
export const DEFAULT_KEY_FILE = join("keys", "signing.json");

const hex = (bytes: number) => z.string().regex(new RegExp(`^[0-9a-f]{${bytes * 2}}$`));
const keyShape = z.strictObject({
  key: hex(32),
  since: z.string(),
  after: hex(32).optional(),
  signature: hex(64).optional(),
});
const fileShape = z.strictObject({
  format: z.literal("drykeel-key"),
  version: z.literal(1),
  keys: z.array(keyShape).min(1),
  secret: hex(32),
});

/** For the owner alone. */
const MODE = 0o600;

/**
 * Reads the key file, making one where there is none.
 *
 * @param path - the key file; it must not lie in a folder that is served
 * @param now - RFC 3339 UTC, for a key that is made
 * @throws InputError ST-150 where others may read it, ST-151 where it is no key file, ST-152 where it cannot be made
 */
export async function openKeyFile(path: string, now: string): Promise<SigningKey> {
  const found = readKeyFile(path);
  if (found !== undefined) return found;
  const secret = new Uint8Array(randomBytes(32));
  const made = { keys: [firstKey(secret, now)], secret };
  await writeKeyFile(path, made, putWhereNone);
  return readKeyFile(path) ?? made;
}

/**
 * Puts a new key after the one in the file, which vouches for it and is forgotten.
 *
 * @returns the keys as they are now
 * @throws InputError as `openKeyFile`
 */
export async function rotateKey(path: string, now: string): Promise<SigningKey> {
  const before = await openKeyFile(path, now);
  const secret = new Uint8Array(randomBytes(32));
  const after = { keys: [...before.keys, followingKey(secret, now, before.secret)], secret };
  await writeKeyFile(path, after, rename);
  return after;
}

/** @returns undefined where there is no such file */
export function readKeyFile(path: string): SigningKey | undefined {
  const text = readOwn(path);
  if (text === undefined) return undefined;
  const read = fileShape.safeParse(parsedJson(text));
  if (!read.success) throw noKeyFile(path);
  const { keys, secret } = read.data;
  const key = { keys: keys.map(toStationKey), secret: new Uint8Array(Buffer.from(secret, "hex")) };
  if (keys.at(-1)?.key !== publicKeyOf(key.secret)) throw noKeyFile(path);
  return key;
}

function toStationKey({ key, since, after, signature }: z.infer<typeof keyShape>): StationKey {
  return { key, since, ...(after === undefined ? {} : { after }), ...(signature === undefined ? {} : { signature }) };
}

function readOwn(path: string): string | undefined {
  try {
    const { mode } = statSync(path);
    if (process.platform !== "win32" && (mode & 0o077) !== 0) throw openToOthers(path, mode);
    return readFileSync(path, "utf8");
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "ENOENT") return undefined;
    if (cause instanceof InputError) throw cause;
    throw unusable(path, cause as Error);
  }
}

/** Written beside the name, flushed, and put in its place at one stroke: the file is never half a key. */
async function writeKeyFile(path: string, key: SigningKey, put: (part: string, path: string) => Promise<void>) {
  const part = `${resolve(path)}.${randomUUID()}.part`;
  try {
    mkdirSync(dirname(part), { recursive: true, mode: 0o700 });
    await writeOwn(part, key);
    await put(part, resolve(path));
  } catch (cause) {
    throw unusable(path, cause as Error);
  }
}

async function writeOwn(part: string, { keys, secret }: SigningKey): Promise<void> {
  const content = { format: "drykeel-key", version: 1, keys, secret: Buffer.from(secret).toString("hex") };
  const handle = await open(part, "wx", MODE);
  try {
    await handle.writeFile(`${JSON.stringify(content, null, 2)}\n`);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** Of two programs that make the file at once, the first one's key stays. */
async function putWhereNone(part: string, path: string): Promise<void> {
  try {
    await link(part, path);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code !== "EEXIST") throw cause;
  } finally {
    await unlink(part);
  }
}

const ELSEWHERE = "Set KEY_FILE to a file that only the account running Drykeel can read and write.";

function openToOthers(path: string, mode: number): InputError {
  const got = `${path} with mode ${(mode & 0o777).toString(8)}`;
  const remedy = `Others could have read it: chmod 600 it, and if they may have, make a new key: drykeel witness --new-key`;
  return fault("ST-150", got, "a key file that only its owner may read (mode 600)", remedy);
}

function noKeyFile(path: string): InputError {
  return fault("ST-151", path, "a whole key file written by Drykeel", "Put the file back from where it is kept safe.");
}

function unusable(path: string, cause: Error): InputError {
  return fault("ST-152", `${path}: ${cause.message}`, "a key file that can be read and written", ELSEWHERE);
}

function fault(code: string, got: string, allowed: string, remedy: string): InputError {
  return new InputError([{ code, field: "KEY_FILE", got: printGiven(got), allowed, remedy }]);
}
