import type { Place } from "#readiness";
import { closePlace, setPlace } from "#station";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { Button, ButtonRow, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { Table, type Column } from "#web/parts/table.tsx";

/** For administrators: the station's places and how many ready kits each must hold. */
export function PlacesSettings() {
  const { places } = useStation();
  const [chosen, setChosen] = useState<Place | "new">();
  return (
    <Section title="Places of the station">
      <Table
        caption="Places of the station"
        isCaptionHidden
        columns={columns(setChosen)}
        rows={places}
        rowKey={({ id }) => id}
      />
      {chosen === undefined ? (
        <div>
          <Button onPress={() => setChosen("new")}>Add a place</Button>
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

function columns(choose: (place: Place) => void): readonly Column<Place>[] {
  return [
    { key: "name", head: "Place", cell: ({ name }) => name },
    { key: "strength", head: "Strength", align: "figures", cell: ({ strength }) => strength },
    { key: "zone", head: "Time zone", cell: ({ zone }) => zone },
    {
      key: "change",
      isAct: true,
      head: "Change",
      cell: (place) => (
        <Button kind="quiet" label={`Change ${place.name}`} onPress={() => choose(place)}>
          Change
        </Button>
      ),
    },
  ];
}

function PlaceForm({ place, onDone }: { readonly place?: Place; readonly onDone: () => void }) {
  const carryOut = useCarryOut();
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
      <TextField label="Name" value={name} onChange={setName} limit={80} />
      <NumberField
        label="Strength"
        hint="How many ready kits it must hold."
        value={strength}
        onChange={setStrength}
        least={0}
        most={1000}
      />
      <TextField label="Time zone whose day counts there" value={zone} onChange={setZone} limit={80} />
      <ErrorBox error={doing.error} title="Not saved" />
      <ButtonRow>
        <Button onPress={() => void save()} isDisabled={!isReady} isBusy={doing.isBusy}>
          Save the place
        </Button>
        <Button kind="quiet" onPress={onDone}>
          Leave as it is
        </Button>
      </ButtonRow>
      {place && <ClosePlace place={place} onDone={onDone} />}
    </>
  );
}

function ClosePlace({ place, onDone }: { readonly place: Place; readonly onDone: () => void }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [reason, setReason] = useState("");
  const close = async () => {
    if (await doing.run(() => carryOut((at) => closePlace(at, place.id, reason.trim())))) onDone();
  };
  return (
    <>
      <TextField label={`Close ${place.name}, because`} value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title="Not closed" />
      <div>
        <Button tone="grave" onPress={() => void close()} isDisabled={reason.trim() === ""} isBusy={doing.isBusy}>
          Close this place
        </Button>
      </div>
    </>
  );
}
