import { useEffect, useEffectEvent } from "react";
import type { Words } from "#words";
import { useWords } from "#web/language/index.ts";
import { itemNamed, type CountedItem, type Pattern } from "#kit";
import type { CountedAs } from "#readiness";
import { Button, TextField } from "#web/parts/index.ts";
import { NumberField } from "#web/parts/fields/number-field.tsx";
import type { Refused } from "#web/parts/fields/use-refused.ts";
import { Choice } from "#web/parts/fields/choice.tsx";
import { PickRow } from "#web/parts/pick-row.tsx";
import { OTHER, sayEffect } from "#web/act/finding-choice.ts";
import { allThere, damagesOf, sayItem, sayMeans, type Said, type SaidOf } from "./counting.ts";
import "#web/kit-view/after-use.css";

/** How the count was begun. */
export type Counting = "all" | "some" | "later";

const WAYS = ["all", "some", "later"] as const;

const AS = ["there", "missing", "damaged"] as const satisfies readonly CountedAs["as"][];

interface CountPartProps {
  readonly pattern: Pattern;
  readonly counted: readonly CountedItem[];
  readonly counting: Counting | undefined;
  readonly onCounting: (counting: Counting) => void;
  readonly said: Said;
  readonly onSaid: (said: Said) => void;
  readonly refused: Refused;
}

/** Is everything back? All there in one tap; else item by item, and the rest in one tap. */
export function CountPart({ pattern, counted, counting, onCounting, said, onSaid, refused }: CountPartProps) {
  const words = useWords("handOver");
  const names = counted.map((one) => sayItem(pattern, one)).join(", ");
  const rest = counted.filter(({ item }) => !said.has(item));
  return (
    <div className="counting">
      <PickRow
        label={words.countIt()}
        hint={words.listed({ names })}
        options={WAYS.map((id) => ({ id, words: words[id]() }))}
        picked={counting}
        onPick={onCounting}
      />
      {counting === "some" && (
        <>
          {counted.map((one) => (
            <CountedRow
              key={one.item}
              pattern={pattern}
              one={one}
              of={said.get(one.item)}
              onSay={(of) => onSaid(new Map([...said, [one.item, of]]))}
              refused={refused}
            />
          ))}
          {rest.length > 0 && (
            <Button wide onPress={() => onSaid(allThere(counted, said))}>
              {rest.length === counted.length ? words.allAre() : words.othersAre({ count: rest.length })}
            </Button>
          )}
        </>
      )}
    </div>
  );
}

interface CountedRowProps {
  readonly pattern: Pattern;
  readonly one: CountedItem;
  readonly of: SaidOf | undefined;
  readonly onSay: (of: SaidOf) => void;
  readonly refused: Refused;
}

/** One item; of a damaged one, what is wrong with it. */
function CountedRow({ pattern, one, of, onSay, refused }: CountedRowProps) {
  const words = useWords("handOver");
  const lineWords = useWords("kitLine");
  const name = sayItem(pattern, one);
  const means = sayMeans(pattern, one, of, lineWords);
  const quantity = itemNamed(pattern, one.item)?.quantity ?? 1;
  return (
    <>
      <PickRow
        label={name}
        options={AS.map((id) => ({ id, words: words[id]() }))}
        picked={of?.as}
        onPick={(as) => onSay({ as })}
      />
      {of?.as === "damaged" && (
        <Choice
          label={words.wrongWith({ name })}
          options={damageOptions(pattern, one, lineWords)}
          value={of.mode}
          onChange={(mode) => onSay({ ...of, mode })}
        />
      )}
      {of?.mode === OTHER && (
        <TextField label={words.wrongInWords()} value={of.note ?? ""} onChange={(note) => onSay({ ...of, note })} />
      )}
      {of?.as === "missing" && quantity > 1 && (
        <BackField
          label={words.howManyOf({ count: quantity })}
          most={quantity - 1}
          value={of.back}
          item={one.item}
          onBack={(back) => onSay({ as: "missing", ...(back !== undefined && { back }) })}
          refused={refused}
        />
      )}
      {means !== undefined && of?.as === "missing" && <p className="kit-wrong">{words.means({ means })}</p>}
    </>
  );
}

interface BackFieldProps {
  readonly label: string;
  readonly most: number;
  readonly value: number | undefined;
  readonly item: string;
  readonly onBack: (back: number | undefined) => void;
  readonly refused: Refused;
}

/** A figure that it refuses holds the form up as long as the field is asked; gone, it holds nothing up. */
function BackField({ label, most, value, item, onBack, refused: { tell } }: BackFieldProps) {
  const field = `back ${item}`;
  const gone = useEffectEvent(() => tell(field, false));
  useEffect(() => () => gone(), []);
  return (
    <NumberField
      label={label}
      most={most}
      least={0}
      value={value}
      onChange={(back, isRefused) => {
        onBack(back);
        tell(field, isRefused);
      }}
    />
  );
}

function damageOptions(pattern: Pattern, one: CountedItem, words: Words["kitLine"]) {
  const known = damagesOf(pattern, one).map(({ id, name, effect, limit }) => ({
    value: id,
    label: name,
    note: sayEffect(effect, words, limit),
  }));
  return [...known, { value: OTHER, label: words.otherMode(), note: sayEffect("grounds", words) }];
}
