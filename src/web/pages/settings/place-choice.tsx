import { useStation, useThisDevice } from "../../device/index.ts";
import { Section } from "../../parts/index.ts";
import { Choice } from "../../parts/fields/choice.tsx";

/** Where the person works on this device; the board opens on it. */
export function PlaceChoice() {
  const { place, places } = useStation();
  const device = useThisDevice();
  return (
    <Section title="Place">
      <Choice
        label="Where you work on this device"
        value={place.id}
        onChange={(id) => void device.workAt(id)}
        options={places.map(({ id, name }) => ({ value: id, label: name }))}
      />
    </Section>
  );
}
