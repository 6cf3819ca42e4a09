import type { CasualtyPump, PumpSetting } from "#readiness";
import { refuelPump, setPump } from "#station";
import { Button, Timestamp } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { useAsk } from "../../worker/index.ts";
import { PickRow } from "./pick-row.tsx";
import { figuresOf, liftPicks, otherFlowPicks, THROTTLES, USUAL_LIFT } from "./pump-figures.ts";
import { minutesPastFuel, sayPastFuel } from "./pump-fuel.ts";
import { sayFlow } from "./say.ts";
import { useIntoView } from "./use-into-view.ts";
import { useMinute } from "./use-minute.ts";
import { useSettled } from "./use-settled.ts";
import { useSheet } from "./use-sheet.ts";

interface PumpRowProps {
  readonly pump: CasualtyPump;
  /** Just put on her: what comes next is its own button, so it is brought into view. */
  readonly isNew: boolean;
}

/** One pump: going or not, in a word, and the buttons to change that. None while fuel is smelt: nothing starts then. */
export function PumpRow({ pump, isNew }: PumpRowProps) {
  const { casualty } = useSheet();
  const place = useIntoView<HTMLElement>(isNew);
  return (
    <section ref={place} tabIndex={-1} className="pump" aria-label={pump.name}>
      <PumpHead pump={pump} />
      {!casualty.fuelSmelt && <PumpButtons pump={pump} />}
    </section>
  );
}

function PumpHead({ pump }: { readonly pump: CasualtyPump }) {
  const { units } = usePreferences();
  const past = minutesPastFuel(pump, useMinute());
  const since = pump.runs.at(-1);
  return (
    <p className="pump-head">
      <PumpShape running={pump.running} />
      <strong>{pump.name}</strong>
      {past > 0 && <strong className="pump-past">{sayPastFuel(past)}</strong>}
      <span>
        {past > 0 && "By the log "}
        {pump.running ? `pumping, about ${sayFlow(pump.flow, units)}` : "off"}
        {since && (
          <>
            {" since "}
            <Timestamp at={pump.running ? since.from : (since.to ?? since.from)} as="time" />
          </>
        )}
      </span>
    </p>
  );
}

/** Each button keeps its place whether the pump runs or not, so that no tap does the opposite of the one before. */
function PumpButtons({ pump }: { readonly pump: CasualtyPump }) {
  const { isBusy } = useSheet();
  const isSettled = useSettled(String(pump.running));
  const { change, refuel } = useSetting(pump);
  const { running } = pump;
  const set = (to: boolean) => change({ running: to });
  return (
    <>
      <div className="pump-buttons">
        <Button kind="primary" isBusy={isBusy} isDisabled={running || !isSettled} onPress={() => set(true)}>
          Water comes: pumping
        </Button>
        <Button isBusy={isBusy} isDisabled={!running || !isSettled} onPress={() => set(false)}>
          Stopped
        </Button>
        {pump.runtime !== undefined && (
          <Button isBusy={isBusy} isDisabled={!isSettled} onPress={refuel}>
            Refuelled
          </Button>
        )}
      </div>
      <Settings pump={pump} onChange={change} />
    </>
  );
}

type Change = Partial<Pick<PumpSetting, "running" | "lift" | "throttle" | "flow">>;

/** Writes a change of a pump; what a kit moves is computed for its new setting first. */
function useSetting(pump: CasualtyPump) {
  const { view, write, run } = useSheet();
  const ask = useAsk();
  const pattern = view.kits.find(({ id }) => id === pump.kit)?.pattern.split("@", 1)[0];
  const change = (part: Change) =>
    void run(async () => {
      const { runs: _runs, filled: _filled, ...setting } = pump;
      const next = { ...setting, ...part };
      const at = { lift: next.lift ?? USUAL_LIFT, throttle: next.throttle ?? 1 };
      const isSet = part.lift !== undefined || part.throttle !== undefined;
      const figures = pattern !== undefined && isSet ? await figuresOf(ask, pattern, at) : {};
      await write(sayChange(pump, part), (doing, now) => setPump(doing, now, { ...next, ...figures }));
    });
  const refuel = () => void write(`${pump.name} refuelled`, (doing, now) => refuelPump(doing, now, pump.pump));
  return { change, refuel };
}

function sayChange(pump: CasualtyPump, { running }: Change): string {
  if (running === undefined) return `${pump.name} set anew`;
  return `${pump.name} ${running ? "pumping" : "stopped"}`;
}

function Settings({ pump, onChange }: { readonly pump: CasualtyPump; readonly onChange: (part: Change) => void }) {
  const { units } = usePreferences();
  if (pump.kit === undefined) {
    const flows = otherFlowPicks(units);
    const picked = flows.find(({ si }) => Math.abs(si - pump.flow) < 1e-6)?.id;
    const set = (id: string) => onChange({ flow: flows.find((one) => one.id === id)?.si ?? pump.flow });
    return <PickRow label="Moves about" options={flows} picked={picked} onPick={set} />;
  }
  const throttle = THROTTLES.find(({ ratio }) => ratio === (pump.throttle ?? 1))?.id;
  const lifts = liftPicks(units);
  const lift = lifts.find(({ si }) => si === (pump.lift ?? USUAL_LIFT))?.id;
  return (
    <>
      <PickRow
        label="Throttle"
        options={THROTTLES}
        picked={throttle}
        onPick={(id) => onChange({ throttle: THROTTLES.find((one) => one.id === id)!.ratio })}
      />
      <PickRow
        label="Lift, water to pump"
        options={lifts}
        picked={lift}
        onPick={(id) => onChange({ lift: lifts.find((one) => one.id === id)!.si })}
      />
    </>
  );
}

/** A jet while it pumps, a barred ring while it does not. */
function PumpShape({ running }: { readonly running: boolean }) {
  return (
    <svg className="pump-shape" viewBox="0 0 24 24" aria-hidden="true" fill="none" stroke="currentColor">
      {running ? (
        <path d="M2 9h9c7 0 10 4 10 12M2 15h7c4 0 6 2 6 6" strokeWidth="3" />
      ) : (
        <path d="M12 3a9 9 0 1 0 .01 0zM6 18 18 6" strokeWidth="2.5" />
      )}
    </svg>
  );
}
