import { Link } from "wouter";
import { useWords } from "../language/index.ts";
import { useStation } from "../device/index.ts";
import { sayEffect } from "../act/finding-choice.ts";
import { progressOf, sayAge, sayProgress, type OpenFinding } from "./ages.ts";

interface FindingListProps {
  readonly findings: readonly OpenFinding[];
  /** What heads each line: the kit too, or the item alone where the kit stands above. */
  readonly naming: "kit" | "item";
}

/** Findings as lines to tap: what, on which kit, how old, how grave, how far along. */
export function FindingList({ findings, naming }: FindingListProps) {
  return (
    <ul className="finding-list">
      {findings.map((one) => (
        <li key={one.finding.id}>
          <FindingLine one={one} naming={naming} />
        </li>
      ))}
    </ul>
  );
}

function FindingLine({ one, naming }: { readonly one: OpenFinding; readonly naming: "kit" | "item" }) {
  const words = useWords("kitLine");
  const { today } = useStation();
  const { kit, finding, mode, days } = one;
  return (
    <Link className={`finding-line finding-${finding.effect}`} to={`/findings?kit=${kit.id}&finding=${finding.id}`}>
      <span className="finding-age tabular">{sayAge(days, words)}</span>
      <span className="finding-words">
        <span className="finding-what">
          {naming === "kit" && `${kit.name}: `}
          {mode}
        </span>
        <span className="finding-effect">{sayEffect(finding.effect, words, finding.limit)}</span>
        <span className="quiet">{sayProgress(progressOf(finding, today), words)}</span>
      </span>
    </Link>
  );
}
