import { Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { saySituation } from "./situation/situation.ts";
import { sayRise, sayToldHole, sayTyped } from "./sizes.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** What came by radio before anybody was on her: not a sounding, and nothing is forecast from it. */
export function ToldByRadio() {
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { told, hole, situation } = casualty;
  const words = hole && sayToldHole(hole, units);
  const isTold = told !== undefined || words !== undefined;
  if (!isTold && !situation) return null;
  return (
    <>
      {isTold && (
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
      )}
      {situation && <p className="quiet">{saySituation(situation)}.</p>}
    </>
  );
}
