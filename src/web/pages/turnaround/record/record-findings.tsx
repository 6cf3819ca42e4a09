import type { Pattern } from "#kit";
import type { Finding, Turnaround } from "#readiness";
import { nameFinding } from "../../../kit-view/ages.ts";
import { Timestamp } from "../../../parts/index.ts";
import { PhotoStrip } from "../../../parts/photo-strip.tsx";
import { nameOf, type KitAtHand } from "../../../kit-view/at-hand.ts";
import { sayEffect } from "../../../act/finding-choice.ts";

interface RecordFindingsProps {
  readonly at: KitAtHand;
  readonly turnaround: Turnaround;
  readonly pattern: Pattern;
}

/** Findings raised in a turnaround, and whether they are closed since. */
export function RecordFindings({ at, turnaround, pattern }: RecordFindingsProps) {
  const raised = at.kit.findings.filter((finding) => finding.turnaround === turnaround.id);
  if (raised.length === 0) return <p>None raised.</p>;
  return (
    <ul className="record-findings">
      {raised.map((finding) => (
        <FindingRow key={finding.id} at={at} finding={finding} pattern={pattern} />
      ))}
    </ul>
  );
}

interface FindingRowProps {
  readonly at: KitAtHand;
  readonly finding: Finding;
  readonly pattern: Pattern;
}

function FindingRow({ at, finding, pattern }: FindingRowProps) {
  const { item, mode } = nameFinding(finding, pattern);
  return (
    <li>
      <p>
        <strong>{mode}.</strong> {sayEffect(finding.effect, finding.limit)}
      </p>
      {finding.note !== undefined && <p>{finding.note}</p>}
      <p className="quiet">
        Raised <Timestamp at={finding.raised.at} /> by {nameOf(at.view, finding.raised.by)}.{" "}
        {finding.closed ? (
          <>
            Closed <Timestamp at={finding.closed.at} />.
          </>
        ) : (
          "Open."
        )}
      </p>
      <PhotoStrip photos={finding.photos} label={`Finding on ${item}`} />
    </li>
  );
}
