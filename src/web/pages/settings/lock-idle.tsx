import { useState } from "react";
import {
  FIRST_IDLE,
  IDLE_MINUTES,
  idleShelf,
  isLooser,
  useStation,
  type IdleChoice,
  type IdleMinutes,
} from "#web/device/index.ts";
import { Notice } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { LockLoosen } from "./lock-loosen.tsx";
import { useWatched } from "#web/watched/index.ts";

/** When a device with a lock locks itself, and whether work that is open holds it off. */
export function LockIdle() {
  const now = useWatched(idleShelf);
  const [wanted, setWanted] = useState<IdleChoice>();
  const { minutes, always } = wanted ?? now;
  const choose = (part: Partial<IdleChoice>) => {
    const next = { ...now, ...part };
    setWanted(isLooser(now, next) ? next : undefined);
    if (!isLooser(now, next)) idleShelf.choose(part);
  };
  const { casualties } = useStation();
  const isHeldOpen = now.minutes !== 0 && !now.always && casualties.some(({ closed }) => closed === undefined);
  return (
    <>
      <Choice
        label="Locks itself when nobody has touched it for"
        hint="On this device. What is being written is kept, and goes on where it was left."
        value={String(minutes)}
        onChange={(chosen) => choose({ minutes: Number(chosen) as IdleMinutes })}
        options={IDLE_MINUTES.map((one) => ({ value: String(one), label: sayIdle(one), ...noteOn(one) }))}
      />
      {wanted && wanted.minutes !== now.minutes && (
        <Proof now={now} wanted={wanted} onEnd={() => setWanted(undefined)} />
      )}
      {minutes !== 0 && (
        <Choice
          label="While a casualty sheet is open, or a clock of a turnaround runs here"
          value={always ? "lock" : "stay"}
          onChange={(chosen) => choose({ always: chosen === "lock" })}
          options={[
            { value: "stay", label: "Stay open", note: "Nobody types a PIN with a boat sinking" },
            { value: "lock", label: "Lock all the same", note: "Alarms sound, and say what it is once opened" },
          ]}
        />
      )}
      {wanted && wanted.minutes === now.minutes && (
        <Proof now={now} wanted={wanted} onEnd={() => setWanted(undefined)} />
      )}
      {isHeldOpen && <Notice title="A casualty sheet is open: this device does not lock itself now" />}
    </>
  );
}

interface ProofProps {
  readonly now: IdleChoice;
  readonly wanted: IdleChoice;
  readonly onEnd: () => void;
}

function Proof({ now, wanted, onEnd }: ProofProps) {
  const onProved = () => {
    idleShelf.choose(wanted);
    onEnd();
  };
  return <LockLoosen words={sayWanted(now, wanted)} onProved={onProved} onLeave={onEnd} />;
}

function sayWanted(now: IdleChoice, { minutes }: IdleChoice): string {
  if (minutes === now.minutes) return "stay open meanwhile";
  return minutes === 0 ? "never lock by itself" : `lock after ${sayIdle(minutes)}`;
}

function sayIdle(minutes: IdleMinutes): string {
  if (minutes === 0) return "It does not lock itself";
  return minutes === 60 ? "1 hour" : `${minutes} minutes`;
}

function noteOn(minutes: IdleMinutes) {
  return minutes === FIRST_IDLE.minutes ? { note: "As set at first" } : {};
}
