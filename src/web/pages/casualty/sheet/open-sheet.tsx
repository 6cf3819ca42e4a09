import { useWords } from "#web/language/index.ts";
import { openCasualty } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useLocation } from "wouter";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { boatOf, openingOf, type Call } from "../launch/before-launch.ts";
import { sayBoat } from "./say.ts";

/** Opens the sheet of this casualty, with all that was told; every device of the station gets it. */
export function OpenSheet({ call, onOpened }: { readonly call: Call; readonly onOpened: () => void }) {
  const words = useWords("sheet");
  const told = useWords("casualtyTold");
  const launch = useWords("launchTold");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const { units } = usePreferences();
  const [name, setName] = useState("");
  const open = async () => {
    const id = uuidv7();
    const groups = { told, launch };
    const body = openingOf(call, name.trim() === "" ? sayBoat(boatOf(call), units, told) : name, groups);
    if (!(await doing.run(() => carryOut((now) => openCasualty(now, id, body))))) return;
    onOpened();
    go(`/casualty/${id}`);
  };
  return (
    <Section title={words.goingToHer()}>
      <TextField label={words.herName()} hint={words.leftOut()} value={name} onChange={setName} limit={120} />
      <ErrorBox error={doing.error} title={words.notOpened()} />
      <Button kind="primary" wide isBusy={doing.isBusy} onPress={() => void open()}>
        {words.openSheet()}
      </Button>
    </Section>
  );
}
