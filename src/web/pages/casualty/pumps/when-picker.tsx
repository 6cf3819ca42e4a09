import { PickRow } from "#web/parts/pick-row.tsx";
import { AGO, sayAgo } from "../soundings/taken.ts";

interface WhenPickerProps {
  /** Minutes before it is written down. */
  readonly ago: number;
  readonly onAgo: (ago: number) => void;
}

const OPTIONS = AGO.map((ago) => ({ id: String(ago), words: ago === 0 ? "Now" : sayAgo(ago) }));

/** When it was, where a hand was too busy to write it down then. */
export function WhenPicker({ ago, onAgo }: WhenPickerProps) {
  return <PickRow label="When was it?" options={OPTIONS} picked={String(ago)} onPick={(id) => onAgo(Number(id))} />;
}
