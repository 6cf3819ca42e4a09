import type { Entry } from "#log";
import type { CasualtyBodies, CasualtySpace, PumpSetting } from "./casualty-kinds.ts";
import type { CasualtyPump, CasualtyState, PumpRun, TakenSounding } from "./casualty-state.ts";
import { markOf } from "./draft.ts";
import { idOf } from "./people-fold.ts";

type Fold<Kind extends keyof CasualtyBodies> = (
  state: CasualtyState,
  body: CasualtyBodies[Kind],
  entry: Entry,
) => CasualtyState;

const FOLDS: { readonly [Kind in keyof CasualtyBodies]: Fold<Kind> } = {
  "casualty-opened": (state, { name, boat, space, hole, told, note }, entry) => ({
    ...state,
    name,
    boat,
    spaces: withSpace(state.spaces, space),
    ...(hole && { hole }),
    ...(told && { told }),
    opened: markOf(entry),
    notes: note === undefined ? state.notes : [...state.notes, { ...markOf(entry), about: "boat", note }],
  }),
  "casualty-changed": (state, { space, ...changed }) => ({
    ...state,
    ...changed,
    spaces: space ? withSpace(state.spaces, space) : state.spaces,
  }),
  "sounding-taken": (state, body, entry) => ({ ...state, soundings: withSounding(state.soundings, body, entry) }),
  "pump-set": (state, body, { at }) => ({ ...state, pumps: withPump(state.pumps, body, at) }),
  "pump-refuelled": (state, { pump }, { at }) => ({
    ...state,
    pumps: state.pumps.map((one) => (one.pump === pump ? { ...one, filled: at } : one)),
  }),
  "hole-patched": (state, body, entry) => ({ ...state, patches: [...state.patches, { ...markOf(entry), ...body }] }),
  "stability-seen": (state, body) => ({ ...state, stability: { ...state.stability, ...body } }),
  "fuel-smelt": (state, _, entry) => ({
    ...state,
    fuelSmelt: markOf(entry),
    pumps: state.pumps.map((pump) => ({ ...pump, running: false, runs: endRun(pump.runs, entry.at) })),
  }),
  "fuel-cleared": (state) => withoutFuel(state),
  "casualty-noted": (state, body, entry) => ({ ...state, notes: [...state.notes, { ...markOf(entry), ...body }] }),
  "casualty-closed": (state, body, entry) => ({
    ...state,
    closed: { ...markOf(entry), ...body },
    pumps: state.pumps.map((pump) => ({ ...pump, runs: endRun(pump.runs, entry.at) })),
  }),
};

/** True for a kind of entry that is about casualties. */
export function isCasualtyKind(kind: string): kind is keyof CasualtyBodies {
  return Object.hasOwn(FOLDS, kind);
}

/**
 * A casualty after one more entry, of those that count and in order. An entry that sorts before the opening, by a wrong
 * clock, begins the casualty on the spot; the opening then fills it in.
 *
 * @param before - state so far, or undefined for a casualty not heard of
 * @param entry - about this casualty; other kinds change nothing
 * @returns the state after it; `before` is never changed
 */
export function applyCasualtyEntry(before: CasualtyState | undefined, entry: Entry): CasualtyState {
  const state = before ?? blankCasualty(entry);
  if (!isCasualtyKind(entry.kind)) return state;
  const fold = FOLDS[entry.kind] as Fold<keyof CasualtyBodies>;
  return fold(state, entry.body as CasualtyBodies[keyof CasualtyBodies], entry);
}

function blankCasualty(entry: Entry): CasualtyState {
  const id = idOf(entry.subject);
  return {
    id,
    name: id,
    boat: { kind: "motor boat", length: 10 },
    spaces: [],
    opened: markOf(entry),
    soundings: [],
    pumps: [],
    patches: [],
    stability: {},
    notes: [],
  };
}

function withoutFuel(state: CasualtyState): CasualtyState {
  const cleared: { -readonly [Key in keyof CasualtyState]: CasualtyState[Key] } = { ...state };
  delete cleared.fuelSmelt;
  return cleared;
}

function withSpace(spaces: readonly CasualtySpace[], space: CasualtySpace): readonly CasualtySpace[] {
  const known = spaces.some(({ id }) => id === space.id);
  return known ? spaces.map((one) => (one.id === space.id ? space : one)) : [...spaces, space];
}

/** In its place by when it was read, after any of the same time. No sounding was read after it was written down. */
function withSounding(
  soundings: readonly TakenSounding[],
  { taken, ...body }: CasualtyBodies["sounding-taken"],
  entry: Entry,
): readonly TakenSounding[] {
  const isEarlier = taken !== undefined && Date.parse(taken) < Date.parse(entry.at);
  const sounding = { ...markOf(entry), ...body, ...(isEarlier && { at: taken, written: entry.at }) };
  const next = soundings.findIndex(({ at }) => Date.parse(at) > Date.parse(sounding.at));
  return soundings.toSpliced(next < 0 ? soundings.length : next, 0, sounding);
}

function withPump(pumps: readonly CasualtyPump[], setting: PumpSetting, at: string): readonly CasualtyPump[] {
  const before = pumps.find(({ pump }) => pump === setting.pump);
  const after = setPump(before, setting, at);
  return before ? pumps.map((one) => (one === before ? after : one)) : [...pumps, after];
}

function setPump(before: CasualtyPump | undefined, setting: PumpSetting, at: string): CasualtyPump {
  const ended = endRun(before?.runs ?? [], at);
  const run = { from: at, space: setting.space, flow: setting.flow };
  const filled = before?.filled ?? (setting.running ? at : undefined);
  return {
    ...setting,
    runs: setting.running ? [...ended, run] : ended,
    ...(filled !== undefined && { filled }),
  };
}

function endRun(runs: readonly PumpRun[], at: string): readonly PumpRun[] {
  return runs.map((run) => (run.to === undefined ? { ...run, to: at } : run));
}
