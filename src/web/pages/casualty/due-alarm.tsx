import { refuelPump } from "#station";
import { Button, Cautions, GloveRow, sayElapsed } from "../../parts/index.ts";
import { AlarmCall, useArming, useWakeLock } from "../../timing/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { callingOf, type Due } from "./due.ts";
import { lastSounding } from "./freshness.ts";
import { sayClock, sayLevel } from "./say.ts";
import { silencedAlarms, useSilenced } from "./silenced.ts";
import { SOUNDING_PLACE } from "./sound-now.tsx";
import { useDues } from "./use-dues.ts";
import type { Scene } from "./use-scene.ts";
import { useSheet } from "./use-sheet.ts";

/** Calls over the whole screen when a sounding is due or a tank about to run dry; not while a level is being entered. */
export function DueAlarm({ scene }: { readonly scene: Scene }) {
  const { level } = useSheet();
  const { dues, now } = useDues(scene);
  const silenced = useSilenced();
  const wake = useWakeLock(dues.length > 0);
  useArming();
  const calling = level === undefined ? callingOf(dues, silenced, now) : undefined;
  return (
    <>
      {wake === "refused" && (
        <p className="quiet">This screen may go dark: the clocks go on, but cannot call. Set a watch too.</p>
      )}
      {calling &&
        (calling.pump === undefined ? <SoundCall due={calling} now={now} /> : <RefuelCall due={calling} now={now} />)}
    </>
  );
}

interface CallProps {
  readonly due: Due;
  readonly now: number;
}

function SoundCall({ due, now }: CallProps) {
  const { casualty, space } = useSheet();
  const { units } = usePreferences();
  const last = lastSounding(casualty, space);
  const answer = () => {
    silencedAlarms.silence(due.key);
    document.getElementById(SOUNDING_PLACE)?.scrollIntoView({ block: "center" });
  };
  return (
    <AlarmCall title="Sound the water" face={sayOver(due, now)}>
      {last && (
        <p>
          Last: {sayLevel(last.level, units)} at {sayClock(Date.parse(last.at))}. Same mark, same stick.
        </p>
      )}
      <GloveRow>
        <Button kind="primary" wide onPress={answer}>
          Stop the alarm, sound now
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}

function RefuelCall({ due, now }: CallProps) {
  const { write } = useSheet();
  const silence = () => silencedAlarms.silence(due.key);
  const refuelled = () => {
    silence();
    void write(`${due.words}: done`, (doing, casualty) => refuelPump(doing, casualty, due.pump ?? ""));
  };
  return (
    <AlarmCall title={`${due.words}: stop the engine first`} face={sayOver(due, now)}>
      <Cautions ids={["refuel-stopped-and-cool"]} />
      <GloveRow>
        <Button kind="primary" wide onPress={refuelled}>
          Refuelled
        </Button>
        <Button wide onPress={silence}>
          Stop the alarm only
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}

function sayOver({ at }: Due, now: number): string {
  return now - at < 60_000 ? "now" : `${sayElapsed((now - at) / 1000)} over`;
}
