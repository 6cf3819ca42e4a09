import { useWords, withParts } from "#web/language/index.ts";
import { Button, GloveRow, Section } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NIGHT_LEVELS, preferences, usePreferences } from "#web/theme/index.ts";

/** Units, and colours by day and night. */
export function LooksSettings() {
  const { units, palette } = usePreferences();
  const words = useWords("settings");
  return (
    <Section title={words.looks()}>
      <Choice
        label={words.units()}
        hint={words.unitsHint()}
        value={units}
        onChange={(chosen) => preferences.change({ units: chosen })}
        options={[
          { value: "metric", label: words.metric(), note: words.metricNote() },
          { value: "us", label: words.us(), note: words.usNote() },
        ]}
      />
      <Choice
        label={words.colours()}
        value={palette}
        onChange={(chosen) => preferences.change({ palette: chosen })}
        options={[
          { value: "day", label: words.day(), note: words.dayNote() },
          { value: "night", label: words.night(), note: words.nightNote() },
        ]}
      />
      <NightLevel />
    </Section>
  );
}

/** Two taps' worth of brightness: nothing to drag with gloves on. */
function NightLevel() {
  const { nightLevel } = usePreferences();
  const words = useWords("settings");
  const { least, most, step } = NIGHT_LEVELS;
  const change = (by: number) => {
    const level = Math.min(most, Math.max(least, nightLevel + by));
    preferences.change({ nightLevel: Math.round(level * 100) / 100 });
  };
  return (
    <div className="field">
      <p className="field-label">
        {withParts(words.brightness, {
          percent: <span aria-live="polite">{words.percent({ percent: Math.round(nightLevel * 100) })}</span>,
        })}
      </p>
      <p className="field-hint">{words.brightnessHint()}</p>
      <GloveRow>
        <Button kind="primary" onPress={() => change(-step)} isDisabled={nightLevel <= least}>
          {words.dimmer()}
        </Button>
        <Button kind="primary" onPress={() => change(step)} isDisabled={nightLevel >= most}>
          {words.brighter()}
        </Button>
      </GloveRow>
    </div>
  );
}
