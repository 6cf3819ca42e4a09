import type { OnSceneAnswer } from "#questions";
import type { CasualtySpace } from "#readiness";
import { changeCasualty } from "#station";
import { useState } from "react";
import { Button, Section, TextField } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { MeasuresForm } from "./measures-form.tsx";
import { PickRow } from "#web/parts/pick-row.tsx";
import { sayBoat } from "../sheet/say.ts";
import { SPACE_PARTS, SPACE_SORTS } from "../launch/sizes.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** What is known of the boat and of the space sounded; each answer narrows the estimate. */
export function AboutHer({ answer }: { readonly answer: OnSceneAnswer | undefined }) {
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
        <MeasuresForm hull={answer?.hull} />
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
