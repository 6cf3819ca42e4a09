import { patchHole, setTow } from "#station";
import { useState } from "react";
import { Section, Timestamp } from "#web/parts/index.ts";
import { HazardsNow } from "../hazards/hazards-now.tsx";
import { PickRow } from "#web/parts/pick-row.tsx";
import { WhenPicker } from "../pumps/when-picker.tsx";
import { takenAt } from "../soundings/taken.ts";
import { useSheet } from "../sheet/use-sheet.ts";

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
  const [ago, setAgo] = useState(0);
  const last = casualty.patches.findLast((one) => one.space === space);
  const picked = OPEN.find(({ open }) => open === last?.open)?.id;
  const set = async (id: (typeof OPEN)[number]["id"]) => {
    const { open, words } = OPEN.find((one) => one.id === id)!;
    const taken = takenAt({ ago }, Date.now());
    const body = { space, open, ...(taken !== undefined && { taken }) };
    if (await write(`still open: ${words.toLowerCase()}`, (doing, now) => patchHole(doing, now, body))) setAgo(0);
  };
  return (
    <Section title="The hole">
      <PickRow
        label="Plugged or patched: what is still open?"
        options={OPEN}
        picked={picked}
        onPick={(id) => void set(id)}
      />
      {last && (
        <p className="quiet">
          Since <Timestamp at={last.at} as="time" />. Sound twice after it: the soundings say what it is worth.
        </p>
      )}
      <details className="casualty-more">
        <summary>Put earlier than now?</summary>
        <WhenPicker ago={ago} onAgo={setAgo} />
      </details>
      <Tow />
    </Section>
  );
}

const TOWS = [
  { id: "off", words: "Lies still" },
  { id: "under", words: "Under tow" },
] as const;

/** Way through the water changes what comes in: written down, with what to heed before the line is taken up. */
function Tow() {
  const { casualty, write } = useSheet();
  const under = casualty.tow?.under;
  const set = (id: (typeof TOWS)[number]["id"]) => {
    const words = id === "under" ? "taken in tow" : "tow cast off";
    void write(words, (doing, now) => setTow(doing, now, id === "under"));
  };
  return (
    <>
      <PickRow
        label="Way through the water"
        options={TOWS}
        picked={under === undefined ? undefined : under ? "under" : "off"}
        onPick={set}
      />
      <HazardsNow moment={{ kind: "tow" }} />
    </>
  );
}
