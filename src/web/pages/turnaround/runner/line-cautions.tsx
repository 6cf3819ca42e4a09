import { findCaution, type Caution } from "#base";
import { CautionLine, CautionText, CautionWords, firstSentence, NamedCautions } from "#web/parts/caution-box.tsx";
import type { Line } from "#web/act/lines.ts";
import { weighCautions } from "./caution-weight.ts";

/**
 * The cautions of a line, the gravest first: whole where a danger begins or comes back, one line for what goes on
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
        <CautionLine
          key={caution.id}
          signal={caution.signal}
          hazard={caution.hazard}
          short={firstSentence(caution.avoid)}
        >
          <CautionWords caution={caution} />
        </CautionLine>
      ))}
      {goingOn.length > 0 && <NamedCautions cautions={known(goingOn)} />}
    </>
  );
}

function known(ids: readonly string[]): readonly Caution[] {
  return ids.map(findCaution).filter((caution) => caution !== undefined);
}
