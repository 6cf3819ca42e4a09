import { useState } from "react";
import { uuidv7 } from "uuidv7";
import type { KitState, Place, Shelf } from "#readiness";
import { musterOrder, setShelves } from "#station";
import { useCarryOut, useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, ButtonRow, ErrorBox, Section, TextField, useDoing } from "#web/parts/index.ts";
import { addKit, moveKitUp, type ShelfDraft } from "./shelf-order.ts";

/** The shelves of a place with their kits in order: a muster goes round in it. Moved by buttons. */
export function ShelvesForm({ place }: { readonly place: Place }) {
  const { kits } = useStation();
  const carryOut = useCarryOut();
  const words = useWords("labels");
  const doing = useDoing();
  const here = kits.filter((kit) => kit.place === place.id);
  const [shelves, setDraft] = useState<ShelfDraft>(() => onlyHere(place.shelves ?? [], here));
  const [name, setName] = useState("");
  const loose = musterOrder(here, { shelves }).flatMap(({ kit, shelf }) => (shelf ? [] : [kit]));
  const save = () => doing.run(() => carryOut((now) => setShelves(now, place.id, shelves)));
  const add = () => {
    setDraft([...shelves, { id: uuidv7(), name: name.trim(), kits: [] }]);
    setName("");
  };
  return (
    <Section title={words.shelves()}>
      <div className="labels-form">
        {shelves.map((shelf) => (
          <ShelfPart key={shelf.id} shelf={shelf} here={here} loose={loose} shelves={shelves} onChange={setDraft} />
        ))}
        <TextField label={words.anotherShelf()} value={name} onChange={setName} isShort limit={80} />
        <ButtonRow>
          <Button isDisabled={name.trim() === ""} onPress={add}>
            {words.addShelf()}
          </Button>
          <Button isBusy={doing.isBusy} onPress={() => void save()}>
            {words.saveShelves()}
          </Button>
        </ButtonRow>
        <ErrorBox error={doing.error} title={words.notSaved()} />
        {loose.length > 0 && (
          <p className="quiet">{words.onNoShelf({ kits: loose.map((kit) => kit.name).join(", ") })}</p>
        )}
      </div>
    </Section>
  );
}

interface ShelfPartProps {
  readonly shelf: Shelf;
  readonly here: readonly KitState[];
  readonly loose: readonly KitState[];
  readonly shelves: ShelfDraft;
  readonly onChange: (shelves: ShelfDraft) => void;
}

function ShelfPart({ shelf, here, loose, shelves, onChange }: ShelfPartProps) {
  const words = useWords("labels");
  const put = (kits: readonly string[]) =>
    onChange(shelves.map((one) => (one.id === shelf.id ? { ...one, kits } : one)));
  const nameOf = (id: string) => here.find((kit) => kit.id === id)?.name ?? id;
  return (
    <section aria-label={shelf.name}>
      <h3>{shelf.name}</h3>
      <ol className="labels-kits">
        {shelf.kits.map((kit, at) => (
          <li key={kit}>
            {nameOf(kit)}
            <Button
              kind="quiet"
              label={words.kitBefore({ kit: nameOf(kit) })}
              isDisabled={at === 0}
              onPress={() => put(moveKitUp(shelf.kits, at))}
            >
              {words.before()}
            </Button>
            <Button
              kind="quiet"
              label={words.kitOffShelf({ kit: nameOf(kit) })}
              onPress={() => put(shelf.kits.filter((id) => id !== kit))}
            >
              {words.offShelf()}
            </Button>
          </li>
        ))}
      </ol>
      <label className="field">
        <span className="field-label">{words.putOn({ shelf: shelf.name })}</span>
        <select className="field-input" value="" onChange={({ target }) => put(addKit(shelf.kits, target.value))}>
          <option value="">{words.chooseKit()}</option>
          {loose.map(({ id, name, serial }) => (
            <option key={id} value={id}>
              {name}, {serial}
            </option>
          ))}
        </select>
      </label>
      {shelf.kits.length === 0 && (
        <Button
          kind="quiet"
          label={words.takeNamedAway({ shelf: shelf.name })}
          onPress={() => onChange(shelves.filter(({ id }) => id !== shelf.id))}
        >
          {words.takeAway()}
        </Button>
      )}
    </section>
  );
}

/** Kits that have left the place are off its shelves. */
function onlyHere(shelves: readonly Shelf[], here: readonly KitState[]): ShelfDraft {
  const known = new Set(here.map(({ id }) => id));
  return shelves.map((shelf) => ({ ...shelf, kits: shelf.kits.filter((id) => known.has(id)) }));
}
