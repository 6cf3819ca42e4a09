import type { DrillEnded, PlantedFault } from "../kinds/drill-parts.ts";
import type { Answer } from "../kinds/schema-parts.ts";
import type { Mark } from "../mark.ts";

/** A drill on one kit, as the log tells it. Its findings stand among those of the kit. */
export interface Drill {
  readonly id: string;
  readonly begun: Mark & { readonly trainees: readonly string[]; readonly sealSeen: string; readonly note?: string };
  /** By commitment. */
  readonly plants: Readonly<Record<string, Plant>>;
  /** By the commitment that the list revealed gives; of no plant, where it gives another than was written. */
  readonly revealed: Readonly<Record<string, Revealed>>;
  /** Plants of which nothing was revealed that gives their commitment. */
  readonly hidden: number;
  /** By "step" or "step/check": what the trainees answered last before the reveal. */
  readonly answers: Readonly<Record<string, DrillAnswer>>;
  /** By "plant fault": taken out. */
  readonly removed: Readonly<Record<string, Mark>>;
  /** By finding: whether what was not planted is real. */
  readonly judged: Readonly<Record<string, Judged>>;
  readonly ended?: Mark & Pick<DrillEnded, "how" | "reason">;
}

export type Plant = Mark & { readonly plant: string; readonly commitment: string; readonly seal?: string };

/** In the order in which they are hashed. */
export type Revealed = Mark & {
  readonly plant: string;
  readonly nonce: string;
  readonly faults: readonly PlantedFault[];
};

export type Judged = Mark & { readonly real: boolean; readonly note?: string };

export interface DrillAnswer {
  readonly check: string;
  readonly answer: Answer;
  readonly mark: Mark;
}
