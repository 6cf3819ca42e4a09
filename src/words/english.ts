import act from "./made/en/kit/act.ts";
import standing from "./made/en/kit/standing.ts";
import practice from "./made/en/station/practice.ts";
import held from "./made/en/turnaround/held.ts";
import type { Words } from "./made/index.ts";

/** English at once, for what speaks no other language yet: paper, mail, tables, terminal and server. */
export const ENGLISH = { act, held, practice, standing } satisfies Partial<Words>;
