import type { PlainDate } from "#base";
import type { Effect } from "#kit";
import { inWords, type Words } from "#words";
import type { FlushDue } from "../after-use/index.ts";
import type { WorkKind } from "../kinds/work-parts.ts";
import type { Reason, StandingSaying, WorkSaid } from "../state.ts";

/** One thing that a line of work settles. */
export interface WorkTask {
  readonly rule: Reason["rule"];
  readonly sort:
    | "turnaround"
    | "proof-run"
    | "muster"
    | "renew"
    | "mend"
    | "prove"
    | "finish"
    | "fetch"
    | "lent"
    | "settle"
    | "other";
  /** What is done, as an instruction. */
  readonly what: StandingSaying;
  /** What is so now, or will end on its day. */
  readonly why: StandingSaying;
  /** Last day on which it is still good; absent where it is in force already. */
  readonly day?: PlainDate;
  readonly effect: Effect;
  readonly item?: string;
  readonly finding?: string;
  /** Where its sort is "prove": numbers of the lines that ask the proof. */
  readonly proveAt?: readonly number[];
}

/** A part that a line of work uses. */
export interface PartNeed {
  readonly item: string;
  readonly name: string;
  /** In the station's words, where the pattern gives them. */
  readonly part?: string;
  readonly count: number;
}

/** Work on one kit that one person, or a few together, settle at one time. */
export interface WorkLine {
  readonly kit: string;
  readonly work: WorkKind;
  readonly tasks: readonly WorkTask[];
  /** Last day before something lapses; absent where something has. */
  readonly latest?: PlainDate;
  /** Last day before it grounds the kit; absent where nothing dated will. */
  readonly groundsAfter?: PlainDate;
  /** True where it grounds the kit already. */
  readonly isGrounding: boolean;
  /** The day it is to be done by, after what people said: never later than `groundsAfter`. Absent: at once. */
  readonly by?: PlainDate;
  readonly bucket: "wet" | "overdue" | "week" | "month";
  /** By the pattern's own figures [min]. */
  readonly minutes: number;
  /** Hands needed at once. */
  readonly people: number;
  readonly parts: readonly PartNeed[];
  /** A first flush that is still to come. */
  readonly flush?: FlushDue;
  readonly said: WorkSaid;
  /** The Monday for which the plan has this opening. */
  readonly planned?: PlainDate;
}

/** Why a task is to be done, in a sentence: what is so now, or what ends on its day. */
export function sayWhy({ why, day }: Pick<WorkTask, "why" | "day">, words: Words["standing"]): string {
  const said = inWords(day === undefined ? why : asToCome(why), words);
  return day === undefined ? said : `${said.charAt(0).toUpperCase()}${said.slice(1)}.`;
}

/** What is out of date after its last good day goes out of date while that day is still to come. */
function asToCome(why: StandingSaying): StandingSaying {
  return why.say === "outOfDate" ? { say: "goesOutOfDate", of: why.of } : why;
}
