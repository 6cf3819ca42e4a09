import { wrongLevel } from "#readiness";
import { takeSounding } from "#station";
import { useEffect, useState } from "react";
import { Button, Timestamp } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { lastSounding } from "./freshness.ts";
import { LevelPicker } from "./level-picker.tsx";
import { sayLevel } from "./say.ts";
import { showSounding, SOUNDING_PLACE } from "./sounding-place.ts";
import { TakenPicker } from "./taken-picker.tsx";
import { NOW, sayTaken, takenAt, type Taken } from "./taken.ts";
import { useMinute } from "./use-minute.ts";
import { useSheet } from "./use-sheet.ts";
import "./sounding.css";

/** One sounding: the level at the mark by taps or typed, then one tap for "now". There is no default. */
export function SoundNow() {
  const { casualty, space, level, setLevel, isBusy } = useSheet();
  const { units } = usePreferences();
  const [taken, setTaken] = useState<Taken | undefined>(NOW);
  const [saved, setSaved] = useState(0);
  useEffect(() => {
    if (location.hash === `#${SOUNDING_PLACE}`) showSounding();
  }, []);
  const save = useSaving(level, taken, () => (setLevel(undefined), setTaken(NOW), setSaved(saved + 1)));
  const last = lastSounding(casualty, space);
  const wrong = level === undefined ? undefined : wrongLevel(casualty.boat, level);
  const now = useMinute();
  const when = taken === undefined ? "sounded" : sayTaken(taken, now);
  return (
    <section className="sound" id={SOUNDING_PLACE} aria-label="Sounding">
      <LastLevel />
      <LevelPicker level={level} last={last?.level} onLevel={setLevel} />
      {wrong && (
        <p className="field-fault" role="alert">
          From {wrong.allowed}. {wrong.remedy}
        </p>
      )}
      <TakenPicker key={saved} taken={taken} onTaken={setTaken} />
      <Button
        kind="primary"
        wide
        isBusy={isBusy}
        isDisabled={level === undefined || wrong !== undefined || taken === undefined}
        onPress={() => void save()}
      >
        {level === undefined ? "Sounded now" : `${sayLevel(level, units)}: ${when}`}
      </Button>
    </section>
  );
}

/** Writes the level down, read now or when it was told. */
function useSaving(level: number | undefined, taken: Taken | undefined, onDone: () => void) {
  const { space, write } = useSheet();
  const { units } = usePreferences();
  return async () => {
    if (level === undefined || taken === undefined) return;
    const text = sayLevel(level, units);
    const at = takenAt(taken, Date.now());
    const body = { space, level, text, ...(at !== undefined && { taken: at }) };
    if (await write(`${text} ${sayTaken(taken, Date.now())}`, (doing, now) => takeSounding(doing, now, body))) onDone();
  };
}

function LastLevel() {
  const { casualty, space } = useSheet();
  const { units } = usePreferences();
  const last = lastSounding(casualty, space);
  if (!last) return <p>Level above the lowest point of the space, at one mark: tape the stick.</p>;
  return (
    <p>
      Last: <strong>{sayLevel(last.level, units)}</strong> at <Timestamp at={last.at} as="time" />
    </p>
  );
}
