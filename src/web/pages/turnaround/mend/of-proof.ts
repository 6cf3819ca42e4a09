import { isLastToProve, isRemedied, openFindings, proofSoFar, proofWanted } from "#readiness";
import type { OpenKit } from "#web/kit-view/at-hand.ts";

/**
 * True where the line stays once this check is answered: the finding was raised by it, or it is the last of what proves
 * it put right, so that it can be closed here.
 */
export function isOfProof({ kit, pattern, turnaround }: OpenKit, check: string | undefined): boolean {
  if (check === undefined) return false;
  return openFindings(kit)
    .filter((finding) => isRemedied(finding) && proofWanted(finding, pattern).some(({ id }) => id === check))
    .some((finding) => finding.check === check || isLastToProve(proofSoFar(finding, pattern, turnaround), check));
}
