import { useState } from "react";
import type { Dimension } from "#base";
import type { Check } from "#kit";
import { readQuarters } from "#readiness";
import type { Words } from "#words";
import { useWords } from "../language/index.ts";
import { Button, ButtonRow, Notice, TextField } from "../parts/index.ts";
import { DateField } from "../parts/fields/date-field.tsx";
import { NumberField } from "../parts/fields/number-field.tsx";
import { QuantityField } from "../parts/fields/quantity-field.tsx";
import type { Reading, Typed } from "./typed-reading.ts";
import type { KeptDraft } from "./use-ask-draft.ts";

/** A row of numbers that a glove can choose from. */
const MOST_FEWER = 5;

interface ReadingFieldsProps {
  readonly check: Check;
  readonly kept: KeptDraft;
  readonly reading: Reading;
}

/** The boxes a check wants filled, empty until read, and at once what the reading means. */
export function ReadingFields({ check, kept, reading }: ReadingFieldsProps) {
  const change = (part: Typed) => kept.change({ typed: { ...kept.draft.typed, ...part } });
  return (
    <>
      <Boxes check={check} typed={kept.draft.typed} change={change} />
      {reading.kind === "read" && (
        <Notice tone={reading.judgement.right ? "plain" : "wrong"} title={reading.judgement.words} isNews />
      )}
    </>
  );
}

interface BoxesProps {
  readonly check: Check;
  readonly typed: Typed;
  readonly change: (part: Typed) => void;
}

function Boxes({ check, typed, change }: BoxesProps) {
  const words = useWords("act");
  if (check.kind === "measure") return <MeasureBox check={check} typed={typed} change={change} />;
  if (check.kind === "count") return <CountBox check={check} typed={typed} change={change} />;
  if (check.kind === "match") return <MatchBoxes check={check} typed={typed} change={change} />;
  if (check.kind !== "date") return null;
  return <DateField label={words.datePrinted()} value={typed.date} onChange={(date) => change({ date: date ?? "" })} />;
}

/** Fewer than belong there by one tap; any other number by keys. All of them is the answer's own button. */
function CountBox({ check, typed, change }: BoxesProps & { readonly check: Check & { readonly kind: "count" } }) {
  const words = useWords("act");
  const things = check.of;
  const [pressed, setPressed] = useState(0);
  const fewer = Array.from({ length: Math.min(check.exactly, MOST_FEWER) }, (_, at) => check.exactly - 1 - at);
  return (
    <details className="extras" open={Boolean(typed.count)}>
      <summary>{words.otherNumber({ things })}</summary>
      <ButtonRow>
        {fewer.map((count) => (
          <Button
            key={count}
            isPressed={typed.count === String(count)}
            onPress={() => (setPressed(pressed + 1), change({ count: String(count) }))}
            label={words.numberOf({ things, count })}
          >
            {count}
          </Button>
        ))}
      </ButtonRow>
      <NumberField
        key={pressed}
        label={words.howMany({ things })}
        value={typed.count ? Number(typed.count) : undefined}
        onChange={(count) => change({ count: count === undefined ? "" : String(count) })}
        least={0}
      />
    </details>
  );
}

function MeasureBox({ check, typed, change }: BoxesProps & { readonly check: Check & { readonly kind: "measure" } }) {
  const words = useWords("act");
  return (
    <QuantityField
      label={words.reading()}
      hasKeys
      dimension={check.dimension as Dimension}
      unit={check.unit}
      value={typed.typed ?? ""}
      onChange={(text, reading) => change({ typed: text, quantity: reading?.text ?? "" })}
    />
  );
}

function MatchBoxes({ check, typed, change }: BoxesProps & { readonly check: Check & { readonly kind: "match" } }) {
  const words = useWords("act");
  const said = (text: string | undefined) => boxOf(check, text ?? "", words);
  return (
    <>
      <TextField
        label={check.first}
        {...said(typed.first)}
        value={typed.first ?? ""}
        onChange={(first) => change({ first })}
      />
      {check.against === undefined && (
        <TextField
          label={check.second}
          {...said(typed.second)}
          value={typed.second ?? ""}
          onChange={(second) => change({ second })}
        />
      )}
    </>
  );
}

/** What a gauge may read stands at its box; where something else was typed it stands there as the fault. */
function boxOf({ reads }: Check & { readonly kind: "match" }, text: string, words: Words["act"]) {
  if (reads !== "quarters") return {};
  const isRead = text.trim() === "" || readQuarters(text) !== undefined;
  return isRead ? { hint: words.quarters() } : { fault: words.noQuarters() };
}
