import { itemNamed, modeNamed, modesOf, type Mode, type Pattern } from "#kit";
import { MOST_FAULTS, type PlantedFault } from "#readiness";
import { useState } from "react";
import { Button, TextField } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";

interface FaultListProps {
  readonly pattern: Pattern;
  readonly faults: readonly PlantedFault[];
  readonly onChange: (faults: readonly PlantedFault[]) => void;
  /** Which modes are offered; all of them unless told. */
  readonly isOffered?: (mode: Mode) => boolean;
}

const NONE: PlantedFault = { item: "", mode: "", how: "" };

/** Faults chosen one by one from the modes of the pattern, each with what exactly was done. */
export function FaultList({ pattern, faults, onChange, isOffered = () => true }: FaultListProps) {
  const drills = useWords("drills");
  const words = useWords("drill");
  const [draft, setDraft] = useState(NONE);
  const isWhole = draft.mode !== "" && draft.how.trim() !== "";
  const add = () => {
    onChange([...faults, { ...draft, how: draft.how.trim() }]);
    setDraft(NONE);
  };
  return (
    <>
      {faults.length > 0 && (
        <ol className="drill-faults">
          {faults.map((fault, at) => (
            <li key={`${fault.mode} ${fault.how}`}>
              <FaultWords pattern={pattern} fault={fault} />
              <Button
                kind="quiet"
                label={words.takeOffNamed({ fault: nameOfFault(pattern, fault, drills) })}
                onPress={() => onChange(faults.filter((_, other) => other !== at))}
              >
                {words.takeOff()}
              </Button>
            </li>
          ))}
        </ol>
      )}
      {faults.length < MOST_FAULTS && (
        <>
          <FaultFields pattern={pattern} draft={draft} onChange={setDraft} isOffered={isOffered} />
          <div>
            <Button isDisabled={!isWhole} onPress={add}>
              {words.add()}
            </Button>
          </div>
        </>
      )}
    </>
  );
}

interface FaultFieldsProps {
  readonly pattern: Pattern;
  readonly draft: PlantedFault;
  readonly onChange: (draft: PlantedFault) => void;
  readonly isOffered: (mode: Mode) => boolean;
}

function FaultFields({ pattern, draft, onChange, isOffered }: FaultFieldsProps) {
  const words = useWords("drill");
  const { item, mode, how } = draft;
  const items = pattern.items.filter(({ id }) => modesOf(pattern, id).some(isOffered));
  const [offered, kept] = [modesOf(pattern, item).filter(isOffered), modesOf(pattern, item).length];
  return (
    <>
      <label className="field">
        <span className="field-label">{words.onItem()}</span>
        <select
          className="field-input"
          value={item}
          onChange={({ target }) => onChange({ ...NONE, item: target.value })}
        >
          <option value="">{words.chooseItem()}</option>
          {items.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
      </label>
      <label className="field">
        <span className="field-label">{words.whichFault()}</span>
        <select
          className="field-input"
          value={mode}
          disabled={item === ""}
          onChange={({ target }) => onChange({ ...draft, mode: target.value })}
        >
          <option value="">{words.chooseFault()}</option>
          {offered.map(({ id, name }) => (
            <option key={id} value={id}>
              {name}
            </option>
          ))}
        </select>
        {offered.length < kept && <span className="field-hint">{words.someKept()}</span>}
      </label>
      <TextField
        label={words.whatDone()}
        hint={words.whatDoneHint()}
        value={how}
        onChange={(text) => onChange({ ...draft, how: text })}
        limit={300}
      />
    </>
  );
}

/** A planted fault with what was done. */
export function FaultWords({
  pattern,
  fault,
}: {
  readonly pattern: Pattern | undefined;
  readonly fault: PlantedFault;
}) {
  const words = useWords("drills");
  return (
    <span>
      <strong>{nameOfFault(pattern, fault, words)}</strong>
      <br />
      {fault.how}
    </span>
  );
}

/** "Fuel hose: chafed". */
export function nameOfFault(
  pattern: Pattern | undefined,
  { item, mode }: { readonly item: string; readonly mode: string },
  words: Words["drills"],
): string {
  const [of, what] = pattern ? [itemNamed(pattern, item)?.name, modeNamed(pattern, mode)?.name] : [];
  return what === undefined ? (of ?? item) : words.faultOf({ item: of ?? item, fault: what });
}
