import { useWords } from "#web/language/index.ts";
import { levelUnit } from "#words";
import { useId, useState } from "react";
import { usePreferences } from "#web/theme/index.ts";
import { KEYED_UNITS, levelFault, levelSteps, readLevel, sayTyped, stepLevel, withUnit } from "./level-steps.ts";

interface LevelPickerProps {
  readonly level: number | undefined;
  readonly onLevel: (level: number | undefined) => void;
}

interface LevelStepsProps extends LevelPickerProps {
  /** Where the first tap starts from; the lowest point where nothing was sounded yet. */
  readonly last: number | undefined;
}

/** A level by taps from the last one. A slip shows in the box and writes nothing. */
export function LevelSteps({ level, last, onLevel }: LevelStepsProps) {
  const { units } = usePreferences();
  const step = (by: number) => onLevel(stepLevel(level ?? last ?? 0, by, units));
  return (
    <div className="sound-steps">
      {levelSteps(units).map((by) => (
        <StepButton key={by} by={by} onPress={() => step(by)} />
      ))}
    </div>
  );
}

function StepButton({ by, onPress }: { readonly by: number; readonly onPress: () => void }) {
  const words = useWords("soundings");
  const { symbol } = levelUnit(usePreferences().units);
  const step = { amount: Math.abs(by), unit: symbol };
  return (
    <button
      type="button"
      className="pick sound-step"
      aria-label={by < 0 ? words.lowerBy(step) : words.higherBy(step)}
      onClick={onPress}
    >
      {by < 0 ? "\u2212" : "+"}
      {Math.abs(by)}
    </button>
  );
}

interface UnitKeysProps {
  readonly text: string;
  readonly onText: (text: string) => void;
}

/**
 * Keys for the units that a keypad of digits does not have, while a level is typed. Below what writes, so that nothing
 * moves under a finger; the field keeps the focus and the keypad stays.
 */
function UnitKeys({ text, onText }: UnitKeysProps) {
  const words = useWords("soundings");
  const { units } = usePreferences();
  return (
    <fieldset className="sound-units" aria-label={words.unitKeys()}>
      {KEYED_UNITS.map((unit) => {
        const next = withUnit(text, unit, units);
        return (
          <button
            key={unit}
            type="button"
            className="pick sound-unit"
            disabled={next === undefined}
            onMouseDown={(event) => event.preventDefault()}
            onClick={() => next !== undefined && onText(next)}
          >
            {unit}
          </button>
        );
      })}
    </fieldset>
  );
}

/** Characters: "10 ft 11 13/16 in" with blanks to spare. */
const LONGEST = 24;

/** Whether the text names its unit itself, or has begun to. */
function hasOwnUnit(text: string): boolean {
  return /[a-z'"\u2032\u2033]/i.test(text);
}

/** Typed in the unit shown; the text stays as typed, so that "12." on the way to "12.5" does not lose its point. */
export function TypedLevel({ level, onLevel }: LevelPickerProps) {
  const words = useWords("soundings");
  const { units } = usePreferences();
  const unit = levelUnit(units);
  const faultId = useId();
  const [text, setText] = useState("");
  const [isLeft, setIsLeft] = useState(false);
  const [isIn, setIsIn] = useState(false);
  const stands = readLevel(text, units);
  const type = (next: string) => {
    setText(next);
    setIsLeft(false);
    onLevel(readLevel(next, units));
  };
  const shown = stands === level ? text : sayTyped(level, units);
  const fault = levelFault(shown, units, words, isLeft);
  const ownUnit = hasOwnUnit(shown);
  return (
    <>
      <label className={ownUnit ? "sound-level sound-level-said" : "sound-level"}>
        <span className="for-readers-only">{words.levelIn({ unit: unit.symbol })}</span>
        <input
          className="field-input"
          inputMode="decimal"
          enterKeyHint="done"
          autoComplete="off"
          maxLength={LONGEST}
          value={shown}
          onChange={(event) => type(event.target.value)}
          onFocus={() => setIsIn(true)}
          onBlur={() => (setIsLeft(true), setIsIn(false))}
          aria-describedby={faultId}
          {...(fault !== undefined && { "aria-invalid": true })}
        />
        {!ownUnit && <span>{unit.symbol}</span>}
      </label>
      {(isIn || (shown !== "" && shown === text)) && <UnitKeys text={shown} onText={type} />}
      <div className="sound-fault" id={faultId} aria-live="polite">
        {fault !== undefined && <p className="field-fault">{fault}</p>}
      </div>
    </>
  );
}
