import type { Effect, Met, StageId } from "#kit";
import type { Saying } from "#words";
import type { Drill } from "./drill/drill-state.ts";
import type { CountedAs, DeliveryMeasured, Lent, Remedy, StepAnswer, TurnaroundTold } from "./kinds/kit-parts.ts";
import type { BoatSetting, PracticeTold } from "./kinds/people-parts.ts";
import type { Answer, Fitted, FromSheet, PhotoRef, Value } from "./kinds/schema-parts.ts";
import type { Drawn, ItemRobbed, Shelf } from "./kinds/stock-parts.ts";
import type { PlannedWork, WorkKind } from "./kinds/work-parts.ts";
import type { Role } from "./kinds/writers.ts";
import type { Mark } from "./mark.ts";

export type { Mark } from "./mark.ts";

/** A kit as the log tells it. Pure function of its entries, whatever the order of arrival. */
export interface KitState {
  readonly id: string;
  readonly name: string;
  readonly serial: string;
  readonly place: string;
  /** "id@version" of the pattern it is built to. */
  readonly pattern: string;
  readonly enrolled: Mark;
  /** The row of a sheet that it was enrolled from; absent where somebody enrolled it by hand. */
  readonly sheet?: FromSheet;
  /** Turnarounds that were told of, in order of telling; absent where none was. They prove nothing. */
  readonly told?: readonly ToldTurnaround[];
  readonly retired?: Mark & { readonly reason: string };
  /** By item id: what is fitted now. */
  readonly contents: Readonly<Record<string, FittedItem>>;
  /** By item id: dates read off what is fitted now; absent where none was. */
  readonly dates?: Readonly<Record<string, DatesRead>>;
  /** The seal on record; absent while open or before the first sealing. */
  readonly seal?: Mark & { readonly number: string };
  readonly seals: readonly (Mark & { readonly number: string; readonly what: "fitted" | "seen" | "broken" })[];
  /** The last seal read that differs from the one on record, until a turnaround settles it. */
  readonly sealMismatch?: Mark & { readonly expected: string; readonly seen: string };
  /** Name of another kit on record with the same seal, where the station's kits were read together. */
  readonly sealTwin?: string;
  readonly findings: readonly Finding[];
  /** In the order in which they were heard of; absent where there was none. */
  readonly drills?: readonly Drill[];
  readonly turnaround?: Turnaround;
  /** Opened on another device while the first was open, until the difference is settled. */
  readonly otherTurnarounds?: readonly Turnaround[];
  /** Closed ones, oldest first. */
  readonly turnarounds: readonly Turnaround[];
  readonly custody:
    | { readonly kind: "here" }
    | (Mark & {
        readonly kind: "away";
        readonly to: string;
        readonly casualty?: string;
        readonly back?: string;
        readonly lent?: readonly Lent[];
      })
    | (Mark & { readonly kind: "back"; readonly exposure?: readonly Met[]; readonly counted?: readonly CountedAs[] });
  /** What it met in use, one for each return, until it is sealed again; absent where it met nothing. */
  readonly met?: readonly MetUse[];
  /** What was lent with it and has not come back; absent where nothing is out. */
  readonly lentOut?: readonly LentOut[];
  /** The last move to another place. */
  readonly moved?: Mark;
  readonly lastMuster?: Mark & { readonly seal: string };
  /** The container was seen damaged at a muster, until the next sealing. */
  readonly unsound?: Mark & { readonly note?: string };
  readonly runs: readonly Run[];
  /** What two devices did to this kit without sight of each other, and nobody has settled. */
  readonly toSettle: readonly Difference[];
  /** What people said of work that is due on it; absent where nobody said anything, or it is done. */
  readonly work?: Readonly<Partial<Record<WorkKind, WorkSaid>>>;
  /** Its openings as they were planned and accepted, those done left out; absent where none are. */
  readonly planned?: Mark & { readonly openings: readonly PlannedWork[] };
  /** Newest entries of this subject: what a new entry names in `after`. */
  readonly heads: readonly string[];
  /** Parts taken off a shelf for it; absent where none was. */
  readonly drawn?: readonly DrawnUse[];
  /** What was taken from it for other kits; absent where nothing was. */
  readonly robbed?: readonly (Mark & ItemRobbed)[];
  /** Ids of remedies and proofs that came before their finding in order, by a clock that was wrong. */
  readonly waiting?: readonly string[];
}

/** A thing that was lent with a kit and did not come back with it. Its mark is the return that left it out. */
export type LentOut = Mark &
  Lent & {
    /** Who has it. */
    readonly to: string;
    /** False where nobody counted it when the kit came back. */
    readonly isCounted: boolean;
  };

/** A part taken off a shelf for one item of a kit. */
export type DrawnUse = Mark &
  Drawn & {
    readonly item: string;
    readonly count: number;
    /** The turnaround in which it was fitted; the finding that it remedies. */
    readonly turnaround?: string;
    readonly finding?: string;
  };

