import type { KitState, Place, Standing, StandingKind } from "#readiness";
import { SAMPLE, sampleMark } from "#web/kit-view/sample.ts";

/* Small invented kits for the tests of the board and the kit pages. */

/** A kit as the log would tell it, with nothing on record but what is given. */
export function sampleKit(id: string, part: Partial<KitState> = {}): KitState {
  return {
    id,
    name: `Pump ${id}`,
    serial: `SN-${id}`,
    place: "shed",
    pattern: `${SAMPLE.id}@${SAMPLE.version}`,
    enrolled: sampleMark(0),
    contents: {},
    seals: [],
    findings: [],
    turnarounds: [],
    custody: { kind: "here" },
    runs: [],
    toSettle: [],
    heads: [],
    ...part,
  };
}

const OUT_OF_DATE = { say: "outOfDate", of: { item: "Petrol in the tank" } } as const;

/** A standing with one reason, and the day it lapses where one is given. */
export function sampleStanding(standing: StandingKind, lapse?: string): Standing {
  return {
    standing,
    because: [{ rule: "sound", said: { say: "finding", of: { name: "Because" } } }],
    limits: [],
    ...(lapse !== undefined && { lapse: { day: lapse, what: OUT_OF_DATE, effect: "grounds" } }),
    restore: { what: [], minutes: 0 },
  };
}

export const SHED: Place = { id: "shed", name: "Shed", strength: 2, zone: "UTC", closed: false };
export const BOAT: Place = { id: "boat", name: "Boat", strength: 1, zone: "UTC", closed: false };
