import { useStation, useThisDevice } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Section } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";

/** Where the person works on this device; the board opens on it. */
export function PlaceChoice() {
  const { place, places } = useStation();
  const device = useThisDevice();
  const words = useWords("settings");
  return (
    <Section title={words.place()}>
      <Choice
        label={words.placeHere()}
        value={place.id}
        onChange={(id) => void device.workAt(id)}
        options={places.map(({ id, name }) => ({ value: id, label: name }))}
      />
    </Section>
  );
}
