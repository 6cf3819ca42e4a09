import { useWords } from "#web/language/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { agoOptions } from "../soundings/taken.ts";

interface WhenPickerProps {
  /** Minutes before it is written down. */
  readonly ago: number;
  readonly onAgo: (ago: number) => void;
}

/** When it was, where a hand was too busy to write it down then. */
export function WhenPicker({ ago, onAgo }: WhenPickerProps) {
  const words = useWords("sheetPumps");
  const options = agoOptions(useWords("soundings"));
  return <PickRow label={words.whenWas()} options={options} picked={String(ago)} onPick={(id) => onAgo(Number(id))} />;
}
