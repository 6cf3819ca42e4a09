import type { Place } from "#readiness";
import { closePlace, setPlace } from "#station";
import type { Words } from "#words";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { Table, type Column } from "#web/parts/table.tsx";

/** For administrators: the station's places and how many ready kits each must hold. */
export function PlacesSettings() {
  const { places } = useStation();
  const words = useWords("settingsStation");
  const [chosen, setChosen] = useState<Place | "new">();
  return (
    <Section title={words.places()}>
      <Table
        caption={words.places()}
        isCaptionHidden
        columns={columns(words, setChosen)}
        rows={places}
        rowKey={({ id }) => id}
      />
      {chosen === undefined ? (
        <div>
          <Button onPress={() => setChosen("new")}>{words.addPlace()}</Button>
        </div>
      ) : (
        <PlaceForm
          key={chosen === "new" ? "new" : chosen.id}
          {...(chosen !== "new" && { place: chosen })}
          onDone={() => setChosen(undefined)}
        />
      )}
    </Section>
  );
}

function columns(words: Words["settingsStation"], choose: (place: Place) => void): readonly Column<Place>[] {
  return [
    { key: "name", head: words.place(), cell: ({ name }) => name },
    { key: "strength", head: words.strength(), align: "figures", cell: ({ strength }) => strength },
    { key: "zone", head: words.zone(), cell: ({ zone }) => zone },
    {
      key: "change",
      isAct: true,
      head: words.change(),
      cell: (place) => (
        <Button kind="quiet" label={words.changeNamed({ name: place.name })} onPress={() => choose(place)}>
          {words.change()}
        </Button>
      ),
    },
  ];
}

function PlaceForm({ place, onDone }: { readonly place?: Place; readonly onDone: () => void }) {
  const carryOut = useCarryOut();
  const words = useWords("settingsStation");
  const doing = useDoing();
  const [name, setName] = useState(place?.name ?? "");
  const [strength, setStrength] = useState<number | undefined>(place?.strength);
  const [zone, setZone] = useState(place?.zone ?? new Intl.DateTimeFormat().resolvedOptions().timeZone);
  const isReady = name.trim() !== "" && zone.trim() !== "" && strength !== undefined;
  const save = async () => {
    const body = { name: name.trim(), strength: strength ?? 0, zone: zone.trim() };
    if (await doing.run(() => carryOut((at) => setPlace(at, place?.id ?? uuidv7(), body)))) onDone();
  };
  return (
    <>
      <TextField label={words.name()} value={name} onChange={setName} limit={80} />
      <NumberField
        label={words.strength()}
        hint={words.strengthHint()}
        value={strength}
        onChange={setStrength}
        least={0}
        most={1000}
      />
      <TextField label={words.zoneThere()} value={zone} onChange={setZone} limit={80} />
      <ErrorBox error={doing.error} title={words.notSaved()} />
      <ButtonRow>
        <Button onPress={() => void save()} isDisabled={!isReady} isBusy={doing.isBusy}>
          {words.savePlace()}
        </Button>
        <Button kind="quiet" onPress={onDone}>
          {words.leave()}
        </Button>
      </ButtonRow>
      {place && <ClosePlace place={place} onDone={onDone} />}
    </>
  );
}

function ClosePlace({ place, onDone }: { readonly place: Place; readonly onDone: () => void }) {
  const carryOut = useCarryOut();
  const words = useWords("settingsStation");
  const doing = useDoing();
  const [reason, setReason] = useState("");
  const close = async () => {
    if (await doing.run(() => carryOut((at) => closePlace(at, place.id, reason.trim())))) onDone();
  };
  return (
    <>
      <TextField label={words.closeBecause({ place: place.name })} value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title={words.notClosed()} />
      <div>
        <Button tone="grave" onPress={() => void close()} isDisabled={reason.trim() === ""} isBusy={doing.isBusy}>
          {words.closePlace()}
        </Button>
      </div>
    </>
  );
}
