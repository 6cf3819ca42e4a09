import type { UnitSystem } from "#base";
import type { Pattern } from "#kit";
import type { Entry } from "#log";
import type {
  Bodies,
  BroughtBack,
  CasualtyState,
  Device,
  EntryKind,
  KitState,
  Person,
  Place,
  PhotoRef,
  Practised,
  Qualification,
  RescueBoat,
  Standing,
  StationPolicy,
  StepReport,
  StockPart,
  Visit,
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
  /** Rescue boats of the station, not retired. */
  readonly boats: readonly RescueBoat[];
  /** Parts, retired ones too, by name. */
  readonly parts: readonly StockPart[];
  /** Casualties, newest first, closed ones too. */
  readonly casualties: readonly CasualtyState[];
  /** Qualifications, retired ones too, by name. */
  readonly qualifications: readonly Qualification[];
  /** What a summary knew of who did what; empty where every line is here. */
  readonly practised: readonly Practised[];
  /** Visits of assessors, newest first. */
  readonly visits: readonly Visit[];
  /** Kits not retired. */
  readonly kits: readonly KitState[];
  /** Kits taken off charge; their log stays. */
  readonly retired: readonly KitState[];
  readonly standings: ReadonlyMap<string, Standing>;
  /** The station's own, stricter spans, for bands and lapses. */
  readonly policy: StationPolicy;
  /** Lines that the station's database had lost and devices gave back, newest first. */
  readonly broughtBack: readonly BroughtBack[];
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
  /** What people told of a pattern's lines, by the pattern's id without version. */
  readonly reports: ReadonlyMap<string, readonly StepReport[]>;
  readonly units: UnitSystem;
  /** Present while the log is still being fetched: all this is then the station's own summary of it. */
  readonly early?: Early;
  /** Entries of one subject that count (not struck), in order. */
  entriesOf(subject: string): readonly Entry[];
  /** Subjects of which anything is known. */
  subjects(): Iterable<string>;
  /** Every entry of one subject, in order, struck ones with the entry that struck them; for histories. */
  historyOf(subject: string): readonly HistoryLine[];
}

/** How far the lines have come that a board is shown ahead of. */
export interface Early {
  /** RFC 3339: when the station made the snapshot. */
  readonly at: string;
  readonly here: number;
  readonly of: number;
}

/** One entry as a history shows it. */
export interface HistoryLine {
  readonly entry: Entry;
  /** The strike, where it was struck. */
  readonly struck?: Entry;
  /** When the station received it, RFC 3339, where that was long after it was written. */
  readonly received?: string;
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
  /** The station as it stands now, with every line written so far; undefined while nobody is signed in. */
  station(): StationView | undefined;
  record<K extends EntryKind>(draft: Draft<K>): Promise<Entry>;
  /** Writes several lines: all are on the disk when it resolves, or none is. */
  recordAll(drafts: readonly Draft[]): Promise<readonly Entry[]>;
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
