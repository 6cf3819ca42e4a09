import { sayDuration, sayLevel, type Words } from "#words";
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
  readonly words: Words["calls"];
}

/** Time to sound a space; the answer leads to where it is written down, from whatever page. */
export function SoundCall({ due, casualty, now, words }: CallProps) {
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
    <AlarmCall
      caller={words.caller({ casualty: casualty.name })}
      title={sayPlace(due, words)}
      face={sayOver(due, now, words)}
    >
      {last && <p>{words.last({ level: sayLevel(last.level, units), time: sayClock(Date.parse(last.at)) })}</p>}
      <GloveRow>
        <Button kind="primary" wide onPress={answer}>
          {words.soundNow()}
        </Button>
        <InAMinute due={due} now={now} words={words} />
      </GloveRow>
    </AlarmCall>
  );
}

/** Time to refuel a pump; what stands against writing it down is said here, and the alarm goes on. */
export function RefuelCall({ due, casualty, now, words }: CallProps) {
  const carryOut = useCarryOut();
  const { me } = useStation();
  const { isBusy, error, run } = useDoing();
  const { pump, name } = due.task.kind === "refuel" ? due.task : { pump: "", name: "" };
  const refuelled = () => void run(() => carryOut((doing) => refuelPump(doing, casualty, pump)));
  return (
    <AlarmCall
      caller={words.caller({ casualty: casualty.name })}
      title={words.refuelFirst({ pump: name })}
      face={sayOver(due, now, words)}
    >
      <Cautions ids={["refuel-stopped-and-cool"]} />
      <ErrorBox error={error} title={words.notWritten()} />
      <GloveRow>
        {mayWrite(me.role, "pump-refuelled") && (
          <Button kind="primary" wide isBusy={isBusy} onPress={refuelled}>
            {words.refuelled()}
          </Button>
        )}
        <InAMinute due={due} now={now} words={words} />
        <Button wide onPress={() => silencedAlarms.add(due.key)}>
          {words.stopAlarmOnly()}
        </Button>
      </GloveRow>
    </AlarmCall>
  );
}

/** A hand is on a pump: it calls again in a minute. */
function InAMinute({ due, now, words }: Omit<CallProps, "casualty">) {
  return (
    <Button wide onPress={() => putOff(due.key, now)}>
      {words.inAMinute()}
    </Button>
  );
}

function sayPlace({ task: { name } }: Due, words: Words["calls"]): string {
  return name === undefined ? words.sound() : words.soundSpace({ space: name });
}

function sayOver({ at }: Due, now: number, words: Words["calls"]): string {
  return now - at < 60_000 ? words.now() : words.over({ duration: sayDuration((now - at) / 1000, "face") });
}
