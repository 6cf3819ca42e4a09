import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { BOXES, type Box, type MeasureDraft } from "./measure-draft.ts";
import { usePreferences } from "#web/theme/index.ts";
import { BOX_WORDS, unitOf } from "./measure-words.ts";

export interface DraftProps {
  readonly draft: MeasureDraft;
  readonly onChange: (part: Partial<MeasureDraft>) => void;
}

interface DraftBoxProps extends DraftProps {
  readonly box: Box;
  readonly words?: { readonly label: string; readonly hint?: string };
}

/** One box of the draft; empty until something is typed. */
export function DraftBox({ box, draft, onChange, words = BOX_WORDS[box] }: DraftBoxProps) {
  const { units } = usePreferences();
  const unit = unitOf(box, units);
  return (
    <QuantityField
      {...words}
      dimension={BOXES[box]}
      {...(unit !== undefined && { unit })}
      value={draft.boxes[box]?.typed ?? ""}
      onChange={(typed, reading) =>
        onChange({ boxes: { ...draft.boxes, [box]: { typed, quantity: reading?.text ?? "" } } })
      }
    />
  );
}
