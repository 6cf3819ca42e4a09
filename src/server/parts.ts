import type { Role } from "#readiness";
import type { Ambient, LogStore, SecretStore } from "#station";
import type { Pattern } from "#kit";
import type { DataLoss } from "./data-loss.ts";
import type { KitPatterns } from "./kit-patterns.ts";
import type { Roster } from "./roster.ts";

/** Someone of the demo station, whose PIN everybody may know. */
export interface DemoAccount {
  readonly person: string;
  readonly name: string;
  readonly role: Role;
  readonly pin: string;
}

/** How long a connection may keep the server waiting [ms]. */
export interface Patience {
  /** For the whole of a request's headers. */
  readonly headersMs: number;
  /** For the whole of a request. */
  readonly requestMs: number;
  /** Without a byte in either direction. */
  readonly idleMs: number;
  /** Between two looks at who has had time enough. */
  readonly sweepMs: number;
}

/** What the start file hands the server. Tests hand it a store in memory and a clock of their own. */
export interface ServerOptions {
  readonly store: LogStore;
  readonly secrets: SecretStore;
  readonly patterns: readonly Pattern[];
  readonly ambient: Ambient;
  /** Folder with the built pages; without it only /api answers. */
  readonly webDir?: string;
  /** Address people type, such as "https://pumps.example.org", where a proxy stands in front. */
  readonly origin?: string;
  /** Present only on a demo station: who may be chosen on the sign-in page. */
  readonly demo?: readonly DemoAccount[];
  /** Looks whether the data were taken away under the server: then nothing more may be acknowledged. */
  readonly dataLoss?: () => DataLoss | undefined;
  /** How long a connection may keep the server waiting, where not as ever. */
  readonly patience?: Patience;
  /** Where faults of the server itself are written; silent when absent. */
  readonly log?: { readonly level: "warn" | "error" };
}

/** What every route works with. */
export interface Parts extends ServerOptions {
  readonly roster: Roster;
  readonly kitPatterns: KitPatterns;
  readonly demo: readonly DemoAccount[];
}
