import { Label, ProgressBar } from "react-aria-components";
import { useWords } from "../language/index.ts";
import "./progress.css";

export interface ProgressProps {
  /** What is being counted: "Steps answered". */
  readonly label: string;
  readonly value: number;
  readonly of: number;
  readonly isLabelHidden?: boolean;
}

/** How far along, as a scale with its figures beside it. */
export function Progress({ label, value, of, isLabelHidden = false }: ProgressProps) {
  const said = useWords("parts").valueOf({ value, of });
  const share = of === 0 ? 0 : Math.min(1, value / of);
  return (
    <ProgressBar className="progress" value={value} maxValue={of} valueLabel={said}>
      <span className="progress-words">
        <Label className={isLabelHidden ? "for-readers-only" : "progress-label"}>{label}</Label>
        <span className="tabular">{said}</span>
      </span>
      <span className="progress-scale">
        <span className="progress-done" style={{ width: `${share * 100}%` }} />
      </span>
    </ProgressBar>
  );
}
