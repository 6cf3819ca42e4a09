import { findCaution, type Caution } from "#base";
import { CautionLine, CautionText, CautionWords, firstSentence, NamedCautions } from "./caution-box.tsx";
import type { CautionRow } from "./caution-weight.ts";

/** Rows of cautions: whole panels, lines with what to do, and names. Every one of them opens with a tap. */
export function CautionRows({ rows }: { readonly rows: readonly CautionRow[] }) {
  return rows.map((row) => <Row key={row.ids.join()} row={row} />);
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
