import { useWords, withParts } from "#web/language/index.ts";
import { sayLevel } from "#words";
import { wrongLevel } from "#readiness";
import { takeSounding } from "#station";
import { useEffect, useState } from "react";
import { Button, Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { lastSounding } from "./freshness.ts";
import { Hazards } from "../hazards/hazards.tsx";
import { useHazards } from "../hazards/hazards-now.tsx";
import { LevelSteps, TypedLevel } from "./level-picker.tsx";
import { showSounding, SOUNDING_PLACE } from "./sounding-place.ts";
import { TakenPicker } from "./taken-picker.tsx";
import { levelInHand } from "./sounding-clocks.ts";
import { NOW, sayTaken, sayWritten, takenAt, type Taken } from "./taken.ts";
import { useMinute } from "#web/timing/use-minute.ts";
import { useSheet } from "../sheet/use-sheet.ts";
import "./sounding.css";

/** One sounding: the level at the mark by taps or typed, then one tap, or Enter, for "now". There is no default. */
export function SoundNow() {
  const words = useWords("soundings");
  const { casualty, space, level, setLevel } = useSheet();
  const { taken, isLate, setTaken, setLate, onWritten } = useWhen();
  useEffect(() => {
    if (location.hash === `#${SOUNDING_PLACE}`) showSounding();
  }, []);
  const save = useSaving(level, taken, () => (setLevel(undefined), onWritten()));
  const last = lastSounding(casualty, space)?.level;
  const isReady = level !== undefined && wrongLevel(casualty.boat, level) === undefined && taken !== undefined;
  return (
    <section className="sound" id={SOUNDING_PLACE} aria-label={words.sounding()}>
      <LastLevel isLate={isLate} onLate={setLate} />
      {isLate && <TakenPicker taken={taken} onTaken={setTaken} />}
      <form
        className="sound-form"
        onSubmit={(event) => {
          event.preventDefault();
          if (isReady) void save();
        }}
      >
        <LevelSteps level={level} last={last} onLevel={setLevel} />
        <div className="sound-write">
          <TypedLevel level={level} onLevel={setLevel} />
          <WriteButton taken={taken} isReady={isReady} />
        </div>
      </form>
      <WrongLevel />
      <SoundHazards isAtHand />
    </section>
  );
}

interface When {
  readonly taken: Taken | undefined;
  /** It is being said when the level was read. */
  readonly isLate: boolean;
}

const AT_ONCE: When = { taken: NOW, isLate: false };

/** When it was read. Whoever says so is at a sounding, and one read earlier may be the first of several from paper. */
function useWhen() {
  const [{ taken, isLate }, setWhen] = useState(AT_ONCE);
  const tap = (next: When) => {
    levelInHand.set(Date.now());
    setWhen(next);
  };
  const onWritten = () => {
    levelInHand.set(isLate ? Date.now() : undefined);
    setWhen(AT_ONCE);
  };
  return {
    taken,
    isLate,
    setTaken: (next: Taken | undefined) => tap({ taken: next, isLate }),
    setLate: (late: boolean) => tap({ taken: NOW, isLate: late }),
    onWritten,
  };
}

interface WriteButtonProps {
  readonly taken: Taken | undefined;
  readonly isReady: boolean;
}

function WriteButton({ taken, isReady }: WriteButtonProps) {
  const words = useWords("soundings");
  const { level, isBusy } = useSheet();
  const { units } = usePreferences();
  const now = useMinute();
  const when = taken === undefined ? words.sounded() : sayTaken(taken, now, words);
  return (
    <Button kind="primary" type="submit" wide isBusy={isBusy} isDisabled={!isReady}>
      {level === undefined ? words.soundedNowDo() : words.levelWhen({ level: sayLevel(level, units), when })}
    </Button>
  );
}

function WrongLevel() {
  const words = useWords("soundings");
  const { casualty, level } = useSheet();
  const wrong = level === undefined ? undefined : wrongLevel(casualty.boat, level);
  if (!wrong) return null;
  return (
    <p className="field-fault" role="alert">
      {words.wrongLevel({ allowed: wrong.allowed, remedy: wrong.remedy })}
    </p>
  );
}

/** Writes the level down, read now or when it was told. */
function useSaving(level: number | undefined, taken: Taken | undefined, onDone: () => void) {
  const words = useWords("soundings");
  const { space, write } = useSheet();
  const { units } = usePreferences();
  return async () => {
    if (level === undefined || taken === undefined) return;
    const text = sayLevel(level, units);
    const at = takenAt(taken, Date.now());
    const body = { space, level, text, ...(at !== undefined && { taken: at }) };
    const written = words.written({ level: text, when: sayWritten(taken, Date.now(), words) });
    if (await write(written, (doing, now) => takeSounding(doing, now, body))) onDone();
  };
}

/** What is new is at hand, where the level is entered; what was met before is a line further down. */
export function SoundHazards({ isAtHand }: { readonly isAtHand: boolean }) {
  const { casualty, space } = useSheet();
  const { fresh, met } = useHazards({ kind: "sound", space: casualty.spaces.find(({ id }) => id === space) });
  return isAtHand ? <Hazards fresh={fresh} met={[]} /> : <Hazards fresh={[]} met={met} />;
}

interface LastLevelProps {
  /** It is being said when the level was read. */
  readonly isLate: boolean;
  readonly onLate: (isLate: boolean) => void;
}

/** The last level with its time, and one tap for the same again: there before anything was sounded too. */
function LastLevel({ isLate, onLate }: LastLevelProps) {
  const words = useWords("soundings");
  const { casualty, space, setLevel } = useSheet();
  const { units } = usePreferences();
  const last = lastSounding(casualty, space);
  return (
    <div className="sound-last">
      {last ? (
        <p>
          {withParts(words.last, {
            level: <strong>{sayLevel(last.level, units)}</strong>,
            at: <Timestamp at={last.at} as="time" />,
          })}
        </p>
      ) : (
        <p>{words.fromLowest()}</p>
      )}
      <Button kind="quiet" isOpen={isLate} onPress={() => onLate(!isLate)}>
        {isLate ? words.nowAfterAll() : words.earlier()}
      </Button>
      <button
        type="button"
        className="pick sound-same"
        disabled={last === undefined}
        onClick={() => setLevel(last?.level)}
      >
        {words.same()}
      </button>
    </div>
  );
}
