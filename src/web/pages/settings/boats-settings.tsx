import { inUnit } from "#base";
import type { BoatSetting, RescueBoat } from "#readiness";
import { retireBoat, setBoat } from "#station";
import type { Words } from "#words";
import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useCarryOut, useStation, type StationView } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { QuantityField } from "#web/parts/fields/quantity-field.tsx";
import { Table, type Column } from "#web/parts/table.tsx";

/** For keepers: the boats that take kits to a casualty, with the figures that are counted on before launching. */
export function BoatsSettings() {
  const view = useStation();
  const words = useWords("settingsStation");
  const [chosen, setChosen] = useState<RescueBoat | "new">();
  return (
    <Section title={words.boats()}>
      <p className="quiet">{words.boatsMore()}</p>
      <Table
        caption={words.boats()}
        isCaptionHidden
        columns={columns({ view, words, choose: setChosen })}
        rows={view.boats}
        rowKey={({ id }) => id}
      />
      {chosen === undefined ? (
        <div>
          <Button onPress={() => setChosen("new")}>{words.addBoat()}</Button>
        </div>
      ) : (
        <BoatForm
          key={chosen === "new" ? "new" : chosen.id}
          {...(chosen !== "new" && { boat: chosen })}
          onDone={() => setChosen(undefined)}
        />
      )}
    </Section>
  );
}

interface Around {
  readonly view: StationView;
  readonly words: Words["settingsStation"];
  readonly choose: (boat: RescueBoat) => void;
}

function columns({ view, words, choose }: Around): readonly Column<RescueBoat>[] {
  return [
    { key: "name", head: words.boat(), cell: ({ name }) => name },
    {
      key: "place",
      head: words.liesAt(),
      cell: ({ place }) => view.places.find(({ id }) => id === place)?.name ?? place,
    },
    { key: "speed", head: words.speed(), align: "figures", cell: ({ speed }) => inText(speed, "speed", "kn") },
    { key: "launch", head: words.toLaunch(), align: "figures", cell: ({ launch }) => inText(launch, "time", "min") },
    { key: "setUp", head: words.toWater(), align: "figures", cell: ({ setUp }) => inText(setUp, "time", "min") },
    { key: "carries", head: words.kits(), align: "figures", cell: ({ carries }) => carries },
    { key: "mains", head: words.mains(), cell: ({ mains }) => (mains ? words.yes() : words.no()) },
    {
      key: "change",
      isAct: true,
      head: words.change(),
      cell: (boat) => (
        <Button kind="quiet" label={words.changeNamed({ name: boat.name })} onPress={() => choose(boat)}>
          {words.change()}
        </Button>
      ),
    },
  ];
}

function inText(si: number, dimension: "speed" | "time", unit: string): string {
  return `${figureIn(si, dimension, unit)}\u00a0${unit}`;
}

function figureIn(si: number, dimension: "speed" | "time", unit: string): string {
  return String(Number(inUnit(si, unit, dimension).toPrecision(3)));
}

/** Figures as they stand in their boxes, with what they were read as. */
interface BoatForm {
  readonly name: string;
  readonly place: string | undefined;
  readonly speed: Typed;
  readonly launch: Typed;
  readonly setUp: Typed;
  readonly carries: number | undefined;
  readonly mains: "yes" | "no" | undefined;
}

interface Typed {
  readonly text: string;
  readonly si: number | undefined;
}

function typed(si: number | undefined, dimension: "speed" | "time", unit: string): Typed {
  return { text: si === undefined ? "" : figureIn(si, dimension, unit), si };
}

function draftOf(boat: RescueBoat | undefined): BoatForm {
  return {
    name: boat?.name ?? "",
    place: boat?.place,
    speed: typed(boat?.speed, "speed", "kn"),
    launch: typed(boat?.launch, "time", "min"),
    setUp: typed(boat?.setUp, "time", "min"),
    carries: boat?.carries,
    mains: boat && (boat.mains ? "yes" : "no"),
  };
}

