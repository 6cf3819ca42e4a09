import { forbiddenBy, forbiddenByUnknown, modeNamed, type Pattern, type Work } from "#kit";
import type { Finding } from "../state.ts";

/** The work that a finding forbids: by its mode, or all that the line where it was found may forbid. */
export function forbiddenByFinding(pattern: Pattern, finding: Pick<Finding, "mode" | "step">): readonly Work[] {
  const mode = modeNamed(pattern, finding.mode);
  return mode ? forbiddenBy(pattern, mode) : forbiddenByUnknown(pattern, finding.step);
}
