import { useState } from "react";
import { useLocation } from "wouter";
import type { Bodies } from "#readiness";
import { takeBack } from "#station";
import { useCarryOut } from "../../device/index.ts";
import { Button, Choice, ErrorBox, Notice, TextField, useDoing } from "../../parts/index.ts";
import type { KitAtHand } from "../turnaround/at-hand.ts";
import { KitFormPage } from "./kit-form-page.tsx";

type Exposure = Bodies["returned"]["exposure"][number];

const EXPOSURES: readonly { readonly what: Exposure; readonly label: string }[] = [
  { what: "salt", label: "Salt water" },
  { what: "oil", label: "Oil" },
  { what: "sewage", label: "Sewage" },
  { what: "fuel", label: "Fuel" },
];

type Answers = Readonly<Partial<Record<Exposure, "yes" | "no">>>;

const YES_NO = [
  { value: "yes", label: "Yes" },
  { value: "no", label: "No" },
] as const;

/** A kit coming back from a vessel, and what it was in. */
export default function ReturnPage() {
  return <KitFormPage title={(kit) => `Take ${kit} back`}>{(at) => <ReturnForm at={at} />}</KitFormPage>;
}

function ReturnForm({ at }: { readonly at: KitAtHand }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [answers, setAnswers] = useState<Answers>({});
  const [note, setNote] = useState("");
  const isReady = EXPOSURES.every(({ what }) => answers[what] !== undefined);
  const save = async () => {
    const exposure = EXPOSURES.map(({ what }) => what).filter((what) => answers[what] === "yes");
    const body = { exposure, ...(note.trim() !== "" && { note: note.trim() }) };
    if (await doing.run(() => carryOut((now) => takeBack(now, at.kit, body)))) go(`/kit/${at.kit.id}`);
  };
  return (
    <>
      {at.kit.custody.kind === "away" ? (
        <p>It was handed over to {at.kit.custody.to}.</p>
      ) : (
        <Notice tone="attention" title="This kit is not out on loan." />
      )}
      <p>Was it in, or does it smell of, any of these? It decides how it is washed.</p>
      {EXPOSURES.map(({ what, label }) => (
        <div key={what} className="kit-yes-no">
          <Choice
            label={label}
            options={YES_NO}
            value={answers[what]}
            onChange={(answer) => setAnswers({ ...answers, [what]: answer })}
          />
        </div>
      ))}
      <TextField
        label="Note, if any"
        hint="What they said of it; what is missing."
        value={note}
        onChange={setNote}
        isLong
      />
      <ErrorBox error={doing.error} title="Not written down" />
      <Button kind="primary" isDisabled={!isReady} isBusy={doing.isBusy} onPress={() => void save()}>
        It is back
      </Button>
    </>
  );
}
