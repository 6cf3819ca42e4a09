import { addSpan } from "#base";
import { allSteps, checksFinding, stepOfCheck, type Effect, type Mode, type Pattern } from "#kit";
import { DAY_MS, HOUR_MS, lineOf, planOf, type Act, type KitLife } from "./kit-plan.ts";
import { dayOf } from "./log-writer.ts";
import { CREW, KEEPER } from "./roster.ts";
import { writeTurnaround } from "./turnaround-life.ts";

/** What happened to the kit in the last days that makes it what it is today. */
export function troubleActs(life: KitLife, turnarounds: readonly number[]): Act[] {
  const { today } = life.setting;
  const last = turnarounds.at(-1) ?? today - DAY_MS;
  switch (life.kit.trouble) {
    case "lived-with":
      return [actAt(last + 5 * HOUR_MS, life, liveWith)];
    case "seal-mismatch":
      return [actAt(today - 2 * DAY_MS + 8 * HOUR_MS, life, misreadSeal)];
    case "open":
      return [actAt(today - 9 * HOUR_MS, life, leaveOpen)];
    case "away":
      return [actAt(today - 29.8 * HOUR_MS, life, handOver)];
    case "grounded":
      return [actAt(today - 4 * DAY_MS + 9 * HOUR_MS, life, ground)];
    default:
      return [];
  }
}

function actAt(ms: number, life: KitLife, happen: (life: KitLife, ms: number) => void): Act {
  return { ms, run: () => happen(life, ms) };
}

/** A fault that limits, seen at the last turnaround, lived with by a named person until a date. */
function liveWith(life: KitLife, ms: number): void {
  const { setting, kit } = life;
  const mode = modeWith(setting.pattern, "limits");
  const finding = raise(life, ms, mode, "Seen at the last turnaround; a replacement is on order.");
  const limit = mode.limit ?? "Four people to lift it.";
  const until = addSpan(dayOf(setting.today), { months: 2 });
  const body = { finding, how: "lived-with", name: "Mara Tolliver", limit, until } as const;
  setting.writer.write({ ...lineOf(kit, setting.pattern), kind: "remedy-made", ms: ms + HOUR_MS, hand: KEEPER, body });
}

function misreadSeal(life: KitLife, ms: number): void {
  const { setting, kit } = life;
  const seen = life.seal.replace(/\d$/, (digit) => String((Number(digit) + 7) % 10));
  const body = { sealSeen: seen, containerSound: true, note: "Read twice. It is not the number on the board." };
  setting.writer.write({ ...lineOf(kit, setting.pattern), kind: "mustered", ms, hand: CREW, body });
}

/** Work begun yesterday and interrupted half-way. */
function leaveOpen(life: KitLife, ms: number): void {
  const steps = allSteps(life.setting.pattern);
  const stopsBefore = steps[Math.floor(steps.length * 0.4)]!.id;
  writeTurnaround(life.setting.writer, { ...planOf(life, ms), stopsBefore, hand: KEEPER });
}

function handOver(life: KitLife, ms: number): void {
  const { setting, kit } = life;
  const body = {
    to: "Fishing vessel Corrie Lass, off the north skerries",
    method: "passed",
    sealBroken: true,
  } as const;
  setting.writer.write({ ...lineOf(kit, setting.pattern), kind: "handed-over", ms, hand: CREW, body });
}

/** Opened again out of routine, found unfit, closed as grounded. */
function ground(life: KitLife, ms: number): void {
  const { setting, kit } = life;
  const mode = modeWith(setting.pattern, "grounds");
  const check = checksFinding(setting.pattern, mode.id)[0]!;
  const plan = { ...planOf(life, ms), because: "finding", hand: KEEPER, wrong: new Set([check.id]) } as const;
  const { turnaround, end } = writeTurnaround(setting.writer, plan);
  raise(life, end, mode, "Wiped dry, wet again within five minutes.", turnaround);
  const body = { turnaround, reason: mode.name, seal: setting.nextSeal() };
  life.seal = body.seal;
  setting.writer.write({
    ...lineOf(kit, setting.pattern),
    kind: "closed-grounded",
    ms: end + HOUR_MS / 2,
    hand: KEEPER,
    body,
  });
}

function raise(life: KitLife, ms: number, mode: Mode, note: string, turnaround?: string): string {
  const { setting, kit } = life;
  const { pattern, writer } = setting;
  const finding = writer.newId(ms);
  const check = checksFinding(pattern, mode.id)[0];
  const step = check && stepOfCheck(pattern, check.id);
  const body = {
    finding,
    item: mode.item,
    mode: mode.id,
    effect: mode.effect,
    ...(mode.limit === undefined ? {} : { limit: mode.limit }),
    note,
    ...(turnaround === undefined ? {} : { turnaround }),
    ...(step === undefined ? {} : { step: step.id }),
    ...(check === undefined ? {} : { check: check.id }),
    photos: [],
  };
  writer.write({ ...lineOf(kit, pattern), kind: "finding-raised", ms, hand: KEEPER, body });
  return finding;
}

/** A mode of this effect, of the fuel tank where the pattern has one: the trouble every keeper knows. */
function modeWith(pattern: Pattern, effect: Effect): Mode {
  const having = pattern.modes.filter((mode) => mode.effect === effect);
  return having.find((mode) => mode.item.includes("tank")) ?? having[0]!;
}
