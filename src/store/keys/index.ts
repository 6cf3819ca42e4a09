export { DEFAULT_KEY_FILE, openKeyFile, readKeyFile, rotateKey, type SigningKey } from "./key-file.ts";
export { SignedSince, sinceFileOf } from "./signed-since.ts";
export { DEFAULT_KEPT_HEADS, KeptHeads } from "./kept-heads.ts";
