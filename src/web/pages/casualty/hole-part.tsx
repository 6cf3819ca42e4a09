import { patchHole } from "#station";
import { Section, Timestamp } from "../../parts/index.ts";
import { PickRow } from "./pick-row.tsx";
import { useSheet } from "./use-sheet.ts";

const OPEN = [
  { id: "1", words: "All of it", open: 1 },
  { id: "0.75", words: "Three quarters", open: 0.75 },
  { id: "0.5", words: "Half", open: 0.5 },
  { id: "0.25", words: "A quarter", open: 0.25 },
  { id: "0.05", words: "It weeps", open: 0.05 },
] as const;

/** Plugged or patched: how much is still open. Half shut is often as good as another pump. */
export function HolePart() {
  const { casualty, space, write } = useSheet();
  const last = casualty.patches.findLast((one) => one.space === space);
  const picked = OPEN.find(({ open }) => open === last?.open)?.id;
  const set = (id: (typeof OPEN)[number]["id"]) => {
    const { open, words } = OPEN.find((one) => one.id === id)!;
    void write(`still open: ${words.toLowerCase()}`, (doing, now) => patchHole(doing, now, { space, open }));
  };
  return (
    <Section title="The hole">
      <PickRow label="Plugged or patched: what is still open?" options={OPEN} picked={picked} onPick={set} />
      {last && (
        <p className="quiet">
          Since <Timestamp at={last.at} as="time" />. Sound twice after it: the soundings say what it is worth.
        </p>
      )}
    </Section>
  );
}
