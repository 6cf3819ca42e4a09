import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import type { LifeRecord } from "#reliability";

/** A Weibull fit by another program in the same run. */
export interface PeerFit {
  readonly millis: number;
  readonly shape: number;
  readonly scale: number;
  readonly version: string;
}

/** R's survival and Python's scipy, each where it is on this machine; a name and no fit where it is not. */
export function peerFits(lives: readonly LifeRecord[]): readonly { readonly name: string; readonly fit?: PeerFit }[] {
  const ended = lives.filter(({ before }) => before !== Infinity).map(({ after }) => after);
  const good = lives.filter(({ before }) => before === Infinity).map(({ after }) => after);
  const lines = [...ended.map((age) => `${age} 1`), ...good.map((age) => `${age} 0`)].join("\n");
  return [
    { name: "R survival", ...fitBy("Rscript", "weibull.R", lines) },
    { name: "scipy", ...fitBy("python3", "weibull.py", JSON.stringify({ ended, good })) },
  ];
}

function fitBy(program: string, script: string, input: string): { readonly fit?: PeerFit } {
  const path = fileURLToPath(new URL(script, import.meta.url));
  const run = spawnSync(program, [path], { input, encoding: "utf8" });
  return run.status === 0 ? { fit: JSON.parse(run.stdout) as PeerFit } : {};
}
