import type { YearPlan, YearStation } from "#planning";
import { judgeYear, type Judgement } from "./judge.ts";

/** Short, late, openings, worst hours, wasted: in this order as small as possible. */
export type Figures = readonly [number, number, number, number, number];

type Opening = { readonly kit: string; readonly week: number; readonly renews: readonly string[] };

/** The best there is, by trying every plan of a small station; people are named by trying everybody who may. */
export function bestOfEveryPlan(station: YearStation): Figures {
  const choices = station.kits.map((kit) => everyLife(station, kit));
  const lates = new Map(
    station.kits.flatMap((kit, at) => choices[at]!.map((life) => [life, lateOf(station, kit, life)] as const)),
  );
  const byWorth = choices.map((lives) =>
    lives.toSorted((one, other) => lates.get(one)! - lates.get(other)! || one.length - other.length),
  );
  let best: Figures | undefined;
  for (const lives of everyCombination(byWorth)) {
    const openings = lives.flat();
    const late = lives.reduce((sum, life) => sum + lates.get(life)!, 0);
    if (best?.[0] === 0 && isLess([0, best[1], best[2], 0, 0], [0, late, openings.length, 0, 0])) continue;
    const figures = figuresOf(station, openings, best);
    if (figures && (!best || isLess(figures, best))) best = figures;
  }
  return best!;
}

/** What a plan comes to, as the judge reads it. */
export function planFigures(station: YearStation, plan: YearPlan): Figures {
  return figuresIn(judgeYear(station, plan), plan);
}

function figuresIn({ short, late, worstHours, wasted }: Judgement, plan: YearPlan): Figures {
  return [short.reduce((sum, one) => sum + one.by, 0), late, plan.openings.length, worstHours, wasted];
}

function figuresOf(station: YearStation, openings: readonly Opening[], best: Figures | undefined): Figures | undefined {
  const named = openings.map((one) => ({ ...one, ...ableTo(station, one) }));
  const plan = { openings: named, short: [], hours: [], wasted: 0 } as unknown as YearPlan;
  const judged = judgeYear(station, plan);
  const figures = figuresIn(judged, plan);
  if (best && !isLess(figures, best)) return undefined;
  const ignored = /^(wasted is|short is|hours do not)/;
  return judged.complaints.every((one) => ignored.test(one)) ? figures : undefined;
}

/** Weeks lapsed of one kit opened so. */
function lateOf(station: YearStation, kit: YearStation["kits"][number], life: readonly Opening[]): number {
  const plan = { openings: life.map((one) => ({ ...one, by: [] })), short: [], hours: [], wasted: 0 };
  return judgeYear({ ...station, kits: [kit] }, plan as unknown as YearPlan).late;
}

/** Everybody there: who may, alone or seen, shares the work, the others stand beside; naming more never makes a plan worse. */
function ableTo(station: YearStation, { kit, week }: Opening) {
  const { needs = [], hands = 1 } = station.kits.find((one) => one.id === kit)!;
  const monday = new Date(Date.parse(station.start) + week * 7 * 86_400_000).toISOString().slice(0, 10);
  const here = station.people.filter(
    (one) => !(one.absent ?? []).some(({ from, to }) => from <= monday && monday <= to),
  );
  const there = here.filter((one) => one.hoursPerWeek > 0);
  const isSeen = (person: string, need: string) =>
    there.some(({ id, sees = [] }) => id !== person && sees.includes(need));
  const able = there.filter(({ id, may = [] }) => needs.every((need) => may.includes(need) || isSeen(id, need)));
  const lacking = hands - here.length;
  return {
    by: able.map(({ id }) => id),
    beside: here.filter((one) => !able.includes(one)).map(({ id }) => id),
    ...(lacking > 0 && { lacking }),
  };
}

/** Every way to open one kit, each opening renewing every set of clocks that is not empty. */
function everyLife(station: YearStation, kit: YearStation["kits"][number]): readonly (readonly Opening[])[] {
  const sets = kit.clocks
    .reduce<string[][]>((found, { id }) => [...found, ...found.map((set) => [...set, id])], [[]])
    .filter((set) => set.length > 0);
  let lives: (readonly Opening[])[] = [[]];
  for (let week = 0; week < station.weeks; week += 1) {
    const isFixed = (station.fixed ?? []).some((one) => one.kit === kit.id && one.week === week);
    lives = lives.flatMap((life) => {
      const opened = sets.map((renews) => [...life, { kit: kit.id, week, renews }]);
      if (!isFixed) return [life, ...opened];
      return canRenew(station, kit, week) ? opened : [...opened, [...life, { kit: kit.id, week, renews: [] }]];
    });
  }
  return lives;
}

/** Whether some clock that takes no parts ends later for being renewed then; else a fixed opening may renew nothing. */
function canRenew({ start }: YearStation, { clocks }: YearStation["kits"][number], week: number): boolean {
  const free = clocks.filter((clock) => (clock.parts ?? []).length === 0);
  return free.some(
    ({ renewedFor, lastGoodDay }) => Date.parse(start) + (week * 7 + renewedFor) * 86_400_000 > Date.parse(lastGoodDay),
  );
}

function* everyCombination(
  choices: readonly (readonly (readonly Opening[])[])[],
): Generator<readonly (readonly Opening[])[]> {
  const [first, ...rest] = choices;
  if (!first) {
    yield [];
    return;
  }
  for (const own of first) for (const others of everyCombination(rest)) yield [own, ...others];
}

function isLess(one: Figures, other: Figures): boolean {
  const at = one.findIndex((value, index) => Math.abs(value - other[index]!) > 1e-9);
  return at >= 0 && one[at]! < other[at]!;
}
