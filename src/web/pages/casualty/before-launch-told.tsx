import { Timestamp } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { sayRise, sayToldHole, sayTyped } from "./sizes.ts";
import { useSheet } from "./use-sheet.ts";

/** What came by radio before anybody was on her: not a sounding, and nothing is forecast from it. */
export function ToldByRadio() {
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { told, hole } = casualty;
  const words = hole && sayToldHole(hole, units);
  if (!told && words === undefined) return null;
  return (
    <p className="quiet">
      Told by radio:{" "}
      {told && (
        <>
          {told.water !== undefined && <strong>{sayTyped("water", told.water, units)} </strong>}
          {told.rising !== undefined && `rising ${sayRise(told.rising, units)} `}
          at <Timestamp at={told.at} as="time" />
          {words !== undefined && "; "}
        </>
      )}
      {words}.
    </p>
  );
}
