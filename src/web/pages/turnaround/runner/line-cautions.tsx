import { CautionRows } from "#web/parts/caution-rows.tsx";
import type { Line } from "#web/act/lines.ts";
import { cautionRows } from "./caution-weight.ts";

/**
 * The cautions of a line, the gravest first: whole where a danger begins or comes back, one line for what goes on
 * from before, wherever its signal word puts it. Every one of them opens with a tap.
 */
export function LineCautions({ lines, line }: { readonly lines: readonly Line[]; readonly line: Line }) {
  return <CautionRows rows={cautionRows(lines, line)} />;
}
