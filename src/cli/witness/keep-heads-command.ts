import { DEFAULT_KEPT_HEADS, KeptHeads } from "#store/keys";
import { join } from "node:path";
import type { Command } from "../command.ts";
import { requireDatabase } from "../open-data.ts";
import { usageError } from "../usage-error.ts";

/** `drykeel keep-heads`: lets another station keep the heads of its log here. */
export const keepHeadsCommand: Command = {
  name: "keep-heads",
  usage: "keep-heads NAME",
  summary: "let another station, called NAME here, keep the heads of its log at this one",
  options: {},
  run: async ({ words: [name], surroundings, terminal }) => {
    if (name === undefined) throw usageError("NAME", "nothing", "a name for the station", "Write: keep-heads north");
    requireDatabase(surroundings);
    const token = new KeptHeads(join(surroundings.dataDir, DEFAULT_KEPT_HEADS)).letIn(name);
    terminal.out(`Address: this station's address followed by /api/witness/${name}`);
    terminal.out(`Token, shown this once: ${token}`);
    terminal.out("Give both to whoever looks after that station, apart from each other. There:");
    terminal.out(`WITNESS_TOKEN=... npm run -s drykeel -- witness --to https://.../api/witness/${name}`);
    return 0;
  },
};
