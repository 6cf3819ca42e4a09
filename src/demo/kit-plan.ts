import { patternKey, type Pattern } from "#kit";
import type { DemoKit } from "./kits.ts";
import type { LogWriter } from "./log-writer.ts";
import { KEEPER, SECOND_CREW } from "./roster.ts";
import type { Behaviour, TurnaroundPlan } from "./turnaround-life.ts";

export const DAY_MS = 86_400_000;
export const HOUR_MS = 3_600_000;
export interface LifeSetting {
  readonly writer: LogWriter;
  readonly pattern: Pattern;
  /** Midnight UTC at which today began; nothing is written after it. */
  readonly today: number;
  /** How many days before today it was taken on charge, at the most. */
  readonly kitDays: number;
  /** Expected delivery at the proof run [m³/s]. */
  readonly expected?: number;
  readonly nextSeal: () => string;
}

/** One kit's life while it is being written. */
export interface KitLife {
  readonly setting: LifeSetting;
  readonly kit: DemoKit;
  /** Printed dates in the kit, by item. */
  readonly printed: Map<string, string>;
  /** Days on which items were fitted, by item. */
  readonly fitted: Map<string, string>;
  /** Seal on the closed container now. */
  seal: string;
  /** Turnarounds so far. */
  turnarounds: number;
}

/** Something that happens to a kit at an instant. */
export interface Act {
  readonly ms: number;
  readonly run: () => void;
}

/** What every entry of this kit says. */
export function lineOf(kit: DemoKit, pattern: Pattern): { subject: string; place: string; pattern: string } {
  return { subject: kit.kit, place: kit.place, pattern: patternKey(pattern) };
}

/** Closes and seals the container at the end of a turnaround. */
export function sealUp(life: KitLife, turnaround: string, ms: number): void {
  const { setting, kit } = life;
  life.seal = setting.nextSeal();
  const body = { turnaround, seal: life.seal };
  setting.writer.write({ ...lineOf(kit, setting.pattern), kind: "sealed", ms, hand: KEEPER, body });
}

/** How a turnaround of this kit goes at this time of its life. */
export function planOf(life: KitLife, ms: number): TurnaroundPlan {
  const { setting, kit } = life;
  const { writer, pattern, expected } = setting;
  return {
    kit: kit.kit,
    serial: kit.serial,
    place: kit.place,
    pattern,
    start: ms,
    hand: writer.chance.next() < 0.7 ? KEEPER : SECOND_CREW,
    because: "routine",
    sealSeen: life.seal,
    behaviour: behaviourOf(life),
    printed: life.printed,
    ...(expected === undefined ? {} : { expected }),
  };
}

/** A slow prime gets slower at each turnaround; the others wander about their own mean. */
function behaviourOf({ setting, kit, turnarounds }: KitLife): Behaviour {
  const { chance } = setting.writer;
  const slow = kit.trouble === "slow-prime";
  const prime = slow ? 24 + 4.2 * turnarounds : 25;
  const pulls = Math.max(1, Math.min(6, Math.round(chance.about(slow ? 2.6 : 2, 0.7))));
  const ratio = Number(chance.about(slow ? 0.98 - 0.012 * turnarounds : 0.97, 0.02).toFixed(3));
  return { primeSeconds: Math.max(9, Math.round(chance.about(prime, 2.5))), pulls, ratio };
}
