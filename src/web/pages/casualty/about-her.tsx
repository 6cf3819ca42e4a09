import type { CasualtyBoat, CasualtySpace } from "#readiness";
import { changeCasualty } from "#station";
import { useState } from "react";
import { Button, QuantityField, Section, TextField } from "../../parts/index.ts";
import { usePreferences } from "../../theme/index.ts";
import { PickRow } from "./pick-row.tsx";
import { sayBoat } from "./say.ts";
import { SPACE_PARTS, SPACE_SORTS } from "./sizes.ts";
import { useSheet } from "./use-sheet.ts";

/** What is known of the boat and of the space sounded; each answer narrows the estimate. */
export function AboutHer() {
  const { casualty, space } = useSheet();
  const { units } = usePreferences();
  const known = casualty.spaces.find(({ id }) => id === space);
  return (
    <Section title="What is known of her">
      <details className="casualty-more">
        <summary>
          {sayBoat(casualty.boat, units)}; {known?.name}
        </summary>
        {known && <SpaceForm key={known.id} space={known} />}
        <BoatForm boat={casualty.boat} />
        <NewSpace />
      </details>
    </Section>
  );
}

function SpaceForm({ space }: { readonly space: CasualtySpace }) {
  const { write } = useSheet();
  const set = (part: Partial<CasualtySpace>) =>
    void write("the space", (doing, now) => changeCasualty(doing, now, { space: { ...space, ...part } }));
  return (
    <>
      <PickRow
        label={`${space.name}: what is in it?`}
        options={SPACE_SORTS}
        picked={space.sort}
        onPick={(sort) => set({ sort })}
      />
      <PickRow
        label="Which part of her does the water stand in?"
        options={SPACE_PARTS}
        picked={space.part}
        onPick={(part) => set({ part })}
      />
    </>
  );
}

const SIZES = [
  { key: "beam", label: "Beam" },
  { key: "depth", label: "Keel to deck edge" },
  { key: "draught", label: "Draught of the hull" },
] as const;

function BoatForm({ boat }: { readonly boat: CasualtyBoat }) {
  const { write, isBusy } = useSheet();
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  const [read, setRead] = useState<Partial<CasualtyBoat>>({});
  const save = () =>
    void write("the boat's measures", (doing, now) => changeCasualty(doing, now, { boat: { ...boat, ...read } }));
  return (
    <>
      {SIZES.map(({ key, label }) => (
        <QuantityField
          key={key}
          label={label}
          {...(boat[key] !== undefined && { hint: `Now taken as ${boat[key]} m.` })}
          dimension="length"
          unit="m"
          value={texts[key] ?? ""}
          onChange={(text, reading) => {
            setTexts({ ...texts, [key]: text });
            if (reading) setRead({ ...read, [key]: reading.si });
          }}
        />
      ))}
      <Button wide isBusy={isBusy} isDisabled={Object.keys(read).length === 0} onPress={save}>
        Write her measures
      </Button>
    </>
  );
}

/** Water in a further space: it gets soundings and pumps of its own. */
function NewSpace() {
  const { casualty, write, isBusy } = useSheet();
  const [name, setName] = useState("");
  const add = async () => {
    const id = `space-${casualty.spaces.length + 1}`;
    const space = { id, name: name.trim(), sort: "cabin", part: "forward" } as const;
    if (await write(`water in ${space.name}`, (doing, now) => changeCasualty(doing, now, { space }))) setName("");
  };
  const isTwice = casualty.spaces.some((one) => one.name === name.trim());
  return (
    <>
      <TextField
        label="Water in another space: its name"
        value={name}
        onChange={setName}
        limit={60}
        {...(isTwice && { fault: "Another space has this name." })}
      />
      <Button wide isBusy={isBusy} isDisabled={name.trim() === "" || isTwice} onPress={() => void add()}>
        Add this space
      </Button>
    </>
  );
}
