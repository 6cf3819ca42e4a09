import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import type { CasualtyPump, PumpSetting, PumpSign } from "#readiness";
import { InputError } from "#base";
import { refuelPump, seePump, setPump, strikeEntry } from "#station";
import { deviceAmbient } from "#web/device/clock.ts";
import { doingOf } from "#web/device/index.ts";
import { useAsk } from "#web/worker/index.ts";
import { USUAL_LIFT } from "#questions";
import { figuresOf } from "./pump-figures.ts";
import { takenAt } from "../soundings/taken.ts";
import { saySign } from "../seen/words.ts";
import { sayClock } from "../sheet/say.ts";
import { useSheet, type Sheet } from "../sheet/use-sheet.ts";
import type { SignSeen } from "./pump-state.ts";

type Change = Partial<Pick<PumpSetting, "running" | "lift" | "throttle" | "flow">>;

/** What can be written of a pump. */
export interface PumpActs {
  readonly change: (part: Change) => void;
  readonly see: (sign: PumpSign) => void;
  /** Tapped by mistake: its line is struck. */
  readonly takeOff: (sign: SignSeen) => void;
  /** Pumping from now on; of one that runs already, that water comes again. */
  readonly waterComes: () => void;
  readonly refuel: () => void;
}

/**
 * Writes what is done to a pump or seen of it; what a kit moves is computed for its new setting first.
 *
 * @param ago - so many minutes before it is written down
 * @param onDone - called once something was written
 */
export function usePumpActs(pump: CasualtyPump, ago: number, onDone: () => void): PumpActs {
  const words = useWords("sheetPumps");
  const told = useWords("casualtyTold");
  const sheet = useSheet();
  const { write, run } = sheet;
  const settingOf = useSettings(pump);
  const late = () => {
    const taken = takenAt({ ago }, Date.now());
    return taken === undefined ? {} : { taken };
  };
  const change = (part: Change) =>
    void run(async () => {
      const setting = await settingOf(part);
      const wrote = sayLate(sayChange(pump, part, words), ago, words);
      if (await write(wrote, (doing, now) => setPump(doing, now, { ...setting, ...late() }))) onDone();
    });
  const see = (sign: PumpSign) =>
    void run(async () => {
      const wrote = sayLate(words.wroteSign({ pump: pump.name, sign: saySign(sign, told) }), ago, words);
      const body = { pump: pump.pump, sign, ...late() };
      if (await write(wrote, (doing, now) => seePump(doing, now, body))) onDone();
    });
  return {
    change,
    see,
    takeOff: (sign) => void takeOff(sheet, sign),
    waterComes: () => (pump.running ? see("water") : change({ running: true })),
    refuel: () =>
      void write(words.wroteRefuelled({ pump: pump.name }), (doing, now) => refuelPump(doing, now, pump.pump)),
  };
}

/** One's own, or a keeper anybody's. */
async function takeOff({ view, casualty, run, takeBack }: Sheet, sign: SignSeen): Promise<void> {
  const line = view.entriesOf(`casualty:${casualty.id}`).find(({ id }) => id === sign.entry);
  if (!line) return;
  const reason = "Tapped by mistake.";
  const isAllowed = await run(async () => {
    const act = strikeEntry({ ...doingOf(view), now: deviceAmbient.now() }, line, reason);
    if (act.kind === "refused") throw new InputError(act.because);
  });
  if (isAllowed) await takeBack(line, reason);
}

function useSettings(pump: CasualtyPump): (part: Change) => Promise<PumpSetting> {
  const { view } = useSheet();
  const ask = useAsk();
  const pattern = view.kits.find(({ id }) => id === pump.kit)?.pattern.split("@", 1)[0];
  return async (part) => {
    const { runs: _runs, filled: _filled, ...setting } = pump;
    const next = { ...setting, ...part };
    const isSet = part.lift !== undefined || part.throttle !== undefined;
    if (pattern === undefined || !isSet) return next;
    return {
      ...next,
      ...(await figuresOf(ask, pattern, { lift: next.lift ?? USUAL_LIFT, throttle: next.throttle ?? 1 })),
    };
  };
}

function sayChange({ name: pump }: CasualtyPump, { running }: Change, words: Words["sheetPumps"]): string {
  if (running === undefined) return words.wroteAnew({ pump });
  return running ? words.wrotePumping({ pump }) : words.wroteStopped({ pump });
}

/** By the clock: it stands on the screen for minutes. */
function sayLate(what: string, ago: number, words: Words["sheetPumps"]): string {
  return ago === 0 ? what : words.wroteAt({ what, time: sayClock(Date.now() - 60_000 * ago) });
}
