import { useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";

interface PlacePickProps {
  readonly label: string;
  /** Id of a place; undefined until one is chosen. */
  readonly place: string | undefined;
  readonly onChoose: (place: string) => void;
  /** Id of a place that cannot be meant. */
  readonly except?: string;
}

/** One of the station's places. */
export function PlacePick({ label, place, onChoose, except }: PlacePickProps) {
  const words = useWords("stock");
  const { places } = useStation();
  return (
    <label className="field">
      <span className="field-label">{label}</span>
      <select className="field-input" value={place ?? ""} onChange={({ target }) => onChoose(target.value)}>
        {place === undefined && <option value="">{words.choosePlace()}</option>}
        {places
          .filter(({ id }) => id !== except)
          .map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
      </select>
    </label>
  );
}
