import "./settings.css";
import { useId } from "react";
import { Choice, Section } from "../../parts/index.ts";
import { NIGHT_LEVELS, preferences, usePreferences } from "../../theme/index.ts";

/** Units, and colours by day and night. */
export function LooksSettings() {
  const { units, palette } = usePreferences();
  return (
    <Section title="Look and units">
      <Choice
        label="Units"
        hint="What you type may carry any unit."
        value={units}
        onChange={(chosen) => preferences.change({ units: chosen })}
        options={[
          { value: "metric", label: "Metric", note: "L/min, m, kPa, kg" },
          { value: "us", label: "US customary", note: "US gpm, ft, psi, lb" },
        ]}
      />
      <Choice
        label="Colours"
        value={palette}
        onChange={(chosen) => preferences.change({ palette: chosen })}
        options={[
          { value: "day", label: "Day", note: "Dark on light, for sun" },
          { value: "night", label: "Night", note: "Dim and warm, to keep eyes used to the dark" },
        ]}
      />
      <NightLevel />
    </Section>
  );
}

function NightLevel() {
  const { nightLevel } = usePreferences();
  const id = useId();
  const { least, most, step } = NIGHT_LEVELS;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        Brightness at night
      </label>
      <p className="field-hint">
        Shown as soon as it is moved, while colours are set to night. Also dim the screen itself.
      </p>
      <input
        id={id}
        className="settings-level"
        type="range"
        min={least}
        max={most}
        step={step}
        value={nightLevel}
        aria-valuetext={`${Math.round(nightLevel * 100)} %`}
        onChange={(event) => preferences.change({ nightLevel: Number(event.target.value) })}
      />
    </div>
  );
}
