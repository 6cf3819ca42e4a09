import { FIRST_IDLE, IDLE_MINUTES, idleShelf, useStation, type IdleMinutes } from "../../device/index.ts";
import { Notice } from "../../parts/index.ts";
import { Choice } from "../../parts/fields/choice.tsx";
import { useWatched } from "../../watched/index.ts";

/** When a device with a lock locks itself, and whether work that is open holds it off. */
export function LockIdle() {
  const { minutes, always } = useWatched(idleShelf);
  const { casualties } = useStation();
  const isHeldOpen = minutes !== 0 && !always && casualties.some(({ closed }) => closed === undefined);
  return (
    <>
      <Choice
        label="Locks itself when nobody has touched it for"
        hint="On this device. What is being written is kept, and goes on where it was left."
        value={String(minutes)}
        onChange={(chosen) => idleShelf.choose({ minutes: Number(chosen) as IdleMinutes })}
        options={IDLE_MINUTES.map((one) => ({ value: String(one), label: sayIdle(one), ...noteOn(one) }))}
      />
      {minutes !== 0 && (
        <Choice
          label="While a casualty sheet is open, or a clock of a turnaround runs here"
          value={always ? "lock" : "stay"}
          onChange={(chosen) => idleShelf.choose({ always: chosen === "lock" })}
          options={[
            { value: "stay", label: "Stay open", note: "Nobody types a PIN with a boat sinking" },
            { value: "lock", label: "Lock all the same", note: "Alarms sound, and say what it is once opened" },
          ]}
        />
      )}
      {isHeldOpen && <Notice title="A casualty sheet is open: this device does not lock itself now" />}
    </>
  );
}

function sayIdle(minutes: IdleMinutes): string {
  if (minutes === 0) return "It does not lock itself";
  return minutes === 60 ? "1 hour" : `${minutes} minutes`;
}

function noteOn(minutes: IdleMinutes) {
  return minutes === FIRST_IDLE.minutes ? { note: "As it comes" } : {};
}
