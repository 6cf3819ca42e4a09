import { useState } from "react";
import { uuidv7 } from "uuidv7";
import { useLocation } from "wouter";
import { MET, type Met } from "#kit";
import type { Bodies } from "#readiness";
import { takeBack } from "#station";
import { useCarryOut } from "../../device/index.ts";
import { Button, ErrorBox, Notice, TextField, useDoing } from "../../parts/index.ts";
import { PickRow } from "../../parts/pick-row.tsx";
import type { KitAtHand } from "../../kit-view/at-hand.ts";
import {
  allThere,
  countOf,
  CountPart,
  isCounted,
  stoppedAt,
  StoppedPart,
  type Counting,
  type Said,
  type Stopped,
} from "./after-use/index.ts";
import { KitFormPage } from "./kit-form-page.tsx";

const LABELS: Readonly<Record<Met, string>> = { salt: "Salt water", oil: "Oil", sewage: "Sewage", fuel: "Fuel" };

type Answers = Readonly<Partial<Record<Met, "yes" | "no">>>;

const YES_NO = [
  { id: "yes", words: "Yes" },
  { id: "no", words: "No" },
] as const;

/** What has been filled in. */
interface Filled {
  readonly met: Answers;
  readonly stopped?: Stopped;
  readonly counting?: Counting;
  readonly said: Said;
  readonly note: string;
}

const NOTHING: Filled = { met: {}, said: new Map(), note: "" };

/** A kit coming back from a vessel: what it was in, and whether all of it is back. */
export default function ReturnPage() {
  return <KitFormPage title={(kit) => `Take ${kit} back`}>{(at) => <ReturnForm at={at} />}</KitFormPage>;
}

function ReturnForm({ at }: { readonly at: KitAtHand }) {
  const carryOut = useCarryOut();
  const doing = useDoing();
  const [, go] = useLocation();
  const [filled, setFilled] = useState(NOTHING);
  const fill = (part: Partial<Filled>) => setFilled({ ...filled, ...part });
  const counted = at.pattern.afterUse?.counted ?? [];
  const save = async () => {
    const body = returnOf(at, filled, Date.now());
    if (await doing.run(() => carryOut((now) => takeBack(now, at.kit, body)))) go(`/kit/${at.kit.id}`);
  };
  return (
    <>
      {at.kit.custody.kind === "away" ? (
        <p>It was handed over to {at.kit.custody.to}.</p>
      ) : (
        <Notice tone="attention" title="This kit is not out on loan." />
      )}
      <MetPart met={filled.met} onMet={(met) => fill({ met })} />
      {isMet(filled.met) && (
        <StoppedPart kit={at.kit} stopped={filled.stopped} onStopped={(stopped) => fill({ stopped })} />
      )}
      {counted.length > 0 && (
        <CountPart
          pattern={at.pattern}
          counted={counted}
          counting={filled.counting}
          onCounting={(counting) => fill({ counting })}
          said={filled.said}
          onSaid={(said) => fill({ said })}
        />
      )}
      <TextField
        label="Note, if any"
        hint="What they said of it."
        value={filled.note}
        onChange={(note) => fill({ note })}
        isLong
      />
      <ErrorBox error={doing.error} title="Not written down" />
      <Button kind="primary" isDisabled={!isReady(at, filled)} isBusy={doing.isBusy} onPress={() => void save()}>
        It is back
      </Button>
    </>
  );
}

interface MetPartProps {
  readonly met: Answers;
  readonly onMet: (met: Answers) => void;
}

/** What it was in; each said, none taken for granted. */
function MetPart({ met, onMet }: MetPartProps) {
  return (
    <>
      <p>Was it in, or does it smell of, any of these? It decides how, and how soon, it is washed.</p>
      <div className="kit-yes-no">
        {MET.map((what) => (
          <PickRow
            key={what}
            label={LABELS[what]}
            options={YES_NO}
            picked={met[what]}
            onPick={(answer) => onMet({ ...met, [what]: answer })}
          />
        ))}
      </div>
    </>
  );
}

function isMet(met: Answers): boolean {
  return MET.some((what) => met[what] === "yes");
}

function isReady({ pattern }: KitAtHand, { met, stopped, counting, said }: Filled): boolean {
  const isSaid = MET.every((what) => met[what] !== undefined) && (!isMet(met) || stopped !== undefined);
  const counted = pattern.afterUse?.counted ?? [];
  if (counted.length === 0) return isSaid;
  return isSaid && counting !== undefined && (counting !== "some" || isCounted(counted, said));
}

function returnOf({ kit, pattern }: KitAtHand, filled: Filled, now: number): Bodies["returned"] {
  const { met, counting, said, note } = filled;
  const stopped = isMet(met) ? stoppedAt(filled.stopped, kit, now) : undefined;
  const counted = pattern.afterUse?.counted ?? [];
  const all = counting === "all" ? allThere(counted, new Map()) : said;
  return {
    exposure: MET.filter((what) => met[what] === "yes"),
    ...(stopped !== undefined && { stopped }),
    ...(counting !== undefined && counting !== "later" && countOf(pattern, all, uuidv7)),
    ...(note.trim() !== "" && { note: note.trim() }),
  };
}
