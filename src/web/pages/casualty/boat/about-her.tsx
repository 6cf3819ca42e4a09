import { useWords } from "#web/language/index.ts";
import type { OnSceneAnswer } from "#questions";
import type { CasualtySpace } from "#readiness";
import { changeCasualty } from "#station";
import { useState } from "react";
import { Button, Section, TextField } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { MeasuresForm } from "./measures-form.tsx";
import { PickRow } from "#web/parts/pick-row.tsx";
import { sayBoat } from "../sheet/say.ts";
import { spaceParts, spaceSorts } from "../launch/sizes.ts";
import { useSheet } from "../sheet/use-sheet.ts";

/** What is known of the boat and of the space sounded; each answer narrows the estimate. */
export function AboutHer({ answer }: { readonly answer: OnSceneAnswer | undefined }) {
  const words = useWords("sheetBoat");
  const told = useWords("casualtyTold");
  const { casualty, space } = useSheet();
  const { units } = usePreferences();
  const known = casualty.spaces.find(({ id }) => id === space);
  return (
    <Section title={words.known()}>
      <details className="casualty-more">
        <summary>{words.knownOf({ boat: sayBoat(casualty.boat, units, told), space: known?.name ?? "" })}</summary>
        {known && <SpaceForm key={known.id} space={known} />}
        <MeasuresForm hull={answer?.hull} />
        <NewSpace />
      </details>
    </Section>
  );
}

function SpaceForm({ space }: { readonly space: CasualtySpace }) {
  const words = useWords("sheetBoat");
  const told = useWords("casualtyTold");
  const { write } = useSheet();
  const set = (part: Partial<CasualtySpace>) =>
    void write(words.theSpace(), (doing, now) => changeCasualty(doing, now, { space: { ...space, ...part } }));
  return (
    <>
      <PickRow
        label={words.spaceSort({ space: space.name })}
        options={spaceSorts(told)}
        picked={space.sort}
        onPick={(sort) => set({ sort })}
      />
      <PickRow
        label={words.spacePart()}
        options={spaceParts(told)}
        picked={space.part}
        onPick={(part) => set({ part })}
      />
    </>
  );
}

/** Water in a further space: it gets soundings and pumps of its own. */
function NewSpace() {
  const words = useWords("sheetBoat");
  const { casualty, write, isBusy } = useSheet();
  const [name, setName] = useState("");
  const add = async () => {
    const id = `space-${casualty.spaces.length + 1}`;
    const space = { id, name: name.trim(), sort: "cabin", part: "forward" } as const;
    if (await write(words.waterIn({ space: space.name }), (doing, now) => changeCasualty(doing, now, { space })))
      setName("");
  };
  const isTwice = casualty.spaces.some((one) => one.name === name.trim());
  return (
    <>
      <TextField
        label={words.otherSpace()}
        value={name}
        onChange={setName}
        limit={60}
        {...(isTwice && { fault: words.spaceTwice() })}
      />
      <Button wide isBusy={isBusy} isDisabled={name.trim() === "" || isTwice} onPress={() => void add()}>
        {words.addSpace()}
      </Button>
    </>
  );
}