/** What people said of one piece of work. */
export interface WorkSaid {
  /** Who took it; several where they did so without sight of each other. */
  readonly takers: readonly (Mark & { readonly person: string })[];
  /** The day it is to be done. */
  readonly day?: Mark & { readonly day: string };
  readonly putOff?: Mark & { readonly until: string; readonly reason: string };
}

/** A turnaround that was told of. Its mark is who told it, and when. */
export type ToldTurnaround = Mark & TurnaroundTold;

/** What a kit met in one use. Its mark is the return. */
export type MetUse = Mark & {
  readonly what: readonly Met[];
  /** RFC 3339, when it last pumped, where somebody knows. */
  readonly stopped?: string;
  /** The first flush since. */
  readonly flushed?: Mark;
};

/** What is fitted now, and the turnaround that fitted it. */
export type FittedItem = Fitted & {
  readonly mark: Mark;
  readonly turnaround?: string;
  readonly step?: string;
  /** The shelf that it came off. */
  readonly drawn?: Drawn;
  /** Id of the kit that it was taken from. */
  readonly robbed?: string;
};

/** What was read off an item since it was fitted. `cannot`: the last look, where no date could be read. */
export interface DatesRead {
  readonly printed?: string;
  readonly fitted?: string;
  readonly made?: string;
  readonly cannot?: true;
  /** By a sheet alone: nobody has read it off the thing since. */
  readonly told?: true;
  readonly mark: Mark;
}

export interface Finding {
  readonly id: string;
  readonly item: string;
  readonly mode: string;
  readonly effect: Effect;
  readonly limit?: string;
  readonly note?: string;
  readonly photos: readonly PhotoRef[];
  readonly raised: Mark;
  readonly turnaround?: string;
  readonly step?: string;
  readonly check?: string;
  readonly remedies: readonly (Mark & { readonly remedy: Remedy })[];
  readonly livedWith?: Mark & { readonly name: string; readonly limit: string; readonly until: string };
  readonly closed?: Mark;
  /** The drill in which it was raised, before anybody was told what was planted. */
  readonly drill?: string;
}

export interface Turnaround {
  readonly id: string;
  /** "id@version" of the pattern it was begun under. */
  readonly pattern?: string;
  readonly because: string;
  /** With the seal as it was read, how it was read before that, and as it stood on record, if one did. */
  readonly opened: Mark & {
    readonly sealSeen: string;
    readonly sealReadBefore?: readonly string[];
    readonly sealOnRecord?: string;
  };
  /** The drill that it is part of. */
  readonly drill?: string;
  /** What the kit met before it: steps that belong to it must be answered too. Absent where it met nothing. */
  readonly met?: readonly Met[];
  /** Latest standing answer by "step" or "step/check". */
  readonly answers: Readonly<Record<string, StepAnswer & { readonly mark: Mark }>>;
  readonly timers: Readonly<Record<string, TimerState>>;
  readonly measured: readonly (DeliveryMeasured & { readonly mark: Mark })[];
  /** Who saw what the writer of each did, or why nobody did; absent where nobody said. */
  readonly seconds?: readonly Second[];
  /** What second persons said themselves of what they saw; absent where none did. */
  readonly confirmed?: readonly Confirmed[];
  readonly closed?: Mark & {
    readonly how: "sealed" | "grounded" | "set-aside";
    readonly seal?: string;
    readonly reason?: string;
  };
}

/** Said by the writer of this line: who sees what they do under a qualification, or why they go on alone. */
export type Second = Mark & {
  readonly qualification: string;
  /** A person's id; absent where they go on alone. */
  readonly second?: string;
  readonly note?: string;
};

/** Said by the second person: they saw what they were named for in the line `named`. */
export type Confirmed = Mark & {
  readonly named: string;
  /** By their PIN on the doer's device, which the station proved; else on a device of their own. */
  readonly byPin?: true;
};

export interface TimerState {
  /** Wall-clock instant of the start; absent once stopped. */
  readonly started?: string;
  readonly seconds?: number;
  readonly reached?: boolean;
  readonly pulls?: number;
  /** Findings that ground, raised while it ran: where one forbids the step, the clock ended there and proves nothing. */
  readonly meanwhile?: readonly string[];
  readonly mark: Mark;
}

/** One start or proof run, for trends: drawn from a turnaround, or from a casualty's sheet. */
export interface Run {
  /** Of one of its turnarounds. */
  readonly turnaround?: string;
  /** The drill that the turnaround is part of: a fault may have been planted. */
  readonly drill?: string;
  /** Of the sheet of this casualty, where the kit pumped or would not start. */
  readonly casualty?: { readonly id: string; readonly name: string };
  readonly at: string;
  readonly pulls?: number;
  /** Step at which they were counted: the first start of the turnaround. */
  readonly pullsStep?: string;
  readonly started?: boolean;
  readonly primeSeconds?: number;
  readonly primed?: boolean;
  /** Measured over expected flow in a proof run. */
  readonly ratio?: number;
  /** On a casualty: how long it ran in all [s]. */
  readonly ran?: number;
  /** On a casualty, RFC 3339: when it last stopped. */
  readonly stopped?: string;
  /** On a casualty: what the soundings showed of its stated delivery there; an estimate, not a proof run. */
  readonly seen?: { readonly p05: number; readonly p50: number; readonly p95: number };
}

