import type { CountedItem, Pattern } from "#kit";
import type { CountedAs } from "#readiness";
import { Button, TextField } from "../../../parts/index.ts";
import { Choice } from "../../../parts/fields/choice.tsx";
import { PickRow } from "../../../parts/pick-row.tsx";
import { OTHER, sayEffect } from "../../../act/finding-choice.ts";
import { allThere, damagesOf, sayItem, sayMeans, type Said, type SaidOf } from "./counting.ts";
import "../../../kit-view/after-use.css";

/** How the count was begun. */
export type Counting = "all" | "some" | "later";

const WAYS = [
  { id: "all", words: "All there" },
  { id: "some", words: "Missing or damaged" },
  { id: "later", words: "Not counted yet" },
] as const;

const AS: readonly { readonly id: CountedAs["as"]; readonly words: string }[] = [
  { id: "there", words: "There" },
  { id: "missing", words: "Missing" },
  { id: "damaged", words: "Damaged" },
];

interface CountPartProps {
  readonly pattern: Pattern;
  readonly counted: readonly CountedItem[];
  readonly counting: Counting | undefined;
  readonly onCounting: (counting: Counting) => void;
  readonly said: Said;
  readonly onSaid: (said: Said) => void;
}

/** Is everything back? All there in one tap; else item by item, and the rest in one tap. */
export function CountPart({ pattern, counted, counting, onCounting, said, onSaid }: CountPartProps) {
  const names = counted.map((one) => sayItem(pattern, one)).join(", ");
  const rest = counted.filter(({ item }) => !said.has(item));
  return (
    <div className="counting">
      <PickRow
        label="Count it: is everything back and whole?"
        hint={`${names}.`}
        options={WAYS}
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
            />
          ))}
          {rest.length > 0 && (
            <Button wide onPress={() => onSaid(allThere(counted, said))}>
              {rest.length === counted.length ? "All are there" : `The other ${rest.length} are there`}
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
}

/** One item; of a damaged one, what is wrong with it. */
function CountedRow({ pattern, one, of, onSay }: CountedRowProps) {
  const name = sayItem(pattern, one);
  const means = sayMeans(pattern, one, of);
  return (
    <>
      <PickRow label={name} options={AS} picked={of?.as} onPick={(as) => onSay({ as })} />
      {of?.as === "damaged" && (
        <Choice
          label={`What is wrong with it: ${name}?`}
          options={damageOptions(pattern, one)}
          value={of.mode}
          onChange={(mode) => onSay({ ...of, mode })}
        />
      )}
      {of?.mode === OTHER && (
        <TextField
          label="What is wrong, in your words"
          value={of.note ?? ""}
          onChange={(note) => onSay({ ...of, note })}
        />
      )}
      {means !== undefined && of?.as === "missing" && <p className="kit-wrong">{means}.</p>}
    </>
  );
}

function damageOptions(pattern: Pattern, one: CountedItem) {
  const known = damagesOf(pattern, one).map(({ id, name, effect, limit }) => ({
    value: id,
    label: name,
    note: sayEffect(effect, limit),
  }));
  return [...known, { value: OTHER, label: "Something else", note: sayEffect("grounds") }];
}
