import { sayDuration, sayLevel } from "#words";
import type { CasualtyState } from "#readiness";
import { mayWrite, refuelPump } from "#station";
import { useLocation } from "wouter";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ErrorBox, GloveRow, useDoing } from "#web/parts/index.ts";
import { Cautions } from "#web/parts/caution-box.tsx";
import { AlarmCall } from "#web/timing/alarm-call.tsx";
import { usePreferences } from "#web/theme/index.ts";
import { lastSounding } from "../soundings/freshness.ts";
import { sayClock } from "../sheet/say.ts";
import { showSounding, soundingPath } from "../soundings/sounding-place.ts";
import type { Due } from "./due.ts";
import { putOff } from "./put-off.ts";
import { silencedAlarms } from "./silenced.ts";

interface CallProps {
  readonly due: Due;
  readonly casualty: CasualtyState;
  /** [ms] */
  readonly now: number;
}

/** Time to sound a space; the answer leads to where it is written down, from whatever page. */
export function SoundCall({ due, casualty, now }: CallProps) {
  const { units } = usePreferences();
  const [, navigate] = useLocation();
  const space = due.task.kind === "sound" ? due.task.space : "";
  const last = lastSounding(casualty, space);
  const answer = () => {
    silencedAlarms.add(due.key);
    navigate(soundingPath(casualty.id, space));
    showSounding();
  };
  return (
    <AlarmCall caller={sayCaller(casualty)} title={sayPlace(casualty, space)} face={sayOver(due, now)}>
      {last && (
        <p>
          Last: {sayLevel(last.level, units)} at {sayClock(Date.parse(last.at))}. Same mark, same stick.
        </p>
      )}
      <GloveRow>
        <Button kind="primary" wide onPress={answer}>
          Sound now
        </Button>
        <InAMinute due={due} now={now} />
      </GloveRow>
    </AlarmCall>
  );
}

/** Time to refuel a pump; what stands against writing it down is said here, and the alarm goes on. */
export function RefuelCall({ due, casualty, now }: CallProps) {
  const carryOut = useCarryOut();
  const { me } = useStation();
  const { isBusy, error, run } = useDoing();
  const pump = due.task.kind === "refuel" ? due.task.pump : "";
  const refuelled = () => void run(() => carryOut((doing) => refuelPump(doing, casualty, pump)));
  return (
    <AlarmCall caller={sayCaller(casualty)} title={`${due.words}: stop the engine first`} face={sayOver(due, now)}>
      <Cautions ids={["refuel-stopped-and-cool"]} />
      <ErrorBox error={error} title="Not written down" />
      <GloveRow>
        {mayWrite(me.role, "pump-refuelled") && (
          <Button kind="primary" wide isBusy={isBusy} onPress={refuelled}>
            Refuelled
          </Button>
        )}
        <InAMinute due={due} now={now} />
        <Button wide onPress={() => silencedAlarms.add(due.key)}>
          Stop the alarm only
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}

/** A hand is on a pump: it calls again in a minute. */
function InAMinute({ due, now }: Pick<CallProps, "due" | "now">) {
  return (
    <Button wide onPress={() => putOff(due.key, now)}>
      In a minute
    </Button>
  );
}

/** Which sheet of which boat calls. */
function sayCaller({ name }: CasualtyState): string {
  return `Casualty sheet: ${name}`;
}

function sayPlace({ spaces }: CasualtyState, space: string): string {
  const found = spaces.length > 1 ? spaces.find(({ id }) => id === space) : undefined;
  return found ? `Sound the water: ${found.name}` : "Sound the water";
}

function sayOver({ at }: Due, now: number): string {
  return now - at < 60_000 ? "now" : `${sayDuration((now - at) / 1000, "face")} over`;
}
