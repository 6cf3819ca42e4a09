import { useWords } from "#web/language/index.ts";
import type { CautionId } from "#base";
import type { CasualtyPump } from "#readiness";
import { useState } from "react";
import { Button } from "#web/parts/index.ts";
import { HazardsNow } from "../hazards/hazards-now.tsx";
import { useIntoView } from "../sheet/use-into-view.ts";
import { useSettled } from "../sheet/use-settled.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { driveOf } from "./drive.ts";
import { PumpHead, PumpLook, type PumpBelieved } from "./pump-head.tsx";
import { PumpMore } from "./pump-more.tsx";
import { FaultLink } from "./fault-link.tsx";
import { isAmiss, isFaultNear, isStartNear, signOf } from "./pump-state.ts";
import { usePumpActs } from "./use-pump-acts.ts";

interface PumpRowProps {
  readonly pump: CasualtyPump;
  /** What it is thought to move now; nothing where nobody can say. */
  readonly believed: PumpBelieved | undefined;
  /** Hazards that the pumps above it show already. */
  readonly above: readonly CautionId[];
  /** Just put on her: what comes next is its own button, so it is brought into view. */
  readonly isNew: boolean;
}

/**
 * One pump: going or not, in a word, and the buttons to change that. None while fuel is smelt: nothing starts then. One
 * that stopped shows the hazards of a start again, in a line, where no pump above does.
 */
export function PumpRow({ pump, believed, above, isNew }: PumpRowProps) {
  const { casualty, view } = useSheet();
  const place = useIntoView<HTMLElement>(isNew);
  const isClear = casualty.fuelSmelt === undefined;
  const sign = signOf(casualty, pump)?.sign;
  return (
    <section ref={place} tabIndex={-1} className="pump" aria-label={pump.name}>
      <PumpHead pump={pump} believed={believed} sign={sign} />
      {isClear && <PumpButtons pump={pump} above={above} />}
      {isClear && <PumpLook pump={pump} believed={believed} sign={sign} />}
      {isClear && isFaultNear(pump, sign) && <FaultLink pump={pump} />}
      {isClear && isStartNear(pump, above) && (
        <HazardsNow moment={{ kind: "start", drive: driveOf(view, pump.kit) }} above={above} />
      )}
    </section>
  );
}

/** Each button keeps its place whether the pump runs or not, so that no tap does the opposite of the one before. */
function PumpButtons({ pump, above }: Pick<PumpRowProps, "pump" | "above">) {
  const words = useWords("sheetPumps");
  const { casualty, isBusy } = useSheet();
  const isSettled = useSettled(String(pump.running));
  const [isOpen, setOpen] = useState(false);
  const [ago, setAgo] = useState(0);
  const acts = usePumpActs(pump, ago, () => setAgo(0));
  const { running } = pump;
  const waits = running && isAmiss(signOf(casualty, pump)?.sign);
  return (
    <>
      <div className="pump-buttons">
        <Button kind="primary" isBusy={isBusy} isDisabled={(running && !waits) || !isSettled} onPress={acts.waterComes}>
          {words.waterComes()}
        </Button>
        <Button isBusy={isBusy} isDisabled={!running || !isSettled} onPress={() => acts.change({ running: false })}>
          {words.stopped()}
        </Button>
        <Button isOpen={isOpen} onPress={() => setOpen(!isOpen)}>
          {isOpen ? words.less() : words.trouble()}
        </Button>
      </div>
      {isOpen && <PumpMore pump={pump} above={above} acts={acts} ago={ago} onAgo={setAgo} />}
    </>
  );
}
