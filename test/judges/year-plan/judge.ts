import type { YearPlan, YearStation } from "#planning";

/**
 * An independent judge of a planned year: goes through the days one by one from the station and the openings as people
 * read them, and shares no code with the planner. What it finds wrong it says in words.
 */
export interface Judgement {
  readonly complaints: readonly string[];
  readonly short: readonly { readonly place: string; readonly week: number; readonly by: number }[];
  /** Weeks of clocks in which they have lapsed before Sunday. */
  readonly late: number;
  readonly worstHours: number;
  readonly wasted: number;
}

type Kit = YearStation["kits"][number];
type Planned = YearPlan["openings"][number];

const DAY_MS = 86_400_000;

export function judgeYear(station: YearStation, plan: YearPlan): Judgement {
  const complaints: string[] = [];
  const kits = station.kits.map((kit) => walkKit(station, kit, plan.openings, complaints));
  const short = station.places.flatMap(({ id, strength }) =>
    weeks(station).flatMap((week) => {
      const ready = station.kits.filter((kit, at) => kit.place === id && kits[at]!.ready[week]).length;
      return ready < strength ? [{ place: id, week, by: strength - ready }] : [];
    }),
  );
  const hours = weeks(station).map((week) => workIn(station, plan, week) / 60);
  judgePeople(station, plan, complaints);
  judgeParts(station, plan, complaints);
  judgeFixed(station, plan, complaints);
  const wasted = kits.reduce((sum, kit) => sum + kit.wasted, 0);
  if (wasted !== plan.wasted) complaints.push(`wasted is ${wasted}, not ${plan.wasted}`);
  if (JSON.stringify(short) !== JSON.stringify(inOrder(station, plan.short))) {
    complaints.push(`short is ${JSON.stringify(short)}, not ${JSON.stringify(plan.short)}`);
  }
  if (hours.some((one, week) => Math.abs(one - plan.hours[week]!) > 1e-9)) complaints.push("hours do not add up");
  return {
    complaints,
    short,
    late: kits.reduce((sum, kit) => sum + kit.late, 0),
    worstHours: Math.max(...hours),
    wasted,
  };
}

function inOrder({ places }: YearStation, short: YearPlan["short"]): YearPlan["short"] {
  const at = (place: string) => places.findIndex((one) => one.id === place);
  return short.toSorted((one, other) => at(one.place) - at(other.place) || one.week - other.week);
}

/** Day by day: what is renewed on a Monday, what has lapsed, whether it is out. */
function walkKit(station: YearStation, kit: Kit, openings: readonly Planned[], complaints: string[]) {
  const own = openings.filter((one) => one.kit === kit.id);
  const lastGood = new Map(kit.clocks.map((clock) => [clock.id, clock.lastGoodDay]));
  const ready: boolean[] = [];
  let [wasted, late, outFor] = [0, 0, 0];
  let wasFixed = false;
  for (const week of weeks(station)) {
    const opened = own.filter((one) => one.week === week);
    if (opened.length > 1) complaints.push(`${kit.id} is opened twice in week ${week}`);
    let isReady = true;
    for (let weekday = 0; weekday < 7; weekday += 1) {
      const today = dayAfter(station.start, week * 7 + weekday);
      if (weekday === 0 && opened.length > 0) {
        const isFixed = (station.fixed ?? []).some((one) => one.kit === kit.id && one.week === week);
        if (outFor > 0 && !(isFixed && wasFixed))
          complaints.push(`${kit.id} is opened in week ${week} while it is out`);
        wasFixed = isFixed;
        outFor = Math.max(outFor, kit.daysOut);
        wasted += renew(kit, opened[0]!, today, lastGood, complaints);
      }
      if (outFor > 0) isReady = false;
      outFor -= 1;
    }
    const sunday = dayAfter(station.start, week * 7 + 6);
    for (const clock of kit.clocks) {
      if (lastGood.get(clock.id)! >= sunday) continue;
      late += 1;
      if (clock.effect === "grounds") isReady = false;
    }
    ready.push(isReady);
  }
  return { ready, wasted, late };
}

function renew(kit: Kit, opening: Planned, today: string, lastGood: Map<string, string>, complaints: string[]): number {
  let wasted = 0;
  for (const id of opening.renews) {
    const clock = kit.clocks.find((one) => one.id === id);
    if (!clock) {
      complaints.push(`${kit.id} has no clock ${id}`);
      continue;
    }
    wasted += Math.max(0, daysFrom(today, lastGood.get(id)!));
    lastGood.set(id, dayAfter(today, clock.renewedFor));
  }
  return wasted;
}

/**
 * People named may do it or are seen by somebody named who may see it, are there that Monday, and are as many as are needed
 * at once; the hours of those who share the work carry it however it is shared.
 */
