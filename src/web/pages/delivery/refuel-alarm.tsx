import { sayDuration } from "#words";
import { Button, GloveRow } from "#web/parts/index.ts";
import { Cautions } from "#web/parts/caution-box.tsx";
import { AlarmCall } from "#web/timing/alarm-call.tsx";
import { useArming, useNow } from "#web/timing/index.ts";
import { callingRefuel, refuelInstant, refuels, type Refuel } from "./refuel.ts";

/** Watches the reminders by the wall clock and calls over whatever page is shown. */
export default function RefuelAlarm({ kept }: { readonly kept: readonly Refuel[] }) {
  const now = useNow(true);
  useArming();
  const calling = callingRefuel(kept, now);
  return calling ? <Call key={calling.kit} refuel={calling} now={now} /> : null;
}

function Call({ refuel, now }: { readonly refuel: Refuel; readonly now: number }) {
  const over = (now - refuelInstant(refuel)) / 1000;
  return (
    <AlarmCall
      title={`${refuel.name}: stop the engine and refuel`}
      face={over < 60 ? "now" : `${sayDuration(over, "face")} over`}
    >
      <Cautions ids={["refuel-stopped-and-cool"]} />
      <GloveRow>
        <Button kind="primary" wide onPress={() => refuels.answer(refuel.kit)}>
          Stop the alarm
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}