export interface Difference {
  readonly entries: readonly string[];
  readonly about: string;
  readonly marks: readonly Mark[];
  readonly what: DifferenceKind;
  readonly turnaround?: string;
  readonly step?: string;
  readonly check?: string;
  readonly item?: string;
}

/** A step that somebody found wrong, impossible or unclear, and what the pattern's owner said. */
export interface StepReport extends Mark {
  readonly step: string;
  /** The step is a picture of the card for strangers. */
  readonly card?: true;
  readonly what: "wrong" | "impossible" | "unclear";
  readonly pattern?: string;
  readonly note?: string;
  readonly kit?: string;
  /** The casualty in whose review it was told. */
  readonly casualty?: string;
  readonly answer?: Mark & { readonly text: string };
}

export type DifferenceKind = "enrolled" | "answer" | "timer" | "seal" | "turnaround" | "custody" | "contents" | "place";

export type StandingKind = "ready" | "ready-with-limits" | "grounded" | "open" | "away";

export interface Standing {
  readonly standing: StandingKind;
  /** One each, the deciding one first. */
  readonly because: readonly Reason[];
  /** The stated limits in force, when ready with limits. */
  readonly limits: readonly Limit[];
  /** The first thing that will end this standing, and its day; absent when nothing dated will. */
  readonly lapse?: Lapse;
  /** The first thing that will ground it, and its day; absent where nothing dated will, or it is not ready now. */
  readonly grounding?: Lapse;
  readonly restore: { readonly what: readonly StandingSaying[]; readonly minutes: number };
}

/** What a reason, a lapse or a thing to do says, in no language yet. */
export type StandingSaying = Saying<"standing">;

/** A limit as a pattern or a person wrote it, or as it follows. */
export type Limit = string | StandingSaying;

export interface Reason {
  readonly rule:
    | "seal"
    | "finding"
    | "date"
    | "single-use"
    | "proof-run"
    | "pattern"
    | "custody"
    | "lent"
    | "turnaround"
    | "muster"
    | "unexamined"
    | "to-settle"
    | "retired"
    | "drill"
    | "sound";
  readonly said: StandingSaying;
  readonly item?: string;
  readonly finding?: string;
  /** Step at which it can be put right, where there is one. */
  readonly step?: string;
  /** Which of its checks, where it is one. */
  readonly check?: string;
}

export interface Lapse {
  /** Last day on which it still holds, "YYYY-MM-DD". */
  readonly day: string;
  readonly what: StandingSaying;
  readonly item?: string;
  readonly effect: Effect;
}

export interface Person {
  readonly id: string;
  readonly name: string;
  readonly role: Role;
  readonly left: boolean;
  /** Hours a week for work on kits [h]; absent where nobody said. */
  readonly hours?: number;
  /** Days away, both included; absent where nobody said any. */
  readonly away?: readonly Absence[];
  /** What they did away from turnarounds and casualties, as a keeper told it; absent where nobody told of any. */
  readonly told?: readonly ToldPractice[];
  /** The row of a sheet that put them on the list; absent where somebody did so by hand. */
  readonly sheet?: FromSheet;
}

/** What a person did elsewhere. Its mark is who told it, and when. */
export type ToldPractice = Mark & PracticeTold;

/** Days on which a person is not there, both included. */
export interface Absence extends Mark {
  readonly from: string;
  readonly to: string;
  readonly note?: string;
}

export interface Place {
  readonly id: string;
  readonly name: string;
  /** How many ready kits it must hold. */
  readonly strength: number;
  readonly zone: string;
  readonly closed: boolean;
  /** In the order in which a muster goes round; absent where none was set. */
  readonly shelves?: readonly Shelf[];
}

/** A boat of the station that takes kits to a casualty. */
export interface RescueBoat extends BoatSetting {
  readonly id: string;
  readonly retired: boolean;
}

export interface Device {
  readonly id: string;
  readonly name: string;
  readonly shutOut: boolean;
}

/** One kit's year ahead, or the part of it in view: what it will be worth if nobody does anything. */
export interface Band {
  /** First and last day, inclusive. */
  readonly from: string;
  readonly to: string;
  readonly standing: StandingKind;
  readonly because: StandingSaying;
}

/** The line of a turnaround as the record and the screen list it. */
export interface RecordLine {
  readonly line: number;
  readonly stage: StageId;
  readonly step: string;
  readonly check?: string;
  readonly text: string;
  /** What the pattern says is done once the step is answered, at its last check. */
  readonly afterwards?: string;
  readonly answer?: Answer;
  readonly value?: Value;
  readonly why?: string;
  readonly note?: string;
  readonly mark?: Mark;
}
