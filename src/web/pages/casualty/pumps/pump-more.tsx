import { useWords } from "#web/language/index.ts";
import type { CautionId } from "#base";
import type { CasualtyPump } from "#readiness";
import { Button } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { Hazards } from "../hazards/hazards.tsx";
import { hazardsAt } from "../hazards/moments.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { USUAL_LIFT } from "#questions";
import { liftPicks, otherFlowPicks, THROTTLES } from "./pump-figures.ts";
import { useSettled } from "../sheet/use-settled.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { driveOf } from "./drive.ts";
import { FaultLink } from "./fault-link.tsx";
import { hazardsLeft, isFaultNear, signOf } from "./pump-state.ts";
import { StartTold } from "./start-told.tsx";
import type { PumpActs } from "./use-pump-acts.ts";
import { WhenPicker } from "./when-picker.tsx";

interface PumpMoreProps {
  readonly pump: CasualtyPump;
  /** Hazards that the pumps above it show already. */
  readonly above: readonly CautionId[];
  readonly acts: PumpActs;
  readonly ago: number;
  readonly onAgo: (ago: number) => void;
}

/** What is wrong with a pump, how it is set, and when that was where it is written down late. */
export function PumpMore({ pump, above, acts, ago, onAgo }: PumpMoreProps) {
  const words = useWords("sheetPumps");
  const { casualty, view, isBusy } = useSheet();
  const isSettled = useSettled();
  const ofStart = hazardsAt({ kind: "start", drive: driveOf(view, pump.kit) });
  return (
    <>
      <SignButtons pump={pump} acts={acts} />
      {!isFaultNear(pump, signOf(casualty, pump)?.sign) && <FaultLink pump={pump} />}
      {pump.runtime !== undefined && (
        <Button wide isBusy={isBusy} isDisabled={!isSettled} onPress={acts.refuel}>
          {words.refuelled()}
        </Button>
      )}
      <WhenPicker ago={ago} onAgo={onAgo} />
      <Settings pump={pump} onChange={acts.change} />
      {pump.kit !== undefined && <StartTold pump={pump} hasCord={driveOf(view, pump.kit) === "engine"} />}
      <Hazards fresh={[]} met={hazardsLeft(pump, ofStart, above)} />
    </>
  );
}

const SIGNS = [
  { sign: "no-water", says: "noWater" },
  { sign: "sucks-air", says: "sucksAir" },
  { sign: "weak", says: "weak" },
  { sign: "wont-start", says: "wontStart" },
] as const;

/** The sign that stands is taken off by a tap on it. */
function SignButtons({ pump, acts }: Pick<PumpMoreProps, "pump" | "acts">) {
  const words = useWords("sheetPumps");
  const { casualty, isBusy } = useSheet();
  const isSettled = useSettled();
  const stands = signOf(casualty, pump);
  return (
    <div className="pump-signs">
      {SIGNS.map(({ sign, says }) => (
        <button
          key={sign}
          type="button"
          className="pick"
          aria-pressed={sign === stands?.sign}
          disabled={isBusy || !isSettled || (sign === "wont-start" && pump.running)}
          onClick={() => (sign === stands?.sign ? acts.takeOff(stands) : acts.see(sign))}
        >
          {words[says]()}
        </button>
      ))}
    </div>
  );
}

interface SettingsProps {
  readonly pump: CasualtyPump;
  readonly onChange: PumpActs["change"];
}

function Settings({ pump, onChange }: SettingsProps) {
  const words = useWords("sheetPumps");
  const { units } = usePreferences();
  if (pump.kit === undefined) return <OtherFlow pump={pump} onChange={onChange} />;
  const throttle = THROTTLES.find(({ ratio }) => ratio === (pump.throttle ?? 1))?.id;
  const lifts = liftPicks(units);
  const lift = lifts.find(({ si }) => si === (pump.lift ?? USUAL_LIFT))?.id;
  return (
    <>
      <PickRow
        label={words.throttle()}
        options={THROTTLES.map(({ id }) => ({ id, words: words[id]() }))}
        picked={throttle}
        onPick={(id) => onChange({ throttle: THROTTLES.find((one) => one.id === id)!.ratio })}
      />
      <PickRow
        label={words.lift()}
        options={lifts}
        picked={lift}
        onPick={(id) => onChange({ lift: lifts.find((one) => one.id === id)!.si })}
      />
    </>
  );
}

function OtherFlow({ pump, onChange }: SettingsProps) {
  const words = useWords("sheetPumps");
  const { units } = usePreferences();
  const flows = otherFlowPicks(units);
  const picked = flows.find(({ si }) => Math.abs(si - pump.flow) < 1e-6)?.id;
  const set = (id: string) => onChange({ flow: flows.find((one) => one.id === id)?.si ?? pump.flow });
  return <PickRow label={words.movesAbout()} options={flows} picked={picked} onPick={set} />;
}
