import { useWords } from "#web/language/index.ts";
import { sayDuration, type Words } from "#words";
import { Button, GloveRow } from "#web/parts/index.ts";
import { Cautions } from "#web/parts/caution-box.tsx";
import { AlarmCall } from "#web/timing/alarm-call.tsx";
import { useArming, useNow } from "#web/timing/index.ts";
import { callingRefuel, refuelInstant, refuels, type Refuel } from "./refuel.ts";

/** Watches the reminders by the wall clock and calls over whatever page is shown. */
export default function RefuelAlarm({ kept }: { readonly kept: readonly Refuel[] }) {
  const words = useWords("calls");
  const now = useNow(true);
  useArming();
  const calling = callingRefuel(kept, now);
  return calling ? <Call key={calling.kit} refuel={calling} now={now} words={words} /> : null;
}

interface CallProps {
  readonly refuel: Refuel;
  /** [ms] */
  readonly now: number;
  /** Here since the reminder was set: what calls must not wait for its words. */
  readonly words: Words["calls"];
}

function Call({ refuel, now, words }: CallProps) {
  const over = (now - refuelInstant(refuel)) / 1000;
  return (
    <AlarmCall
      title={words.stopAndRefuel({ pump: refuel.name })}
      face={over < 60 ? words.now() : words.over({ duration: sayDuration(over, "face") })}
    >
      <Cautions ids={["refuel-stopped-and-cool"]} />
      <GloveRow>
        <Button kind="primary" wide onPress={() => refuels.answer(refuel.kit)}>
          {words.stopAlarm()}
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}
