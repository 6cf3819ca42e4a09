import type { CasualtyState } from "#readiness";
import { useWords, withParts } from "#web/language/index.ts";
import { Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { saySituation } from "./situation/situation.ts";
import { sayRise, sayToldHole, sayTyped } from "./sizes.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** What came by radio before anybody was on her: not a sounding, and nothing is forecast from it. */
export function ToldByRadio() {
  const words = useWords("launchTold");
  const casualtyTold = useWords("casualtyTold");
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { told, hole, situation } = casualty;
  const toldHole = hole && sayToldHole(hole, units, words);
  const level = told && <ToldLevel told={told} />;
  const parts = level && toldHole !== undefined ? withParts(words.radioHole, { told: level, hole: toldHole }) : level;
  if (!parts && toldHole === undefined && !situation) return null;
  return (
    <>
      {(parts ?? toldHole) !== undefined && (
        <p className="quiet">{withParts(words.byRadio, { parts: parts ?? toldHole })}</p>
      )}
      {situation && <p className="quiet">{saySituation(situation, casualtyTold)}.</p>}
    </>
  );
}

/** A level and a rise with their time, as far as they were told. */
function ToldLevel({ told }: { readonly told: NonNullable<CasualtyState["told"]> }) {
  const words = useWords("launchTold");
  const { units } = usePreferences();
  const at = <Timestamp at={told.at} as="time" />;
  const water = told.water !== undefined && <strong>{sayTyped("water", told.water, units)}</strong>;
  const rise = told.rising !== undefined && sayRise(told.rising, units, words);
  if (water && rise) return withParts(words.radioWaterRise, { water, rise, at });
  if (water) return withParts(words.radioWater, { water, at });
  return rise ? withParts(words.radioRise, { rise, at }) : withParts(words.radioAt, { at });
}
