import { WRITERS } from "../registry/writers.ts";
import type { EntryKind } from "./kinds.ts";
import type { Role } from "./writers.ts";

/** Who may write which kind of entry, as the file of each kind says. */
export const WRITING: Readonly<Record<EntryKind, readonly Role[]>> = WRITERS;
