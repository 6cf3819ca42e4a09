import type { OnSceneAnswer } from "#questions";
import { CautionBox } from "../../parts/index.ts";
import { useSheet } from "./use-sheet.ts";

/** What the line at the top says, or a place of its own. */
const SAID_ABOVE = ["fuel-smelt", "stale"];
/** What is said of the soundings themselves, and asks for another: not while fuel is smelt. */
const OF_SOUNDINGS = ["above-deck", "does-not-fit", "fall-has-slowed", "pump-will-suck-air", "few-readings"];

/** Signs to be ready, then what matters now, gravest first. */
export function WarningList({ warnings, leave }: Pick<OnSceneAnswer, "warnings" | "leave">) {
  const { casualty } = useSheet();
  const quiet = casualty.fuelSmelt ? [...SAID_ABOVE, ...OF_SOUNDINGS] : SAID_ABOVE;
  const others = warnings.filter(({ kind }) => !quiet.includes(kind));
  return (
    <section className="warnings" aria-live="polite" aria-label="Warnings">
      {leave.kind === "be-ready" && <Leave leave={leave} />}
      {others.map(({ kind, signal, hazard, says }) => (
        <CautionBox key={kind} signal={signal} hazard={hazard}>
          <p>{says}</p>
        </CautionBox>
      ))}
    </section>
  );
}

/** Signs that people should be off her, before anything else. In the page before there are any, so that they are read out. */
export function LeaveNow({ leave }: Pick<OnSceneAnswer, "leave">) {
  return (
    <section className="warnings" aria-live="polite" aria-label="Leaving her">
      {leave.kind === "now" && <Leave leave={leave} />}
    </section>
  );
}

function Leave({ leave }: Pick<OnSceneAnswer, "leave">) {
  const isNow = leave.kind === "now";
  return (
    <CautionBox signal={isNow ? "DANGER" : "WARNING"} hazard={isNow ? "Time to leave her" : "Be ready to leave her"}>
      <p>{leave.because.join(" ")}</p>
      <p>
        {isNow
          ? "Signs that people should be off her now. The person in charge on scene decides, and does not wait for a figure."
          : "Lifejackets on, way out clear, nobody below alone, someone counts heads. The person in charge on scene decides."}
      </p>
    </CautionBox>
  );
}
