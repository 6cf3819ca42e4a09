import type { CasualtyState } from "#readiness";
import { mayWrite, refuelPump } from "#station";
import { useLocation } from "wouter";
import { useCarryOut, useStation } from "../../device/index.ts";
import { Button, Cautions, ErrorBox, GloveRow, sayElapsed, useDoing } from "../../parts/index.ts";
import { AlarmCall } from "../../timing/index.ts";
import { usePreferences } from "../../theme/index.ts";
import type { Due } from "./due.ts";
import { lastSounding } from "./freshness.ts";
import { sayClock, sayLevel } from "./say.ts";
import { silencedAlarms } from "./silenced.ts";
import { showSounding, soundingPath } from "./sounding-place.ts";

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
    silencedAlarms.silence(due.key);
    navigate(soundingPath(casualty.id, space));
    showSounding();
  };
  return (
    <AlarmCall title="Sound the water" face={sayOver(due, now)}>
      <p>{sayWhere(casualty, space)}</p>
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

/** Time to refuel a pump; what stands against writing it down is said here, and the alarm goes on. */
export function RefuelCall({ due, casualty, now }: CallProps) {
  const carryOut = useCarryOut();
  const { me } = useStation();
  const { isBusy, error, run } = useDoing();
  const pump = due.task.kind === "refuel" ? due.task.pump : "";
  const refuelled = () => void run(() => carryOut((doing) => refuelPump(doing, casualty, pump)));
  return (
    <AlarmCall title={`${due.words}: stop the engine first`} face={sayOver(due, now)}>
      <p>{casualty.name}</p>
      <Cautions ids={["refuel-stopped-and-cool"]} />
      <ErrorBox error={error} title="Not written down" />
      <GloveRow>
        {mayWrite(me.role, "pump-refuelled") && (
          <Button kind="primary" wide isBusy={isBusy} onPress={refuelled}>
            Refuelled
          </Button>
        )}
        <Button wide onPress={() => silencedAlarms.silence(due.key)}>
          Stop the alarm only
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}

function sayWhere({ name, spaces }: CasualtyState, space: string): string {
  const found = spaces.length > 1 ? spaces.find(({ id }) => id === space) : undefined;
  return found ? `${name}, ${found.name}` : name;
}

function sayOver({ at }: Due, now: number): string {
  return now - at < 60_000 ? "now" : `${sayElapsed((now - at) / 1000)} over`;
}
