// The families of casualties. Each begins with water in her and a first sounding.
import {
  chanceFor,
  drawHole,
  drawPump,
  drawScene,
  drawStated,
  drawState,
  FIRST_AFTER,
  mostWater,
  SECOND_AFTER,
  type Casualty,
  type Change,
  type Family,
  type PumpState,
  type Scene,
  type ToldPump,
} from "./casualties.ts";
import { inflowBy, takenBy, type Hole, type Pump } from "./flows.ts";
import { follow, type Stage } from "./following.ts";
import { lieOf } from "./lies.ts";
import { SETTINGS, type Setting } from "./settings.ts";

export const FAMILIES = [
  "one pump",
  "second pump",
  "patch told",
  "patch untold",
  "strainer blocks",
  "second hole",
  "dead pump",
  "slip of the stick",
  "heel",
  "steady",
  "no pump",
  "lost soon",
] as const;

/** In these something happens that nobody writes down. */
export const UNTOLD: readonly Family[] = ["patch untold", "strainer blocks", "second hole", "slip of the stick"];

type Story = Pick<Casualty, "stages" | "changes" | "pumps" | "patches" | "pumpStates"> &
  Partial<Pick<Casualty, "slip">> & { readonly start?: number };

/**
 * Casualty number n of a family: the same at every call.
 *
 * @param family - one of {@link FAMILIES}
 * @param number - from 0
 * @param setting - what boats, stick and watch are drawn from
 */
export function drawCasualty(family: Family, number: number, setting: Setting = SETTINGS.usual): Casualty {
  const chance = chanceFor(FAMILIES.indexOf(family), number);
  const heel = family === "heel" ? chance.pick([-1, 1]) * chance.between(0.05, 0.24) : 0;
  const asked = { heel, isLong: family === "no pump", canBeLost: family === "lost soon" };
  const { interval, ...scene } = drawScene(chance, asked, setting);
  const { start = scene.start, ...story } = STORIES[family](scene);
  const diameter = story.stages[0]!.holes[0]?.diameter;
  const isHoleTold = diameter !== undefined && chance.happens(0.12);
  return {
    family,
    number,
    afloat: scene.afloat,
    start,
    soundings: scene.soundings,
    interval,
    error: chance.between(...setting.stick.error),
    stick: setting.stick,
    chance,
    ...story,
    ...(isHoleTold && {
      holeDiameter: Math.max(0.01, Math.round(100 * diameter * Math.exp(0.3 * chance.normal())) / 100),
    }),
    ...(heel !== 0 && { list: (Math.round((heel * 180) / Math.PI) * Math.PI) / 180 }),
  };
}

const STORIES: Readonly<Record<Family, (scene: Scene) => Story>> = {
  "one pump": (scene) => onePump(scene),
  "second pump": secondPump,
  "patch told": (scene) => patched(scene, true),
  "patch untold": (scene) => patched(scene, false),
  "strainer blocks": strainerBlocks,
  "second hole": secondHole,
  "dead pump": (scene) => onePump(scene, scene.chance.happens(0.6) ? "dead" : "quarter"),
  "slip of the stick": slipped,
  heel: (scene) => (scene.chance.happens(0.4) ? secondPump(scene) : onePump(scene)),
  steady,
  "no pump": unpumped,
  "lost soon": lostSoon,
};

interface Started {
  readonly hole: Hole;
  readonly pump: Pump;
  readonly story: Story;
}

/** A hole that lets in 0.4 to 2.2 times what a good pump would take out. */
function holeFor(scene: Scene, stated: number): Hole {
  return drawHole(scene, 0.8 * stated * scene.chance.between10(0.4, 2.2));
}

function start(scene: Scene, state = drawState(scene.chance)): Started {
  const { chance, after } = scene;
  const stated = drawStated(chance);
  const hole = holeFor(scene, stated);
  const pump = drawPump(scene, stated, state);
  const wasRunning = chance.happens(0.25);
  const from = wasRunning ? -Math.round(chance.between(120, 600)) : after(FIRST_AFTER);
  const running: Stage = { from, holes: [hole], pumps: [pump] };
  const stages = wasRunning ? [running] : [{ from: 0, holes: [hole], pumps: [] }, running];
  const changes = wasRunning ? [] : [{ at: from, told: true }];
  return { hole, pump, story: { stages, changes, pumps: [{ from, stated }], patches: [], pumpStates: [state] } };
}

function onePump(scene: Scene, state?: PumpState): Story {
  return start(scene, state).story;
}

/** The story, and one thing more. */
function then(story: Story, stage: Stage, told: boolean, more: Partial<Story> = {}): Story {
  const change: Change = { at: stage.from, told };
  return { ...story, ...more, stages: [...story.stages, stage], changes: [...story.changes, change] };
}

function secondPump(scene: Scene): Story {
  const { hole, pump, story } = start(scene);
  const { chance } = scene;
  const [stated, state, from] = [drawStated(chance), drawState(chance), scene.after(SECOND_AFTER)];
  const second = drawPump(scene, stated, state);
  const told: ToldPump = { from, stated };
  return then(story, { from, holes: [hole], pumps: [pump, second] }, true, {
    pumps: [...story.pumps, told],
    pumpStates: [...story.pumpStates, state],
  });
}

