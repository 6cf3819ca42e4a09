import { useWords, withParts } from "#web/language/index.ts";
import { patchHole, setTow } from "#station";
import { useState } from "react";
import { Section, Timestamp } from "#web/parts/index.ts";
import { HazardsNow } from "../hazards/hazards-now.tsx";
import { PickRow } from "#web/parts/pick-row.tsx";
import { WhenPicker } from "../pumps/when-picker.tsx";
import { takenAt } from "../soundings/taken.ts";
import { useSheet } from "../sheet/use-sheet.ts";

const OPEN = [
  { id: "1", says: "openAll", wrote: "wroteAll", open: 1 },
  { id: "0.75", says: "openThreeQuarters", wrote: "wroteThreeQuarters", open: 0.75 },
  { id: "0.5", says: "openHalf", wrote: "wroteHalf", open: 0.5 },
  { id: "0.25", says: "openQuarter", wrote: "wroteQuarter", open: 0.25 },
  { id: "0.05", says: "openWeeps", wrote: "wroteWeeps", open: 0.05 },
] as const;

/** Plugged or patched: how much is still open. Half shut is often as good as another pump. */
export function HolePart() {
  const words = useWords("sheetBoat");
  const { casualty, space, write } = useSheet();
  const [ago, setAgo] = useState(0);
  const last = casualty.patches.findLast((one) => one.space === space);
  const picked = OPEN.find(({ open }) => open === last?.open)?.id;
  const set = async (id: (typeof OPEN)[number]["id"]) => {
    const { open, wrote } = OPEN.find((one) => one.id === id)!;
    const taken = takenAt({ ago }, Date.now());
    const body = { space, open, ...(taken !== undefined && { taken }) };
    if (await write(words[wrote](), (doing, now) => patchHole(doing, now, body))) setAgo(0);
  };
  return (
    <Section title={words.hole()}>
      <PickRow
        label={words.whatOpen()}
        options={OPEN.map(({ id, says }) => ({ id, words: words[says]() }))}
        picked={picked}
        onPick={(id) => void set(id)}
      />
      {last && <p className="quiet">{withParts(words.since, { at: <Timestamp at={last.at} as="time" /> })}</p>}
      <details className="casualty-more">
        <summary>{words.putEarlier()}</summary>
        <WhenPicker ago={ago} onAgo={setAgo} />
      </details>
      <Tow />
    </Section>
  );
}

/** Way through the water changes what comes in: written down, with what to heed before the line is taken up. */
function Tow() {
  const words = useWords("sheetBoat");
  const { casualty, write } = useSheet();
  const under = casualty.tow?.under;
  const tows = [
    { id: "off", words: words.liesStill() },
    { id: "under", words: words.underTow() },
  ] as const;
  const set = (id: (typeof tows)[number]["id"]) => {
    const wrote = id === "under" ? words.wroteTow() : words.wroteCastOff();
    void write(wrote, (doing, now) => setTow(doing, now, id === "under"));
  };
  return (
    <>
      <PickRow
        label={words.way()}
        options={tows}
        picked={under === undefined ? undefined : under ? "under" : "off"}
        onPick={set}
      />
      <HazardsNow moment={{ kind: "tow" }} />
    </>
  );
}