/** The boat as she would be written; undefined while anything is missing. */
function settingOf({ name, place, speed, launch, setUp, carries, mains }: BoatForm): BoatSetting | undefined {
  if (name.trim() === "" || place === undefined || carries === undefined || mains === undefined) return undefined;
  if (speed.si === undefined || launch.si === undefined || setUp.si === undefined) return undefined;
  const times = { speed: speed.si, launch: launch.si, setUp: setUp.si };
  return { name: name.trim(), place, ...times, carries, mains: mains === "yes" };
}

function BoatForm({ boat, onDone }: { readonly boat?: RescueBoat; readonly onDone: () => void }) {
  const carryOut = useCarryOut();
  const words = useWords("settingsStation");
  const doing = useDoing();
  const [draft, setDraft] = useState(() => draftOf(boat));
  const setting = settingOf(draft);
  const save = async () => {
    if (!setting) return;
    if (await doing.run(() => carryOut((at) => setBoat(at, boat?.id ?? uuidv7(), setting)))) onDone();
  };
  return (
    <>
      <BoatFields draft={draft} onChange={(part) => setDraft({ ...draft, ...part })} />
      <ErrorBox error={doing.error} title={words.notSaved()} />
      <ButtonRow>
        <Button onPress={() => void save()} isDisabled={!setting} isBusy={doing.isBusy}>
          {words.saveBoat()}
        </Button>
        <Button kind="quiet" onPress={onDone}>
          {words.leave()}
        </Button>
      </ButtonRow>
      {boat && <RetireBoat boat={boat} onDone={onDone} />}
    </>
  );
}

interface FieldsProps {
  readonly draft: BoatForm;
  readonly onChange: (part: Partial<BoatForm>) => void;
}

function BoatFields({ draft, onChange }: FieldsProps) {
  const { places } = useStation();
  const words = useWords("settingsStation");
  return (
    <>
      <TextField label={words.boatName()} value={draft.name} onChange={(name) => onChange({ name })} limit={80} />
      <Choice
        label={words.boatPlace()}
        value={draft.place}
        onChange={(place) => onChange({ place })}
        options={places.map(({ id, name }) => ({ value: id, label: name }))}
      />
      <TypedField label={words.boatSpeed()} of="speed" unit="kn" {...{ draft, onChange }} />
      <TypedField label={words.boatLaunch()} of="launch" unit="min" {...{ draft, onChange }} />
      <TypedField label={words.boatSetUp()} of="setUp" unit="min" {...{ draft, onChange }} />
      <NumberField
        label={words.boatCarries()}
        value={draft.carries}
        onChange={(carries) => onChange({ carries })}
        least={0}
        most={50}
      />
      <Choice
        label={words.boatMains()}
        value={draft.mains}
        onChange={(mains) => onChange({ mains })}
        options={[
          { value: "yes", label: words.answerYes() },
          { value: "no", label: words.answerNo() },
        ]}
      />
    </>
  );
}

interface TypedFieldProps extends FieldsProps {
  readonly label: string;
  readonly of: "speed" | "launch" | "setUp";
  readonly unit: string;
}

function TypedField({ label, of, unit, draft, onChange }: TypedFieldProps) {
  return (
    <QuantityField
      label={label}
      dimension={of === "speed" ? "speed" : "time"}
      unit={unit}
      value={draft[of].text}
      onChange={(text, reading) => onChange({ [of]: { text, si: reading?.si } })}
    />
  );
}

function RetireBoat({ boat, onDone }: { readonly boat: RescueBoat; readonly onDone: () => void }) {
  const carryOut = useCarryOut();
  const words = useWords("settingsStation");
  const doing = useDoing();
  const [reason, setReason] = useState("");
  const retire = async () => {
    if (await doing.run(() => carryOut((at) => retireBoat(at, boat.id, reason.trim())))) onDone();
  };
  return (
    <>
      <TextField label={words.retireBecause({ boat: boat.name })} value={reason} onChange={setReason} />
      <ErrorBox error={doing.error} title={words.notTakenOff()} />
      <div>
        <Button tone="grave" onPress={() => void retire()} isDisabled={reason.trim() === ""} isBusy={doing.isBusy}>
          {words.retireBoat()}
        </Button>
      </div>
    </>
  );
}
