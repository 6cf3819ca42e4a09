// Whether a pump that moves little is found, where the answer says so of each pump.
import { shareRow, type Row } from "./rows.ts";
import type { Moment, Watched } from "./watching.ts";

const ENOUGH_SOUNDINGS = 3;

/** What is said of the first pump, three soundings or more after it was started, with only told things happened. */
function doubtOf(moment: Moment, { pumps, moments }: Watched, state: string): string | undefined {
  const [first] = pumps;
  if (first?.state !== state || moment.truth.untold) return undefined;
  const since = moments.filter(({ at }) => at >= first.from && at <= moment.at).length;
  return since >= ENOUGH_SOUNDINGS ? moment.sheet.doubts?.[0] : undefined;
}

/** Whether dead, weak and good pumps are told apart. */
export function pumpRows(all: readonly Watched[]): readonly Row[] {
  const row = (name: string, state: string, wanted: readonly string[]): Row =>
    shareRow("pumps", name, all, (moment, watched) => {
      const doubt = doubtOf(moment, watched, state);
      return doubt === undefined ? undefined : wanted.includes(doubt);
    });
  return [
    row("of dead pumps, 3 soundings since: doubted", "dead", ["weak", "dead"]),
    row("of dead pumps, 3 soundings since: said to be dead", "dead", ["dead"]),
    row("of pumps at a quarter, 3 soundings since: doubted", "quarter", ["weak", "dead"]),
    row("of good pumps, 3 soundings since: said to be dead", "works", ["dead"]),
  ];
}
