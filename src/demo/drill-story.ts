import { allSteps, checksFinding, stageNamed, stepOfCheck, type Check, type Mode, type Pattern } from "#kit";
import { commitmentOf, type Bodies, type EntryKind, type PlantedFault } from "#readiness";
import { createChance } from "./chance.ts";
import { DAY_MS, HOUR_MS, lineOf, planOf, type Act, type KitLife } from "./kit-plan.ts";
import type { Hand } from "./log-writer.ts";
import { CREW, KEEPER, SECOND_CREW } from "./roster.ts";
import { writeTurnaround } from "./turnaround-life.ts";

/** The kit on which the one drill was held, and the seal it was given afterwards: from the box of the boat. */
const KIT = "kit:br-10";
const SEAL = "BR 9104";
const NONCE_LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
const MINUTE_MS = 60_000;
const HOW = [
  "A chalk cross at the place stands for it.",
  "A strip of tape at the place stands for it.",
  "A tag tied to it says so.",
] as const;

/** A mode, and the check by which somebody who looks finds it. */
interface Findable {
  readonly mode: Mode;
  readonly check: Check;
}

/** One past drill: three faults planted by the crew, two found, one missed, one found that was not there. */
export function drillActs(life: KitLife, turnarounds: readonly number[]): Act[] {
  const before = turnarounds.at(-2);
  if (life.kit.kit !== KIT || before === undefined) return [];
  const ms = before + 21 * DAY_MS;
  return [{ ms, run: () => holdDrill(life, ms) }];
}

function holdDrill(life: KitLife, ms: number): void {
  const { kit, setting } = life;
  const writer = setting.writer.apart(createChance(kit.lastTurnaround + 1823));
  const own: KitLife = { ...life, setting: { ...setting, writer } };
  const [one, two, three, four] = findable(setting.pattern);
  if (!one || !two || !three || !four) return;
  const drill = writer.newId(ms);
  const tell = teller(own);
  tell("drill-begun", ms, KEEPER, { drill, sealSeen: life.seal, trainees: [SECOND_CREW.by], note: "Autumn drill." });
  const planted = plant(own, drill, [one, two, three]);
  tell("faults-planted", ms + 20 * MINUTE_MS, CREW, { drill, plant: planted.plant, commitment: commitmentOf(planted) });
  const wrong = new Set([one, two, four].map(({ check }) => check.id));
  const plan = { ...planOf(own, ms + HOUR_MS), sealSeen: "", hand: SECOND_CREW, wrong, drill };
  const { turnaround, end } = writeTurnaround(writer, plan);
  const found = [one, two, four].map((what, i) => raise(own, what, turnaround, end + i * MINUTE_MS));
  const after = end + 10 * MINUTE_MS;
  const { plant: name, nonce, faults } = planted;
  tell("drill-revealed", after, CREW, { drill, plant: name, nonce, faults });
  for (const fault of [1, 2, 3])
    tell("planted-removed", after + fault * MINUTE_MS, CREW, { drill, plant: name, fault });
  const note = "It was sound: looked at together.";
  tell("drill-finding-judged", after + 5 * MINUTE_MS, CREW, { drill, finding: found[2]!, real: false, note });
  tell("drill-ended", after + 6 * MINUTE_MS, KEEPER, { drill, how: "compared" });
  lookAgain(own, [one, two, three, four], turnaround, after + 7 * MINUTE_MS);
  tell("sealed", after + 30 * MINUTE_MS, KEEPER, { turnaround, seal: SEAL });
  life.seal = SEAL;
  life.turnarounds += 1;
}

type Tell = <Kind extends EntryKind>(kind: Kind, ms: number, hand: Hand, body: Bodies[Kind]) => void;

function teller({ kit, setting: { writer, pattern } }: KitLife): Tell {
  return (kind, ms, hand, body) => {
    writer.write({ ...lineOf(kit, pattern), kind, ms, hand, body });
  };
}

/** Modes of different items that a look in the examination finds, the mildest first; nothing to do with fuel. */
function findable(pattern: Pattern): readonly Findable[] {
  const looked = stageNamed(pattern, "examine")?.steps.flatMap(({ checks }) => checks) ?? [];
  const all = pattern.modes.flatMap((mode): readonly Findable[] => {
    const check = checksFinding(pattern, mode.id).find(({ id, kind }) => kind === "look" && looked.includes(id));
    return check ? [{ mode, check }] : [];
  });
  const [items, checks] = [new Set<string>(), new Set<string>()];
  const mild = all.filter(({ mode }) => !/fuel|tank/.test(mode.item)).toSorted((a, b) => gravity(a) - gravity(b));
  return mild.filter(({ mode, check }) => {
    const isNew = !items.has(mode.item) && !checks.has(check.id);
    items.add(mode.item);
    checks.add(check.id);
    return isNew;
  });
}

function gravity({ mode: { effect } }: Findable): number {
  return ["notes", "limits", "grounds"].indexOf(effect);
}

function plant({ kit, setting: { writer } }: KitLife, drill: string, what: readonly Findable[]) {
  const nonce = Array.from({ length: 20 }, () => writer.chance.pick([...NONCE_LETTERS])).join("");
  const faults = what.map(({ mode }, i): PlantedFault => ({ item: mode.item, mode: mode.id, how: HOW[i]! }));
  return { kit: kit.kit.slice("kit:".length), drill, plant: "planted", nonce, faults };
}

function raise(life: KitLife, { mode, check }: Findable, turnaround: string, ms: number): string {
  const { writer, pattern } = life.setting;
  const finding = writer.newId(ms);
  const step = stepOfCheck(pattern, check.id)?.id;
  const { item, id, effect, limit } = mode;
  const what = { finding, item, mode: id, effect, ...(limit !== undefined && { limit }) };
  const where = { turnaround, check: check.id, ...(step !== undefined && { step }) };
  teller(life)("finding-raised", ms, SECOND_CREW, { ...what, ...where, photos: [] });
  return finding;
}

/** Every line that finds one of these modes, answered anew without the fault. */
function lookAgain(life: KitLife, what: readonly Findable[], turnaround: string, ms: number): void {
  const { pattern } = life.setting;
  const checks = new Set(what.flatMap(({ mode }) => checksFinding(pattern, mode.id).map(({ id }) => id)));
  const lines = allSteps(pattern).flatMap(({ id: step, checks: asked }) =>
    asked.filter((check) => checks.has(check)).map((check) => ({ turnaround, step, check })),
  );
  for (const [i, line] of lines.entries())
    teller(life)("step-answered", ms + i * MINUTE_MS, SECOND_CREW, { ...line, answer: "seen" });
}
