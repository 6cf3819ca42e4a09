import { useWords } from "#web/language/index.ts";
import type { OnSceneAnswer } from "#questions";
import type { CasualtyOutcome } from "#readiness";
import { closeCasualty, setPump } from "#station";
import { useState } from "react";
import { Button, Section, TextField } from "#web/parts/index.ts";
import { outcomeOptions } from "../outcomes.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { useSheet } from "../sheet/use-sheet.ts";
import { deliveredOf } from "./delivered.ts";
import { isAllSaid, leftOf, stillThere, type Said } from "./left-aboard.ts";

const NOTHING: Said = new Map();

/** Closes the sheet, once it was said of every running pump and every kit aboard what becomes of it. */
export function ClosePart({ answer }: { readonly answer: OnSceneAnswer | undefined }) {
  const words = useWords("casualty");
  const told = useWords("casualtyTold");
  const { casualty, view, isBusy } = useSheet();
  const [outcome, setOutcome] = useState<CasualtyOutcome>();
  const [note, setNote] = useState("");
  const [pumps, setPumps] = useState(NOTHING);
  const [kits, setKits] = useState(NOTHING);
  const there = stillThere(casualty, view.kits);
  const close = useClosing(pumps, kits, answer);
  const runs: TwoWays = { asks: words.runsByLog, stays: words.leftRunning(), goes: words.stopped() };
  const stays: TwoWays = { asks: words.isAboard, stays: words.staysAboard(), goes: words.comesWithUs() };
  const isSaid = isAllSaid(there, pumps, kits);
  return (
    <Section title={words.close()}>
      <PickRow label={words.howEnded()} options={outcomeOptions(told)} picked={outcome} onPick={setOutcome} />
      {outcome !== undefined && (
        <>
          <Each of={there.running.map(({ pump, name }) => [pump, name])} words={runs} said={pumps} onSay={setPumps} />
          <Each of={there.aboard.map(({ id, name }) => [id, name])} words={stays} said={kits} onSay={setKits} />
        </>
      )}
      <TextField label={words.noteIfAny()} value={note} onChange={setNote} isLong />
      {outcome !== undefined && !isSaid && <p className="quiet">{words.stillToSay()}</p>}
      <Button
        wide
        tone="grave"
        isBusy={isBusy}
        isDisabled={outcome === undefined || !isSaid}
        onPress={() => outcome !== undefined && void close(outcome, note.trim())}
      >
        {words.close()}
      </Button>
    </Section>
  );
}

interface TwoWays {
  readonly asks: (of: { readonly name: string }) => string;
  readonly stays: string;
  readonly goes: string;
}

interface EachProps {
  readonly of: readonly (readonly [id: string, name: string])[];
  readonly words: TwoWays;
  readonly said: Said;
  readonly onSay: (said: Said) => void;
}

/** One question of each: does it stay? */
function Each({ of, words: { asks, stays, goes }, said, onSay }: EachProps) {
  const options = [
    { id: "goes", words: goes },
    { id: "stays", words: stays },
  ] as const;
  return of.map(([id, name]) => {
    const told = said.get(id);
    const picked = told === undefined ? undefined : told ? "stays" : "goes";
    return (
      <PickRow
        key={id}
        label={asks({ name })}
        options={options}
        picked={picked}
        onPick={(way) => onSay(new Map([...said, [id, way === "stays"]]))}
      />
    );
  });
}

/** Writes the pumps that were stopped, then the closing with what was left. */
function useClosing(
  pumps: Said,
  kits: Said,
  answer: OnSceneAnswer | undefined,
): (outcome: CasualtyOutcome, note: string) => Promise<void> {
  const words = useWords("casualty");
  const { casualty, view, write } = useSheet();
  return async (outcome, note) => {
    const { running, aboard } = stillThere(casualty, view.kits);
    for (const { runs: _runs, filled: _filled, ...setting } of running.filter(
      ({ pump }) => pumps.get(pump) === false,
    )) {
      const stopped = words.wroteStopped({ pump: setting.name });
      if (!(await write(stopped, (doing, now) => setPump(doing, now, { ...setting, running: false })))) return;
    }
    const leftRunning = leftOf(
      running.map(({ pump }) => pump),
      pumps,
    );
    const leftAboard = leftOf(
      aboard.map(({ id }) => id),
      kits,
    );
    const delivered = deliveredOf(casualty, answer);
    const body = {
      outcome,
      ...(note !== "" && { note }),
      ...(leftRunning.length > 0 && { leftRunning }),
      ...(leftAboard.length > 0 && { leftAboard }),
      ...(delivered.length > 0 && { delivered }),
    };
    await write(words.wroteClosed(), (doing, now) => closeCasualty(doing, now, body));
  };
}
