import { Button, GloveRow, Section } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NIGHT_LEVELS, preferences, usePreferences } from "#web/theme/index.ts";

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

/** Two taps' worth of brightness: nothing to drag with gloves on. */
function NightLevel() {
  const { nightLevel } = usePreferences();
  const { least, most, step } = NIGHT_LEVELS;
  const change = (by: number) => {
    const level = Math.min(most, Math.max(least, nightLevel + by));
    preferences.change({ nightLevel: Math.round(level * 100) / 100 });
  };
  return (
    <div className="field">
      <p className="field-label">
        Brightness at night: <span aria-live="polite">{Math.round(nightLevel * 100)} %</span>
      </p>
      <p className="field-hint">Shown while colours are set to night. Also dim the screen itself.</p>
      <GloveRow>
        <Button kind="primary" onPress={() => change(-step)} isDisabled={nightLevel <= least}>
          Dimmer
        </Button>
        <Button kind="primary" onPress={() => change(step)} isDisabled={nightLevel >= most}>
          Brighter
        </Button>
      </GloveRow>
    </div>
  );
}
