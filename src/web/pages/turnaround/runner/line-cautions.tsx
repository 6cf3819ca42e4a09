import { findCaution, type Caution } from "#base";
import { CautionLine, CautionText, CautionWords, SignalSign } from "../../../parts/caution-box.tsx";
import type { Line } from "../../../act/lines.ts";
import { weighCautions } from "./caution-weight.ts";

/**
 * The cautions of a line, its own danger first: whole where a danger begins or comes back, one line for what goes on
 * from before. Every one of them opens with a tap.
 */
export function LineCautions({ lines, line }: { readonly lines: readonly Line[]; readonly line: Line }) {
  const { whole, begun, goingOn } = weighCautions(lines, line);
  return (
    <>
      {known(whole).map((caution) => (
        <CautionText key={caution.id} caution={caution} />
      ))}
      {known(begun).map((caution) => (
        <CautionLine key={caution.id} signal={caution.signal} hazard={caution.hazard} short={firstOf(caution.avoid)}>
          <CautionWords caution={caution} />
        </CautionLine>
      ))}
      {goingOn.length > 0 && <GoingOn cautions={known(goingOn)} />}
    </>
  );
}

/** What goes on from the lines before, in one line. */
function GoingOn({ cautions }: { readonly cautions: readonly Caution[] }) {
  return (
    <details className="cautions-going-on">
      <summary>
        {cautions.map((caution) => (
          <span key={caution.id} className={`caution-name caution-${caution.signal.toLowerCase()}`}>
            <span className="caution-line-signal">
              <SignalSign signal={caution.signal} />
              {caution.signal}
            </span>
            <strong>{caution.hazard}</strong>
          </span>
        ))}
      </summary>
      {cautions.map((caution) => (
        <CautionText key={caution.id} caution={caution} />
      ))}
    </details>
  );
}

function known(ids: readonly string[]): readonly Caution[] {
  return ids.map(findCaution).filter((caution) => caution !== undefined);
}

/** The first sentence of what to do. */
function firstOf(avoid: string): string {
  return /^[^.]*\./.exec(avoid)?.[0] ?? avoid;
}
