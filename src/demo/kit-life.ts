import { addSpan, daysBetween } from "#base";
import { lineOf, planOf, sealUp, DAY_MS, HOUR_MS, type Act, type KitLife, type LifeSetting } from "./kit-plan.ts";
import { drillActs } from "./drill-story.ts";
import { troubleActs } from "./kit-troubles.ts";
import type { DemoKit } from "./kits.ts";
import { dayOf } from "./log-writer.ts";
import { ADMINISTRATOR, CREW } from "./roster.ts";
import { firstFittings, writeTurnaround } from "./turnaround-life.ts";

const MUSTER_EVERY_DAYS = 27;
/** Days before the shortest life runs out at which this keeper turns a kit around. */
const MARGIN_DAYS = 9;
/** Days left on the kit that lapses soon. */
const SOON_DAYS = 6;

/** Writes one kit's life as far back as its station tells: enrolled, turned around on time, mustered, and its trouble of today. */
export function writeKitLife(setting: LifeSetting, kit: DemoKit): void {
  const start = setting.today - (setting.kitDays - setting.writer.chance.whole(0, 20)) * DAY_MS + 9 * HOUR_MS;
  const life = enrol(setting, kit, start);
  const days = turnaroundTimes(setting, kit, start);
  const turnarounds = days.map((ms) => ({ ms, run: () => routineTurnaround(life, ms) }));
  const acts = [...turnarounds, ...musters(life, start), ...troubleActs(life, days), ...drillActs(life, days)];
  for (const act of acts.toSorted((one, other) => one.ms - other.ms)) act.run();
}

function enrol(setting: LifeSetting, kit: DemoKit, ms: number): KitLife {
  const { writer, pattern } = setting;
  const seal = setting.nextSeal();
  const known = kit.trouble === "printed-date-passed" ? passedDates(setting) : new Map<string, string>();
  const items = firstFittings(pattern, dayOf(ms), known, writer.chance);
  const body = { name: kit.name, serial: kit.serial, seal, items };
  writer.write({ ...lineOf(kit, pattern), kind: "kit-enrolled", ms, hand: ADMINISTRATOR, body });
  const printed = items.flatMap((one) => (one.printed === undefined ? [] : [[one.item, one.printed] as const]));
  const fitted = new Map(items.map((one) => [one.item, one.fitted]));
  return { setting, kit, printed: new Map(printed), fitted, seal, turnarounds: 0 };
}

/** The first item with a printed date, out of date since the end of last month. */
function passedDates({ pattern, today }: LifeSetting): Map<string, string> {
  const item = pattern.items.find(({ life }) => life.kind === "printed");
  const lastMonth = addSpan(`${dayOf(today).slice(0, 7)}-01`, { days: -1 }).slice(0, 7);
  return new Map(item === undefined ? [] : [[item.id, lastMonth]]);
}

/** When the kit was turned around: counted back from the last one, as the shortest life in it demands. */
function turnaroundTimes(setting: LifeSetting, kit: DemoKit, start: number): number[] {
  const life = shortestLifeDays(setting);
  const soon = kit.trouble === "lapses-soon";
  const last = setting.today - (soon ? life - SOON_DAYS : kit.lastTurnaround) * DAY_MS + 10 * HOUR_MS;
  const times: number[] = [];
  for (
    let ms = last;
    ms > start + 30 * DAY_MS;
    ms -= (life - MARGIN_DAYS - setting.writer.chance.whole(0, 5)) * DAY_MS
  ) {
    times.unshift(ms + setting.writer.chance.whole(-60, 90) * 60_000);
  }
  return times.filter((ms) => ms < setting.today - HOUR_MS * 6);
}

function shortestLifeDays({ pattern, today }: LifeSetting): number {
  const { proofRun, turnaround } = pattern.policy;
  const fitted = pattern.items.flatMap(({ life }) => (life.kind === "fitted" ? [life.span] : []));
  const spans = [...fitted, ...[proofRun, turnaround].flatMap((span) => span ?? [])];
  return Math.min(...spans.map((span) => daysBetween(dayOf(today), addSpan(dayOf(today), span)))) - 2;
}

function routineTurnaround(life: KitLife, ms: number): void {
  const { setting, kit } = life;
  if (kit.trouble === "open" && ms > setting.today - 2 * DAY_MS) return;
  const done = writeTurnaround(setting.writer, { ...planOf(life, ms), renewToo: dueBefore(life, ms) });
  life.turnarounds += 1;
  sealUp(life, done.turnaround, done.end);
}

/** Items whose life would run out before the next turnaround, which are renewed at this one. */
function dueBefore(life: KitLife, ms: number): ReadonlySet<string> {
  const { setting, fitted } = life;
  const horizon = dayOf(ms + (shortestLifeDays(setting) + MARGIN_DAYS) * DAY_MS);
  const due = setting.pattern.items.filter(({ id, life: span }) => {
    if (span.kind !== "fitted") return false;
    return addSpan(fitted.get(id) ?? dayOf(ms), span.span) < horizon;
  });
  for (const { id } of due) fitted.set(id, dayOf(ms));
  return new Set(due.map(({ id }) => id));
}

function musters(life: KitLife, start: number): Act[] {
  const { setting, kit } = life;
  const { writer, pattern, today } = setting;
  const acts: Act[] = [];
  const last = today - writer.chance.whole(3, 9) * DAY_MS;
  for (let ms = last; ms > start + 10 * DAY_MS; ms -= MUSTER_EVERY_DAYS * DAY_MS) {
    const at = ms + 7 * HOUR_MS + writer.chance.whole(0, 50) * 60_000;
    const muster = (): void => {
      const body = { sealSeen: life.seal, containerSound: true };
      writer.write({ ...lineOf(kit, pattern), kind: "mustered", ms: at, hand: CREW, body });
    };
    acts.push({ ms: at, run: muster });
  }
  return acts;
}
