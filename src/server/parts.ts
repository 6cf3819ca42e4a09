import type { Role } from "#readiness";
import type { Ambient, HeadShelf, LogStore, MailShelf, RoundMemory, SecretStore, SnapshotShelf } from "#station";
import type { Pattern } from "#kit";
import type { KeptHeads } from "#store/keys";
import type { DataLoss } from "./data-folder/data-loss.ts";
import type { ClockDesk } from "./clock/clock-desk.ts";
import type { EpochDesk } from "./branch/epoch-desk.ts";
import type { IssueParts, PatternDesk } from "./patterns/pattern-desk.ts";
import type { KitPatterns } from "./patterns/kit-patterns.ts";
import type { HeadDesk, SignedMark } from "./heads/head-desk.ts";
import type { Signing } from "./heads/signing.ts";
import type { Metrics } from "./http/metrics.ts";
import type { MailSettings } from "./mail/mail-carrier.ts";
import type { PostDesk } from "./mail/post-desk.ts";
import type { Roster } from "./sign-in/roster.ts";
import type { WholeLog } from "./log/whole-log.ts";

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

export type LogLevel = "info" | "warn" | "error";

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
  /** What signs the heads of the log; without it none are shown. */
  readonly signer?: { readonly signing: Signing; readonly shelf: HeadShelf; readonly since?: SignedMark };
  /** Keeps the newest snapshot over a start; without it each start makes it anew. */
  readonly snapshots?: SnapshotShelf;
  /** Looks whether the data were taken away under the server: then nothing more may be acknowledged. */
  readonly dataLoss?: () => DataLoss | undefined;
  /** How long a connection may keep the server waiting, where not as ever. */
  readonly patience?: Patience;
  /** Where faults of the server itself are written, at info each request too; silent when absent. */
  readonly log?: { readonly level: LogLevel; readonly stream?: { write(line: string): void } };
  /** Heads of other stations' logs; without it none are kept. */
  readonly keptHeads?: KeptHeads;
  /** Compares clocks, where somebody else looks at it too. */
  readonly clocks?: ClockDesk;
  /** What people want to be told by mail, and what sends it; without settings nothing is sent. */
  readonly mail?: { readonly shelf: MailShelf; readonly memory?: RoundMemory; readonly settings?: MailSettings };
  /** Where patterns are issued to; without it none can be. */
  readonly issuing?: IssueParts;
  /** Counts requests, where somebody wants to know. */
  readonly metrics?: Metrics;
}

/** What every route works with. */
export interface Parts extends ServerOptions {
  readonly roster: Roster;
  readonly kitPatterns: KitPatterns;
  /** Which patterns there are now; `patterns` gives the same. */
  readonly patternDesk: PatternDesk;
  readonly wholeLog: WholeLog;
  /** Signs and proves; absent where nothing signs. */
  readonly headDesk?: HeadDesk;
  readonly epochs: EpochDesk;
  /** Doubts the station's own clock where devices or the log speak against it. */
  readonly clocks: ClockDesk;
  readonly demo: readonly DemoAccount[];
  /** Writes and sends mail; absent where none is sent. */
  readonly postDesk?: PostDesk;
}
