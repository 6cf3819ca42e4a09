import { useWords } from "#web/language/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { Prose } from "#web/parts/prose.tsx";

interface EstimateProps {
  readonly assumptions: readonly { readonly what: string; readonly effect: string }[];
}

/** Says that this is an estimate, who decides, and what it takes for granted. */
export function Estimate({ assumptions }: EstimateProps) {
  const words = useWords("sheetWord");
  return (
    <CautionBox signal="NOTICE" hazard={words.anEstimateHead()}>
      <p>{words.estimateMore()}</p>
      <details className="casualty-more">
        <summary>{words.granted()}</summary>
        <ul className="casualty-list">
          {assumptions.map(({ what, effect }) => (
            <li key={what}>
              <Prose text={`${what} ${effect}`} />
            </li>
          ))}
        </ul>
      </details>
    </CautionBox>
  );
}
