import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { uuidv7 } from "uuidv7";
import { useLocation } from "wouter";
import type { Effect, Item } from "#kit";
import { effectsOfTaking, fitItem, robItem } from "#station";
import { fuelItemOf, isBehindSeal, type FittedItem, type KitState } from "#readiness";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Notice, TextField, useDoing } from "#web/parts/index.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import { sayEffect } from "#web/act/finding-choice.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import { KitFormPage } from "./kit-form-page.tsx";

/** An item taken out of one kit for another: a finding on the first, a trail on both. */
export default function TakeOutPage() {
  const words = useWords("keep");
  return <KitFormPage title={(kit) => words.takeTitle({ kit })}>{(at) => <Form at={at} />}</KitFormPage>;
}

function Form({ at }: { readonly at: KitAtHand }) {
  const words = useWords("keep");
  const lineWords = useWords("kitLine");
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [item, setItem] = useState("");
  const [to, setTo] = useState("");
  const [quantity, setQuantity] = useState<number>();
  const [chosen, setChosen] = useState<Effect>();
  const [limit, setLimit] = useState("");
  const [why, setWhy] = useState("");
  const other = at.view.kits.find(({ id }) => id === to);
  const fits = other !== undefined && isSamePattern(at.kit, other);
  const effects = item === "" ? [] : effectsOfTaking(at.pattern, item).toReversed();
  const effect = effects.length === 1 ? effects[0] : effects.find((one) => one === chosen);
  const isLimited = effect !== "limits" || limit.trim() !== "";
  const isReady = item !== "" && other !== undefined && quantity !== undefined && effect !== undefined && isLimited;
  const take = async () => {
    if (!isReady) return;
    const note = `Taken for ${other.name}${why.trim() === "" ? "" : `: ${why.trim()}`}`;
    const limited = effect === "limits" ? { limit: limit.trim() } : {};
    const robbed = { item, quantity, to, finding: uuidv7(), mode: "other", effect, note, ...limited };
    const before = at.kit.contents[item];
    const done = await doing.run(async () => {
      await carryOut((now) => robItem(now, at.kit, robbed));
      if (fits) await carryOut((now) => fitItem(now, other, fittingOf(at, other, item, quantity, before)));
    });
    if (done) go(`/kit/${at.kit.id}`);
  };
  return (
    <>
      <ItemSelect at={at} item={item} onChoose={setItem} />
      <NumberField label={words.howMany()} value={quantity} onChange={setQuantity} least={1} />
      <KitSelect at={at} to={to} onChoose={setTo} />
      {effects.length > 0 && (
        <Choice
          label={words.whatMeans({ kit: at.kit.name })}
          options={effects.map((one) => ({ value: one, label: sayEffect(one, lineWords) }))}
          value={effect}
          onChange={setChosen}
        />
      )}
      {effect === "limits" && <TextField label={words.limit()} value={limit} onChange={setLimit} limit={300} />}
      <TextField label={words.whyIfNeeded()} value={why} onChange={setWhy} />
      {item !== "" && isBehindSeal(at.kit, at.pattern, item) && (
        <Notice tone="attention" title={words.takeSealed({ kit: at.kit.name, seal: at.kit.seal?.number ?? "" })}>
          <p>{words.takeSealedMore()}</p>
        </Notice>
      )}
      {other && !fits && (
        <Notice tone="attention" title={words.otherPattern({ kit: other.name })}>
          <p>{words.otherPatternMore()}</p>
        </Notice>
      )}
      <ErrorBox error={doing.error} title={words.notTaken()} />
      <Button kind="primary" tone="grave" isDisabled={!isReady} isBusy={doing.isBusy} onPress={() => void take()}>
        {other && fits ? words.takenFitted({ kit: other.name }) : words.taken()}
      </Button>
    </>
  );
}

/** What another kit may have: neither what is good once only nor what is in the tank. */
function itemsToTake({ pattern }: KitAtHand): readonly Item[] {
  const fuel = fuelItemOf(pattern);
  return pattern.items.filter((item) => item.life.kind !== "single-use" && item !== fuel);
}

function isSamePattern(one: KitState, other: KitState): boolean {
  return one.pattern.split("@", 1)[0] === other.pattern.split("@", 1)[0];
}

/** With the dates and the lot that it had: it is the same thing in another kit. */
function fittingOf(
  { kit, view }: KitAtHand,
  other: KitState,
  item: string,
  quantity: number,
  before: FittedItem | undefined,
) {
  const { printed, batch } = before ?? {};
  return {
    item,
    quantity,
    fitted: before?.fitted ?? view.today,
    robbed: kit.id,
    ...(printed !== undefined && { printed }),
    ...(batch !== undefined && { batch }),
    ...(other.turnaround && { turnaround: other.turnaround.id }),
  };
}

interface SelectProps {
  readonly at: KitAtHand;
  readonly onChoose: (id: string) => void;
}

function ItemSelect({ at, item, onChoose }: SelectProps & { readonly item: string }) {
  const words = useWords("keep");
  return (
    <label className="field">
      <span className="field-label">{words.whichItem()}</span>
      <select className="field-input" value={item} onChange={({ target }) => onChoose(target.value)}>
        <option value="">{words.chooseItem()}</option>
        {itemsToTake(at).map(({ id, name }) => (
          <option key={id} value={id}>
            {name}
          </option>
        ))}
      </select>
    </label>
  );
}

function KitSelect({ at, to, onChoose }: SelectProps & { readonly to: string }) {
  const words = useWords("keep");
  return (
    <label className="field">
      <span className="field-label">{words.forKit()}</span>
      <select className="field-input" value={to} onChange={({ target }) => onChoose(target.value)}>
        <option value="">{words.chooseKit()}</option>
        {at.view.kits
          .filter(({ id }) => id !== at.kit.id)
          .toSorted((one, other) => one.name.localeCompare(other.name, undefined, { numeric: true }))
          .map(({ id, name, serial }) => (
            <option key={id} value={id}>
              {name}, {serial}
            </option>
          ))}
      </select>
    </label>
  );
}
