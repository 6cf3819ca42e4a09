import { useWords } from "#web/language/index.ts";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { BOXES, type Box, type MeasureDraft } from "./measure-draft.ts";
import { usePreferences } from "#web/theme/index.ts";
import { sayMeasureBox, unitOf, type BoxWords } from "./measure-words.ts";

export interface DraftProps {
  readonly draft: MeasureDraft;
  readonly onChange: (part: Partial<MeasureDraft>) => void;
}

interface DraftBoxProps extends DraftProps {
  readonly box: Box;
  readonly said?: BoxWords;
}

/** One box of the draft; empty until something is typed. */
export function DraftBox({ box, draft, onChange, said }: DraftBoxProps) {
  const words = useWords("turnaroundMeasure");
  const { units } = usePreferences();
  const unit = unitOf(box, units);
  return (
    <QuantityField
      {...(said ?? sayMeasureBox(box, words))}
      dimension={BOXES[box]}
      {...(unit !== undefined && { unit })}
      value={draft.boxes[box]?.typed ?? ""}
      onChange={(typed, reading) =>
        onChange({ boxes: { ...draft.boxes, [box]: { typed, quantity: reading?.text ?? "" } } })
      }
    />
  );
}
