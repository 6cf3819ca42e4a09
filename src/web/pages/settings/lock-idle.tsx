import type { Words } from "#words";
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
import { useWords } from "#web/language/index.ts";
import { Notice } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { LockLoosen, type Wanted } from "./lock-loosen.tsx";
import { useWatched } from "#web/watched/index.ts";

/** When a device with a lock locks itself, and whether work that is open holds it off. */
export function LockIdle() {
  const now = useWatched(idleShelf);
  const words = useWords("settingsLock");
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
        label={words.idle()}
        hint={words.idleHint()}
        value={String(minutes)}
        onChange={(chosen) => choose({ minutes: Number(chosen) as IdleMinutes })}
        options={IDLE_MINUTES.map((one) => ({ value: String(one), label: sayIdle(one, words), ...noteOn(one, words) }))}
      />
      {wanted && wanted.minutes !== now.minutes && (
        <Proof now={now} wanted={wanted} onEnd={() => setWanted(undefined)} />
      )}
      {minutes !== 0 && (
        <Choice
          label={words.whileOpen()}
          value={always ? "lock" : "stay"}
          onChange={(chosen) => choose({ always: chosen === "lock" })}
          options={[
            { value: "stay", label: words.stayOpen(), note: words.stayOpenNote() },
            { value: "lock", label: words.lockAllTheSame(), note: words.lockAllTheSameNote() },
          ]}
        />
      )}
      {wanted && wanted.minutes === now.minutes && (
        <Proof now={now} wanted={wanted} onEnd={() => setWanted(undefined)} />
      )}
      {isHeldOpen && <Notice title={words.heldOpen()} />}
    </>
  );
}

interface ProofProps {
  readonly now: IdleChoice;
  readonly wanted: IdleChoice;
  readonly onEnd: () => void;
}

function Proof({ now, wanted, onEnd }: ProofProps) {
  const words = useWords("settingsLock");
  const onProved = () => {
    idleShelf.choose(wanted);
    onEnd();
  };
  return <LockLoosen wanted={wantedOf(now, wanted, words)} onProved={onProved} onLeave={onEnd} />;
}

function wantedOf(now: IdleChoice, { minutes }: IdleChoice, words: Words["settingsLock"]): Wanted {
  const time = sayIdle(minutes, words);
  if (minutes === now.minutes) return { wanted: "stay", time };
  return { wanted: minutes === 0 ? "never" : "after", time };
}

function sayIdle(minutes: IdleMinutes, words: Words["settingsLock"]): string {
  if (minutes === 0) return words.idleNever();
  return minutes === 60 ? words.idleHour() : words.idleMinutes({ count: minutes });
}

function noteOn(minutes: IdleMinutes, words: Words["settingsLock"]) {
  return minutes === FIRST_IDLE.minutes ? { note: words.asAtFirst() } : {};
}
