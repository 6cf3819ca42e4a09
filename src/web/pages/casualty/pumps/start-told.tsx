import { useWords } from "#web/language/index.ts";
import type { CasualtyPump } from "#readiness";
import { tellStart } from "#station";
import { PickRow } from "#web/parts/pick-row.tsx";
import { useSheet } from "../sheet/use-sheet.ts";

const PULLS = [1, 2, 3, 4, 6, 10].map((pulls) => ({ id: String(pulls), words: String(pulls) }));
const PRIMES = [15, 30, 45, 60, 90, 120].map((seconds) => ({ id: String(seconds), words: `${seconds} s` }));

/** What starting and priming one of our kits took: kept for the kit's own runs, asked where nobody is hurried. */
export function StartTold({ pump, hasCord }: { readonly pump: CasualtyPump; readonly hasCord: boolean }) {
  const words = useWords("sheetPumps");
  const { casualty, write } = useSheet();
  const told = (casualty.starts ?? []).filter((one) => one.pump === pump.pump);
  const pulls = told.findLast((one) => one.pulls !== undefined)?.pulls;
  const prime = told.findLast((one) => one.primeSeconds !== undefined)?.primeSeconds;
  const tell = (wrote: string, part: { readonly pulls: number } | { readonly primeSeconds: number }) =>
    void write(wrote, (doing, now) => tellStart(doing, now, { pump: pump.pump, ...part }));
  return (
    <>
      {hasCord && (
        <PickRow
          label={words.pulls()}
          options={PULLS}
          picked={pulls === undefined ? undefined : String(pulls)}
          onPick={(id) => tell(words.wrotePulls({ pump: pump.name, count: id }), { pulls: Number(id) })}
        />
      )}
      {hasCord && (
        <PickRow
          label={words.prime()}
          options={PRIMES}
          picked={prime === undefined ? undefined : String(prime)}
          onPick={(id) => tell(words.wrotePrime({ pump: pump.name, seconds: id }), { primeSeconds: Number(id) })}
        />
      )}
    </>
  );
}