function judgePeople(station: YearStation, plan: YearPlan, complaints: string[]): void {
  for (const opening of plan.openings) {
    const kit = station.kits.find((one) => one.id === opening.kit)!;
    if (opening.by.length === 0) complaints.push(`nobody is named for ${opening.kit} in week ${opening.week}`);
    for (const id of opening.by) {
      const person = station.people.find((one) => one.id === id)!;
      const others = [...opening.by, ...(opening.beside ?? [])].filter((one) => one !== id);
      const isSeen = (need: string) =>
        others.some(
          (one) =>
            (station.people.find((other) => other.id === one)!.sees ?? []).includes(need) &&
            hoursThere(station, one, opening.week) > 0,
        );
      const lacks = (kit.needs ?? []).filter((need) => !(person.may ?? []).includes(need) && !isSeen(need));
      if (lacks.length > 0) complaints.push(`${id} may not do ${opening.kit}: ${lacks.join()}`);
      if (hoursThere(station, id, opening.week) === 0) complaints.push(`${id} is away in week ${opening.week}`);
    }
  }
  for (const opening of plan.openings) judgeHands(station, opening, complaints);
  for (const week of weeks(station)) {
    const own = plan.openings.filter((one) => one.week === week);
    for (const some of subsets(own)) {
      const people = new Set(some.flatMap((one) => one.by));
      const hours = [...people].reduce((sum, id) => sum + hoursThere(station, id, week), 0);
      const work = some.reduce((sum, one) => sum + station.kits.find((kit) => kit.id === one.kit)!.minutes, 0) / 60;
      if (work > hours + 1e-6) complaints.push(`${work} h of work for ${hours} h in week ${week}`);
    }
  }
}

/** As many as are needed at once, in a week that has so many where any has; who is lacking is said. */
function judgeHands(station: YearStation, opening: Planned, complaints: string[]): void {
  const { kit: id, week, by, beside = [], lacking = 0 } = opening;
  const wanted = station.kits.find((kit) => kit.id === id)!.hands ?? 1;
  const there = (at: number) => station.people.filter((one) => !isAwayOn(station, one.id, at * 7)).map((one) => one.id);
  const named = new Set([...by, ...beside]);
  if (named.size < by.length + beside.length) complaints.push(`somebody is named twice for ${id} in week ${week}`);
  for (const one of beside) if (!there(week).includes(one)) complaints.push(`${one} is away in week ${week}`);
  if (named.size < Math.min(wanted, there(week).length)) complaints.push(`too few hands for ${id} in week ${week}`);
  if (lacking !== Math.max(0, wanted - named.size)) complaints.push(`${lacking} hands lacking for ${id} is not so`);
  const isFixed = (station.fixed ?? []).some((one) => one.kit === id && one.week === week);
  const hasBetter = () => weeks(station).some((at) => there(at).length >= wanted);
  if (lacking > 0 && !isFixed && hasBetter())
    complaints.push(`${id} is opened in week ${week} with too few hands there`);
}

function isAwayOn({ people, start }: YearStation, id: string, day: number): boolean {
  const date = dayAfter(start, day);
  return (people.find((one) => one.id === id)!.absent ?? []).some(({ from, to }) => from <= date && date <= to);
}

/** Away on Monday is away from the opening; other days away take a seventh of the hours each. */
function hoursThere({ people, start }: YearStation, id: string, week: number): number {
  const person = people.find((one) => one.id === id)!;
  const isAway = (day: string) => (person.absent ?? []).some(({ from, to }) => from <= day && day <= to);
  const days = [0, 1, 2, 3, 4, 5, 6].map((day) => dayAfter(start, week * 7 + day));
  if (isAway(days[0]!)) return 0;
  return (person.hoursPerWeek * days.filter((day) => !isAway(day)).length) / 7;
}

function judgeParts(station: YearStation, plan: YearPlan, complaints: string[]): void {
  for (const part of station.parts ?? []) {
    let left = part.onHand;
    for (const week of weeks(station)) {
      for (const arrival of part.arrivals ?? []) if (arrival.week === week) left += arrival.count;
      for (const opening of plan.openings.filter((one) => one.week === week)) {
        const { clocks } = station.kits.find((one) => one.id === opening.kit)!;
        const renewed = clocks.filter((clock) => opening.renews.includes(clock.id));
        for (const need of renewed.flatMap((clock) => clock.parts ?? [])) if (need.part === part.id) left -= need.count;
      }
      if (left < 0) complaints.push(`${part.id} is ${-left} short in week ${week}`);
    }
  }
}

function judgeFixed(station: YearStation, plan: YearPlan, complaints: string[]): void {
  const isFixedAt = (kit: string, week: number) =>
    (station.fixed ?? []).some((one) => one.kit === kit && one.week === week);
  for (const { kit, week, instead } of station.fixed ?? []) {
    const isKept = plan.openings.some((one) => one.kit === kit && one.week === week);
    if (!isKept) complaints.push(`${kit} is not opened in week ${week}, which was fixed`);
    for (const other of plan.openings.filter((one) => one.kit === kit)) {
      const isIn = instead !== undefined && instead.from <= other.week && other.week <= instead.to;
      if (isIn && !isFixedAt(kit, other.week)) complaints.push(`${kit} is opened in week ${other.week} too`);
    }
  }
}

function workIn(station: YearStation, plan: YearPlan, week: number): number {
  const own = plan.openings.filter((one) => one.week === week);
  return own.reduce((sum, one) => sum + station.kits.find((kit) => kit.id === one.kit)!.minutes, 0);
}

/** All sets of up to twelve; of more, each alone and all together. */
function subsets<One>(all: readonly One[]): (readonly One[])[] {
  if (all.length > 12) return [...all.map((one) => [one]), all];
  return all.reduce<(readonly One[])[]>((found, one) => [...found, ...found.map((some) => [...some, one])], [[]]);
}

function weeks(station: YearStation): number[] {
  return [...Array(station.weeks).keys()];
}

function dayAfter(day: string, days: number): string {
  return new Date(Date.parse(`${day}T00:00:00Z`) + days * DAY_MS).toISOString().slice(0, 10);
}

function daysFrom(one: string, other: string): number {
  return Math.round((Date.parse(`${other}T00:00:00Z`) - Date.parse(`${one}T00:00:00Z`)) / DAY_MS);
}
