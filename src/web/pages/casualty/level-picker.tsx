import { useId, useState } from "react";
import { usePreferences } from "../../theme/index.ts";
import { levelFault, levelSteps, readLevel, sayTyped, stepLevel } from "./level-steps.ts";
import { levelUnit } from "./say.ts";

interface LevelPickerProps {
  readonly level: number | undefined;
  /** Where the first tap starts from; the lowest point where nothing was sounded yet. */
  readonly last: number | undefined;
  readonly onLevel: (level: number | undefined) => void;
}

/** A level by taps from the last one, or typed. */
export function LevelPicker({ level, last, onLevel }: LevelPickerProps) {
  const { units } = usePreferences();
  const [less, more] = [levelSteps(units).slice(0, 2), levelSteps(units).slice(2)];
  const step = (by: number) => onLevel(stepLevel(level ?? last ?? 0, by, units));
  return (
    <div className="sound-steps">
      {less.map((by) => (
        <StepButton key={by} by={by} onPress={() => step(by)} />
      ))}
      <TypedLevel level={level} onLevel={onLevel} />
      {more.map((by) => (
        <StepButton key={by} by={by} onPress={() => step(by)} />
      ))}
      {/* There before anything was sounded too: it must not come under the finger that has just written a level. */}
      <button type="button" className="pick sound-same" disabled={last === undefined} onClick={() => onLevel(last)}>
        Same as last
      </button>
    </div>
  );
}

function StepButton({ by, onPress }: { readonly by: number; readonly onPress: () => void }) {
  const { symbol } = levelUnit(usePreferences().units);
  const words = `${by < 0 ? "Lower" : "Higher"} by ${Math.abs(by)} ${symbol}`;
  return (
    <button type="button" className="pick sound-step" aria-label={words} onClick={onPress}>
      {by < 0 ? "\u2212" : "+"}
      {Math.abs(by)}
    </button>
  );
}

/** Typed in the unit shown; the text stays as typed, so that "12." on the way to "12.5" does not lose its point. */
function TypedLevel({ level, onLevel }: Pick<LevelPickerProps, "level" | "onLevel">) {
  const { units } = usePreferences();
  const unit = levelUnit(units);
  const faultId = useId();
  const [text, setText] = useState("");
  const stands = readLevel(text, units);
  const type = (next: string) => {
    setText(next);
    onLevel(readLevel(next, units));
  };
  const shown = stands === level ? text : sayTyped(level, units);
  const fault = levelFault(shown, units);
  return (
    <>
      <label className="sound-level">
        <span className="for-readers-only">Level in {unit.symbol}</span>
        <input
          className="field-input"
          inputMode="decimal"
          autoComplete="off"
          maxLength={9}
          value={shown}
          onChange={(event) => type(event.target.value)}
          aria-describedby={faultId}
          {...(fault !== undefined && { "aria-invalid": true })}
        />
        <span>{unit.symbol}</span>
      </label>
      <div className="sound-fault" id={faultId} aria-live="polite">
        {fault !== undefined && <p className="field-fault">{fault}</p>}
      </div>
    </>
  );
}
