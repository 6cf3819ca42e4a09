import { useStation } from "#web/device/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";

interface PlacePickProps {
  readonly label: string;
  /** Id of a place; undefined until one is chosen. */
  readonly place: string | undefined;
  readonly onChoose: (place: string) => void;
  /** Id of a place that cannot be meant. */
  readonly except?: string;
}

/** One of the station's places, each a whole line that a glove can tap. */
export function PlacePick({ label, place, onChoose, except }: PlacePickProps) {
  const { places } = useStation();
  const options = places.filter(({ id }) => id !== except).map(({ id, name }) => ({ value: id, label: name }));
  return <Choice label={label} options={options} value={place} onChange={onChoose} glove />;
}
