import type { CasualtyPump, PumpSetting, PumpSign } from "#readiness";
import { refuelPump, seePump, setPump } from "#station";
import { useAsk } from "#web/worker/index.ts";
import { USUAL_LIFT } from "#questions";
import { figuresOf } from "./pump-figures.ts";
import { takenAt } from "../soundings/taken.ts";
import { SIGN_WORDS } from "../seen/words.ts";
import { sayClock } from "../sheet/say.ts";
import { useSheet } from "../sheet/use-sheet.ts";

type Change = Partial<Pick<PumpSetting, "running" | "lift" | "throttle" | "flow">>;

/** What can be written of a pump. */
export interface PumpActs {
  readonly change: (part: Change) => void;
  readonly see: (sign: PumpSign) => void;
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
  const { write, run } = useSheet();
  const settingOf = useSettings(pump);
  const late = () => {
    const taken = takenAt({ ago }, Date.now());
    return taken === undefined ? {} : { taken };
  };
  const change = (part: Change) =>
    void run(async () => {
      const setting = await settingOf(part);
      const words = `${sayChange(pump, part)}${sayLate(ago)}`;
      if (await write(words, (doing, now) => setPump(doing, now, { ...setting, ...late() }))) onDone();
    });
  const see = (sign: PumpSign) =>
    void run(async () => {
      const words = `${pump.name}: ${SIGN_WORDS[sign]}${sayLate(ago)}`;
      const body = { pump: pump.pump, sign, ...late() };
      if (await write(words, (doing, now) => seePump(doing, now, body))) onDone();
    });
  return {
    change,
    see,
    waterComes: () => (pump.running ? see("water") : change({ running: true })),
    refuel: () => void write(`${pump.name} refuelled`, (doing, now) => refuelPump(doing, now, pump.pump)),
  };
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

function sayChange(pump: CasualtyPump, { running }: Change): string {
  if (running === undefined) return `${pump.name} set anew`;
  return `${pump.name} ${running ? "pumping" : "stopped"}`;
}

/** By the clock: it stands on the screen for minutes. */
function sayLate(ago: number): string {
  return ago === 0 ? "" : `, at ${sayClock(Date.now() - 60_000 * ago)}`;
}
