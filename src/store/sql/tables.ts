import type { ColumnType, Generated } from "kysely";
import type { IssuedPatternRow, PatternDraftRow } from "./pattern-tables.ts";
import type { MailLetterRow, MailRoundRow, MailStretchRow, MailWishRow } from "./mail-tables.ts";

/** The tables of both SQL stores, as the migrations leave them. */
export interface Tables {
  log_entries: EntryRow;
  chains: ChainRow;
  places_seen: PlaceSeenRow;
  signed_heads: SignedHeadRow;
  signed_lists: SignedListRow;
  snapshots: SnapshotRow;
  photos: PhotoRow;
  photos_seen: PhotoSeenRow;
  credentials: CredentialRow;
  failures: FailureRow;
  sessions: SessionRow;
  invites: InviteRow;
  epochs: EpochRow;
  voucher_keys: VoucherKeyRow;
  mail_wishes: MailWishRow;
  mail_stretches: MailStretchRow;
  mail_letters: MailLetterRow;
  mail_rounds: MailRoundRow;
  issued_patterns: IssuedPatternRow;
  pattern_drafts: PatternDraftRow;
}

export interface EntryRow {
  place: string;
  seq: number;
  id: string;
  /** Chain hash. */
  hash: string;
  /** Hash of the entry alone, to tell a repeated entry from a clashing one. */
  content: string;
  received: string;
  /** Canonical form. */
  entry: string;
}

/** One line per place: where its chain stands. Locked while entries are added to it. */
export interface ChainRow {
  place: string;
  seq: number;
  hash: string;
}

/** One line per place that ever had an entry; never removed. */
export interface PlaceSeenRow {
  place: string;
}

/** The newest signed head of a place that was shown to anybody, as JSON. */
export interface SignedHeadRow {
  place: string;
  seq: number;
  head: string;
}

/** The signed list of the newest heads of all places, as JSON; one row from the beginning, null before the first. */
export interface SignedListRow {
  number: number;
  list: string | null;
}

/** The newest snapshot that a server made; one row. */
export interface SnapshotRow {
  number: number;
  about: string;
  seal: string;
  packed: Uint8Array;
}

export interface PhotoRow {
  hash: string;
  mime: string;
  bytes: Uint8Array;
}

/** One line per photo that ever came; never removed. */
export interface PhotoSeenRow {
  hash: string;
  mime: string;
}

export interface CredentialRow {
  id: string;
  person: string;
  kind: "pin" | "passkey" | "device" | "link";
  secret: string;
  /** 32 bits unsigned, so a big integer, which PostgreSQL gives as text. */
  counter: ColumnType<number | string, number, number>;
  transports: string | null;
  created: string;
}

export interface FailureRow {
  key: string;
  count: Generated<number>;
  last: string;
}

export interface SessionRow {
  token_hash: string;
  person: string;
  device: string;
  created: string;
  expires: string;
}

/** The lives of the database, in order. */
export interface EpochRow {
  number: number;
  id: string;
  begun: string;
  because: "made" | "put-back" | "seen";
}

export interface VoucherKeyRow {
  number: number;
  secret: string;
}

export interface InviteRow {
  code_hash: string;
  person: string;
  made_by: string;
  expires: string;
}
