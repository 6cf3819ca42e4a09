import { findCaution, type Caution } from "#base";
import { CautionLine, CautionText, CautionWords, firstSentence, NamedCautions } from "#web/parts/caution-box.tsx";
import type { Line } from "#web/act/lines.ts";
import { cautionRows, type CautionRow } from "./caution-weight.ts";

/**
 * The cautions of a line, the gravest first: whole where a danger begins or comes back, one line for what goes on
 * from before, wherever its signal word puts it. Every one of them opens with a tap.
 */
export function LineCautions({ lines, line }: { readonly lines: readonly Line[]; readonly line: Line }) {
  return cautionRows(lines, line).map((row) => <Row key={row.ids.join()} row={row} />);
}

function Row({ row: { how, ids } }: { readonly row: CautionRow }) {
  const cautions = known(ids);
  if (how === "goingOn") return cautions.length > 0 && <NamedCautions cautions={cautions} />;
  if (how === "whole") return cautions.map((caution) => <CautionText key={caution.id} caution={caution} />);
  return cautions.map((caution) => (
    <CautionLine key={caution.id} signal={caution.signal} hazard={caution.hazard} short={firstSentence(caution.avoid)}>
      <CautionWords caution={caution} />
    </CautionLine>
  ));
}

function known(ids: readonly string[]): readonly Caution[] {
  return ids.map(findCaution).filter((caution) => caution !== undefined);
}
