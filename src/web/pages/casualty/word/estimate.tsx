import { CautionBox } from "#web/parts/caution-box.tsx";

interface EstimateProps {
  readonly assumptions: readonly { readonly what: string; readonly effect: string }[];
}

/** Says that this is an estimate, who decides, and what it takes for granted. */
export function Estimate({ assumptions }: EstimateProps) {
  return (
    <CautionBox signal="NOTICE" hazard="An estimate">
      <p>
        The person in charge on scene decides. Compare with what you see; the unit's manual and local rules come first.
      </p>
      <details className="casualty-more">
        <summary>What it takes for granted</summary>
        <ul className="casualty-list">
          {assumptions.map(({ what, effect }) => (
            <li key={what}>
              {what} {effect}
            </li>
          ))}
        </ul>
      </details>
    </CautionBox>
  );
}
