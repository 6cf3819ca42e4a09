import { fuelKindOf, newestOfEach, type Pattern } from "#kit";
import { STATION_PLACE, type Entry } from "#log";
import { writeCasualty } from "./casualty-story.ts";
import { createChance } from "./chance.ts";
import { writeKitLife } from "./kit-life.ts";
import { DAY_MS, type LifeSetting } from "./kit-plan.ts";
import { DIESEL_KIT, KITS, type DemoKit } from "./kits.ts";
import { createLogWriter, type LogWriter } from "./log-writer.ts";
import { writePeople } from "./people-story.ts";
import { writeStock } from "./stock-story.ts";
import { writeVisit } from "./visit-story.ts";
import { writeWork } from "./work-story.ts";
import { ACCOUNTS, ADMINISTRATOR, BOATS, DEVICES, PLACES, STATION_NAME, ZONE, type DemoAccount } from "./roster.ts";

export type { DemoAccount } from "./roster.ts";

const FOUNDED_DAYS_AGO = 760;
const KIT_DAYS = 730;
const FIRST_SEAL = 10_401;

export interface DemoSetting {
  /**
   * The shipped patterns: of the newest of each, the first with a petrol engine, the first without an engine, and the
   * first with a diesel, which may be left out, are used.
   */
  readonly patterns: readonly Pattern[];
  /** "YYYY-MM-DD": the log ends on the evening before. */
  readonly today: string;
  readonly seed: number;
  /** Days before today on which the first kit was taken on charge, 180 to 730; 730, two years, unless said. */
  readonly kitDays?: number | undefined;
  /** Expected delivery at a proof run [m³/s], by pattern; undefined where it cannot be said. */
  readonly expected?: (pattern: Pattern) => number | undefined;
}

/**
 * Two years of log, or less of its kits, of an invented station: three places, thirteen kits, six people, with believable
 * troubles.
 * The same setting gives the same entries.
 *
 * @param given - patterns, the day it is today, and the seed
 * @returns entries in the order a log would hold them
 */
export function demoEntries(given: DemoSetting): readonly Entry[] {
  const setting = { ...given, patterns: newestOfEach(given.patterns) };
  const today = Date.parse(`${setting.today}T00:00:00Z`);
  const writer = createLogWriter(createChance(setting.seed));
  foundStation(writer, today - FOUNDED_DAYS_AGO * DAY_MS);
  const nextSeal = sealNumbers();
  for (const kit of KITS) writeKitLife(lifeSetting(setting, kit, writer, today, nextSeal), kit);
  writeCasualty(writer, today);
  writeStock({ writer, patterns: setting.patterns, today });
  writeWork(writer, today);
  writePeople({ writer, patterns: setting.patterns, today, kitDays: kitDaysOf(setting) });
  writeVisit({ writer, patterns: setting.patterns });
  if (setting.patterns.some((pattern) => driveOf(pattern) === "diesel"))
    writeKitLife(lifeSetting(setting, DIESEL_KIT, writer, today, nextSeal), DIESEL_KIT);
  return writer.entries.toSorted((one, other) =>
    one.at < other.at ? -1 : one.at > other.at ? 1 : one.id < other.id ? -1 : 1,
  );
}

/** The demo's people and their PINs, to be printed where the demo is started. */
export function demoAccounts(): readonly DemoAccount[] {
  return ACCOUNTS;
}

function lifeSetting(
  setting: DemoSetting,
  kit: DemoKit,
  writer: LogWriter,
  today: number,
  nextSeal: () => string,
): LifeSetting {
  const pattern = setting.patterns.find((one) => driveOf(one) === kit.drive);
  if (!pattern)
    throw new Error(`The demo needs a pattern for a kit driven by ${kit.drive}; none of the given ones is.`);
  const expected = setting.expected?.(pattern);
  const kitDays = kitDaysOf(setting);
  return { writer, pattern, today, kitDays, nextSeal, ...(expected === undefined ? {} : { expected }) };
}

function kitDaysOf({ kitDays = KIT_DAYS }: DemoSetting): number {
  return kitDays;
}

function driveOf(pattern: Pattern): DemoKit["drive"] {
  const fuel = fuelKindOf(pattern);
  if (fuel === undefined) return "electric";
  return fuel === "petrol" ? "engine" : "diesel";
}

function foundStation(writer: LogWriter, ms: number): void {
  const line = { place: STATION_PLACE, ms, hand: ADMINISTRATOR };
  for (const { person, name, role } of ACCOUNTS) {
    writer.write({ ...line, kind: "person-joined", subject: `person:${person}`, body: { name, role } });
  }
  writer.write({ ...line, kind: "station-named", subject: STATION_PLACE, body: { name: STATION_NAME } });
  for (const { id, name } of DEVICES)
    writer.write({ ...line, kind: "device-joined", subject: `device:${id}`, body: { name } });
  for (const { id, ...body } of BOATS) writer.write({ ...line, kind: "boat-set", subject: `boat:${id}`, body });
  for (const { id, name, strength } of PLACES) {
    writer.write({
      ...line,
      kind: "place-set",
      subject: `place:${id}`,
      body: { name, strength, zone: ZONE },
    });
  }
}

function sealNumbers(): () => string {
  let next = FIRST_SEAL;
  return () => `BR ${next++}`;
}
