import type { UnitSystem } from "#base";
import type { Pattern } from "#kit";
import type { Entry } from "#log";
import type {
  Bodies,
  CasualtyState,
  Device,
  EntryKind,
  KitState,
  Person,
  Place,
  PhotoRef,
  Standing,
  StationPolicy,
} from "#readiness";

/** Everything a page shows, derived on this device from its own copy of the log. Replaced whole on each change. */
export interface StationView {
  readonly stationName: string;
  /** Calendar day at the person's place, "YYYY-MM-DD". */
  readonly today: string;
  readonly me: Person;
  readonly device: string;
  /** Place the person works at on this device. */
  readonly place: Place;
  readonly places: readonly Place[];
  readonly people: readonly Person[];
  readonly devices: readonly Device[];
  /** Casualties, newest first, closed ones too. */
  readonly casualties: readonly CasualtyState[];
  /** Kits not retired. */
  readonly kits: readonly KitState[];
  /** Kits taken off charge; their log stays. */
  readonly retired: readonly KitState[];
  readonly standings: ReadonlyMap<string, Standing>;
  /** The station's own, stricter spans, for bands and lapses. */
  readonly policy: StationPolicy;
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
  readonly units: UnitSystem;
  /** Entries of one subject that count (not struck), in order. */
  entriesOf(subject: string): readonly Entry[];
  /** Every entry of one subject, in order, struck ones with the entry that struck them; for histories. */
  historyOf(subject: string): readonly HistoryLine[];
}

/** One entry as a history shows it. */
export interface HistoryLine {
  readonly entry: Entry;
  /** The strike, where it was struck. */
  readonly struck?: Entry;
}

/** A line to be written: the device adds id, time, person, device, pattern and what it knew. */
export interface Draft<K extends EntryKind = EntryKind> {
  readonly subject: string;
  readonly kind: K;
  readonly body: Bodies[K];
  /** Place it belongs to; the kit's own place where absent. */
  readonly place?: string;
  /** "id@version" it is made under, where that is not the kit's own: enrolling, rebuilding. */
  readonly pattern?: string;
}

/** What pages may do. Every call has reached this device's disk when it resolves. */
export interface Recorder {
  record<K extends EntryKind>(draft: Draft<K>): Promise<Entry>;
  /** Strikes an entry of this device or, with permission, of another. */
  strike(entry: Entry, reason: string): Promise<Entry>;
  /** Downscales (longest side 1600 px, JPEG), hashes and keeps the photo; sent later. */
  keepPhoto(file: Blob): Promise<PhotoRef>;
  /** Object URL of a photo held here or fetched when there is a network; undefined if neither. */
  photoUrl(hash: string): Promise<string | undefined>;
}

export type SendState =
  | { readonly kind: "sent" }
  | {
      readonly kind: "waiting";
      readonly lines: number;
      readonly photos: number;
      readonly since: string;
      readonly offline: boolean;
    }
  | { readonly kind: "refused"; readonly lines: number };

/** Hooks that pages use: `useStation()`, `useRecorder()`, `useSendState()`, exported by `src/web/device/index.ts`. */
export interface DeviceHooks {
  useStation(): StationView;
  useRecorder(): Recorder;
  useSendState(): SendState;
}
