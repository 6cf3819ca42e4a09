import type { OnSceneAnswer } from "#questions";
import { CautionBox } from "../../parts/index.ts";

/** Time to leave first, then what matters now, gravest first. The fuel warning has a place of its own. */
export function WarningList({ answer: { warnings, leave } }: { readonly answer: OnSceneAnswer }) {
  const others = warnings.filter(({ kind }) => kind !== "fuel-smelt");
  return (
    <section className="warnings" aria-live="polite" aria-label="Warnings">
      {leave.kind !== "no-sign" && <Leave leave={leave} />}
      {others.map(({ kind, signal, hazard, says }) => (
        <CautionBox key={kind} signal={signal} hazard={hazard}>
          <p>{says}</p>
        </CautionBox>
      ))}
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
