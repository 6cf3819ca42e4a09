import { useWords } from "#web/language/index.ts";
import type { CautionId } from "#base";
import type { KitState } from "#readiness";
import { setPump } from "#station";
import { Button } from "#web/parts/index.ts";
import { useAsk } from "#web/worker/index.ts";
import { HazardsNow } from "../hazards/hazards-now.tsx";
import { USUAL_LIFT } from "#questions";
import { figuresOf } from "./pump-figures.ts";
import { useSettled } from "../sheet/use-settled.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import { driveOf } from "./drive.ts";

interface AboardRowProps {
  readonly kit: KitState;
  /** Hazards that the pumps above it show already. */
  readonly above: readonly CautionId[];
}

/** A kit that was handed over to her and is not on the sheet yet: what it is there for is to be started. */
export function AboardRow({ kit, above }: AboardRowProps) {
  const words = useWords("sheetPumps");
  const { view, isBusy } = useSheet();
  const isSettled = useSettled();
  const put = usePutting(kit);
  return (
    <section className="pump" aria-label={kit.name}>
      <div className="pump-head">
        <strong>{kit.name}</strong> <span>{words.notStarted()}</span>
      </div>
      <div className="pump-buttons">
        <Button kind="primary" isBusy={isBusy} isDisabled={!isSettled} onPress={() => void put(true)}>
          {words.waterComes()}
        </Button>
        <Button isBusy={isBusy} isDisabled={!isSettled} onPress={() => void put(false)}>
          {words.notYet()}
        </Button>
      </div>
      <HazardsNow moment={{ kind: "start", drive: driveOf(view, kit.id) }} above={above} />
    </section>
  );
}

/** Puts a kit on the sheet, going or not, with what it moves from her deck. */
export function usePutting(kit: KitState): (running: boolean) => Promise<boolean> {
  const words = useWords("sheetPumps");
  const { space, run, write } = useSheet();
  const ask = useAsk();
  return async (running) =>
    run(async () => {
      const pattern = kit.pattern.split("@", 1)[0] ?? kit.pattern;
      const figures = await figuresOf(ask, pattern, { lift: USUAL_LIFT, throttle: 1 });
      const setting = { pump: kit.id, kit: kit.id, name: kit.name, space, running, ...figures };
      const wrote = running ? words.wrotePumping({ pump: kit.name }) : words.wroteOnHer({ pump: kit.name });
      await write(wrote, (doing, now) => setPump(doing, now, setting));
    });
}
