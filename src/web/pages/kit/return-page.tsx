import { useState } from "react";
import { useWords } from "#web/language/index.ts";
import { uuidv7 } from "uuidv7";
import { useLocation } from "wouter";
import { MET, type Met } from "#kit";
import type { Bodies } from "#readiness";
import { takeBack } from "#station";
import { useCarryOut } from "#web/device/index.ts";
import { Button, ErrorBox, Notice, TextField, useDoing } from "#web/parts/index.ts";
import { useKept } from "#web/act/use-kept.ts";
import { useMinute } from "#web/timing/use-minute.ts";
import { useRefused } from "#web/parts/fields/use-refused.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";
import {
  allThere,
  countOf,
  CountPart,
  LentPart,
  isMet,
  stillToSay,
  stoppedAt,
  StoppedPart,
  type Counting,
  type Said,
  type SaidOf,
  type Stopped,
} from "./after-use/index.ts";
import { KitFormPage } from "./kit-form-page.tsx";

type Answers = Readonly<Partial<Record<Met, "yes" | "no">>>;

const YES_NO = ["yes", "no"] as const;

/** What has been filled in, as it is kept. */
interface Filled {
  readonly met: Answers;
  readonly counting?: Counting;
  readonly said: readonly (readonly [string, SaidOf])[];
  readonly lent: readonly (readonly [string, number])[];
  readonly note: string;
}

const NOTHING: Filled = { met: {}, said: [], lent: [], note: "" };

/** A kit coming back from a vessel: what it was in, and whether all of it is back. */
export default function ReturnPage() {
  const words = useWords("handOver");
  return <KitFormPage title={(kit) => words.takeBack({ kit })}>{(at) => <ReturnForm at={at} />}</KitFormPage>;
}

function ReturnForm({ at }: { readonly at: KitAtHand }) {
  const words = useWords("handOver");
  const carryOut = useCarryOut();
  const standing = useWords("standing");
  const doing = useDoing();
  const [, go] = useLocation();
  const { custody } = at.kit;
  const loan = custody.kind === "here" ? "" : custody.entry;
  const { value: filled, change, clear } = useKept(`return.${at.kit.id}.${loan}`, NOTHING);
  // Minutes ago are of now, and would be wrong after a reload.
  const [stopped, setStopped] = useState<Stopped>();
  const now = useMinute();
  const refused = useRefused();
  const fill = (part: Partial<Filled>) => change({ ...filled, ...part });
  const said: Said = new Map(filled.said);
  const counted = at.pattern.afterUse?.counted ?? [];
  const unsaid = stillToSay({ ...filled, said, ...(stopped && { stopped }) }, counted, { handOver: words, standing });
  const lent = custody.kind === "away" ? (custody.lent ?? []) : [];
  const save = async () => {
    const body = returnOf(at, filled, stopped, Date.now());
    if (!(await doing.run(() => carryOut((doingNow) => takeBack(doingNow, at.kit, body))))) return;
    clear();
    go(`/kit/${at.kit.id}`);
  };
  return (
    <>
      {custody.kind === "away" ? (
        <p>{words.wasWith({ vessel: custody.to })}</p>
      ) : (
        <Notice tone="attention" title={words.notOut()} />
      )}
      <MetPart met={filled.met} onMet={(met) => fill({ met })} />
      {isMet(filled.met) && <StoppedPart kit={at.kit} now={now} stopped={stopped} onStopped={setStopped} />}
      {counted.length > 0 && (
        <CountPart
          pattern={at.pattern}
          counted={counted}
          counting={filled.counting}
          onCounting={(counting) => fill({ counting })}
          said={said}
          onSaid={(next) => fill({ said: [...next] })}
          refused={refused}
        />
      )}
      {lent.length > 0 && (
        <LentPart
          lent={lent}
          back={new Map(filled.lent)}
          onBack={(back) => fill({ lent: [...back] })}
          refused={refused}
        />
      )}
      <TextField
        label={words.note()}
        hint={words.theySaid()}
        value={filled.note}
        onChange={(note) => fill({ note })}
        isLong
      />
      <ErrorBox error={doing.error} title={words.notWritten()} />
      {unsaid.length > 0 && (
        <p className="quiet">
          {words.stillToSay({ what: unsaid.reduce((first, next) => words.andAlso({ first, next })) })}
        </p>
      )}
      <Button
        kind="primary"
        isDisabled={refused.isAny || unsaid.length > 0}
        isBusy={doing.isBusy}
        onPress={() => void save()}
      >
        {words.isBack()}
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
  const words = useWords("handOver");
  return (
    <>
      <p>{words.wasItIn()}</p>
      <div className="kit-yes-no">
        {MET.map((what) => (
          <PickRow
            key={what}
            label={words[what]()}
            options={YES_NO.map((id) => ({ id, words: words[id]() }))}
            picked={met[what]}
            onPick={(answer) => onMet({ ...met, [what]: answer })}
          />
        ))}
      </div>
    </>
  );
}

function returnOf(
  { kit, pattern }: KitAtHand,
  { met, counting, said, lent, note }: Filled,
  ago: Stopped | undefined,
  now: number,
): Bodies["returned"] {
  const stopped = isMet(met) ? stoppedAt(ago, kit, now) : undefined;
  const counted = pattern.afterUse?.counted ?? [];
  const all = counting === "all" ? allThere(counted, new Map()) : new Map(said);
  return {
    exposure: MET.filter((what) => met[what] === "yes"),
    ...(stopped !== undefined && { stopped }),
    ...(counting !== undefined && counting !== "later" && countOf(pattern, all, uuidv7)),
    ...(lent.length > 0 && { lent: lent.map(([name, count]) => ({ name, count })) }),
    ...(note.trim() !== "" && { note: note.trim() }),
  };
}
