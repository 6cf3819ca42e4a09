/**
 * What the witness costs: signing and checking a head, memory of the tree, size of the signing code in the page. Beside
 * each a peer: Node's own Ed25519 for the time, the bare hashes for the memory.
 * Run with `npm run bench -- witness`.
 */
import { createPrivateKey, sign as peerSign, verify as peerVerify, createPublicKey } from "node:crypto";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { gzipSync } from "node:zlib";
import { HashTree, isSignedByItsKey, leafOf, hashText, signHead, type LogHead } from "#log";
import { build } from "esbuild";

setFlagsFromString("--expose-gc");
const collect = runInNewContext("gc") as () => void;

const TIMES = 200;
const LINES = 1_100_000;
/** A head is signed and checked once an exchange at most; what takes longer than this would be felt [ms]. */
const LIMIT_MS = 100;
/** Two hashes of 32 bytes a line, in rows that double as they grow [bytes]. */
const LIMIT_BYTES = 136;

const SECRET = Buffer.from("9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60", "hex");
const head: LogHead = { place: "north", number: LINES, hash: hashText("hash"), root: hashText("root") };

function meanMs(work: () => unknown): number {
  for (let time = 0; time < 20; time += 1) work();
  const start = performance.now();
  for (let time = 0; time < TIMES; time += 1) work();
  return (performance.now() - start) / TIMES;
}

function timeSignatures(): number {
  const signed = signHead(head, "2027-03-14T09:00:00.000Z", SECRET);
  const signing = meanMs(() => signHead(head, "2027-03-14T09:00:00.000Z", SECRET));
  const checking = meanMs(() => isSignedByItsKey(signed));
  const key = createPrivateKey({
    key: Buffer.concat([Buffer.from("302e020100300506032b657004220420", "hex"), SECRET]),
    format: "der",
    type: "pkcs8",
  });
  const text = Buffer.from(JSON.stringify(head));
  const by = peerSign(null, text, key);
  const peer = [
    meanMs(() => peerSign(null, text, key)),
    meanMs(() => peerVerify(null, text, createPublicKey(key), by)),
  ];
  console.log(`signing a head: ${signing.toFixed(2)} ms (node:crypto ${peer[0]!.toFixed(2)} ms)`);
  console.log(`checking a head: ${checking.toFixed(2)} ms (node:crypto ${peer[1]!.toFixed(2)} ms)`);
  return Math.max(signing, checking);
}

/** Worst just after a row doubled, best just before. */
function weighTree(): number {
  const tree = new HashTree();
  const leaf = leafOf(hashText("line"));
  let worst = 0;
  for (const size of [500_000, 1_000_000, LINES]) {
    while (tree.size < size) tree.append(leaf);
    const bytes = bytesOf() / size;
    worst = Math.max(worst, bytes);
    console.log(`tree of ${size} lines: ${bytes.toFixed(0)} bytes a line (two bare hashes 64)`);
  }
  console.log(
    `proof of a line: ${tree.inclusion(LINES / 2).length * 32} bytes; of an earlier head: ${sizeOfProof(tree)} bytes`,
  );
  return worst;
}

function sizeOfProof(tree: HashTree): number {
  return tree.consistency(LINES - 1).length * 32;
}

/** Of typed arrays still held. */
function bytesOf(): number {
  collect();
  return process.memoryUsage().arrayBuffers;
}

function kB(bytes: number): string {
  return (bytes / 1000).toFixed(1);
}

async function weighCode(): Promise<void> {
  const contents = 'export { ed25519 } from "@noble/curves/ed25519.js";';
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: import.meta.dirname },
    bundle: true,
    minify: true,
    write: false,
    format: "esm",
    external: ["@noble/hashes/*"],
  });
  const code = outputFiles[0]!.contents;
  console.log(`signing code: ${kB(code.length)} kB minified, ${kB(gzipSync(code).length)} kB compressed`);
}

const slowest = timeSignatures();
const heaviest = weighTree();
await weighCode();
const isGood = slowest <= LIMIT_MS && heaviest <= LIMIT_BYTES;
console.log(isGood ? "within its limits" : `over its limits: ${LIMIT_MS} ms, ${LIMIT_BYTES} bytes a line`);
process.exitCode = isGood ? 0 : 1;