/** What a patch leaves open is judged by eye: in quarters, or next to nothing. */
function patched(scene: Scene, told: boolean): Story {
  const { hole, pump, story } = start(scene);
  const { chance } = scene;
  const open = chance.between(0.1, 0.7);
  const judged = open * Math.exp(0.35 * chance.normal());
  const said = [0.1, 0.25, 0.5, 0.75].reduce((best, one) =>
    Math.abs(one - judged) < Math.abs(best - judged) ? one : best,
  );
  const from = scene.after(SECOND_AFTER);
  const stage = { from, holes: [{ ...hole, open }], pumps: [pump] };
  return then(story, stage, told, told ? { patches: [{ at: from, open: said }] } : {});
}

function strainerBlocks(scene: Scene): Story {
  const { hole, pump, story } = start(scene, "works");
  const left = scene.chance.between(0, 0.3);
  const from = scene.after(SECOND_AFTER);
  return then(story, { from, holes: [hole], pumps: [{ ...pump, flow: left * pump.flow }] }, false);
}

function secondHole(scene: Scene): Story {
  const { hole, pump, story } = start(scene);
  const flow = Math.max(5e-4, inflowBy(hole, scene.surfaces)) * scene.chance.between(1, 3);
  return then(story, { from: scene.after(SECOND_AFTER), holes: [hole, drawHole(scene, flow)], pumps: [pump] }, false);
}

/** One reading 8 to 30 cm off. */
function slipped(scene: Scene): Story {
  const { chance } = scene;
  const by = chance.pick([-1, 1]) * chance.between(0.08, 0.3);
  return { ...onePump(scene), slip: { sounding: chance.whole(3, 7), by } };
}

/** The pump matches the hole, from before or from when it is started; or the water stands, with nothing running in; or it is as high inside as outside. */
function steady(scene: Scene): Story {
  const { chance } = scene;
  const sort = chance.between(0, 1);
  if (sort < 0.2) return standing();
  if (sort < 0.3) return levelled(scene);
  return sort < 0.65 ? matched(scene) : stopped(scene);
}

function standing(): Story {
  return { stages: [{ from: 0, holes: [], pumps: [] }], changes: [], pumps: [], patches: [], pumpStates: [] };
}

/** A pump that just holds her from the level at first, running from the beginning. */
function matched(scene: Scene): Story {
  const { chance, surfaces, start: water } = scene;
  const stated = drawStated(chance);
  const pump = drawPump(scene, stated, "works");
  const hole = drawHole(scene, Math.max(1e-5, takenBy(pump, surfaces)));
  const from = -Math.round(chance.between(300, 1200));
  const stage = { from, holes: [hole], pumps: [pump] };
  return { stages: [stage], changes: [], pumps: [{ from, stated }], patches: [], pumpStates: ["works"], start: water };
}

/** She fills until a pump is started that just holds her. */
function stopped(scene: Scene): Story {
  const { chance, afloat, start: water, after } = scene;
  const from = after(FIRST_AFTER);
  const share = chance.between(0.6, 1);
  const hole = drawHole(scene, drawStated(chance) * share);
  const before: Stage = { from: 0, holes: [hole], pumps: [] };
  const filled = follow(afloat.lies, water, [before], { from: 0, to: from, every: 10 });
  const then = lieOf(afloat.lies, filled.flood.at(-1)!);
  const tried = drawPump(scene, 0.01, "works");
  const flow = (tried.flow * inflowBy(hole, then)) / takenBy(tried, then);
  if (filled.lostAt !== undefined || !Number.isFinite(flow) || flow <= 0) return matched(scene);
  const stages = [before, { from, holes: [hole], pumps: [{ ...tried, flow }] }];
  const stated = Math.max(1, Math.round((flow * 6e3) / share)) / 6e3;
  return {
    ...standing(),
    stages,
    changes: [{ at: from, told: true }],
    pumps: [{ from, stated }],
    pumpStates: ["works"],
  };
}

function levelled(scene: Scene): Story {
  const most = mostWater(scene.afloat);
  const { lostWith } = scene.afloat.lies;
  const water = most < 0.97 * lostWith ? most : scene.start;
  const hole = drawHole(
    { ...scene, surfaces: lieOf(scene.afloat.lies, scene.start) },
    scene.chance.between10(1e-3, 1e-2),
  );
  const holes = water === most ? [hole] : [];
  return { ...standing(), stages: [{ from: 0, holes, pumps: [] }], start: water };
}

/** She fills: lost, or level with the sea, in 7 minutes to two hours at the pace she has at first. */
function unpumped(scene: Scene): Story {
  const { chance, afloat, start: water } = scene;
  const time = chance.between10(420, 7200);
  const hole = drawHole(scene, Math.max(1e-4, (mostWater(afloat) - water) / time));
  return { ...standing(), stages: [{ from: 0, holes: [hole], pumps: [] }] };
}

/** She fills in 6 to 25 minutes at the pace she has at first, whatever is pumped; half have a pump, of which many are weak. */
function lostSoon(scene: Scene): Story {
  const { chance, afloat, start: water, after } = scene;
  const gained = (mostWater(afloat) - water) / chance.between10(360, 1500);
  if (chance.happens(0.5)) {
    const hole = drawHole(scene, gained);
    return { ...standing(), stages: [{ from: 0, holes: [hole], pumps: [] }] };
  }
  const [stated, from] = [drawStated(chance), after(FIRST_AFTER)];
  const state = chance.pick<PumpState>(["works", "quarter", "dead"]);
  const pump = drawPump(scene, stated, state);
  const hole = drawHole(scene, gained + takenBy(pump, scene.surfaces));
  const bare = { ...standing(), stages: [{ from: 0, holes: [hole], pumps: [] }] };
  return then(bare, { from, holes: [hole], pumps: [pump] }, true, { pumps: [{ from, stated }], pumpStates: [state] });
}
