import type { Pattern } from "#kit";
import type { KitState } from "../state.ts";
import { compareDrill, type ComparedFault } from "./compare.ts";
import type { Drill } from "./drill-state.ts";

/** One planted fault that stood before one check. */
export interface CheckTrial {
  readonly check: string;
  readonly item: string;
  readonly mode: string;
  readonly found: boolean;
}

/**
 * Whether each check found the planted faults that it can find, as far as it was made before the reveal.
 *
 * Found: the fault was found, and the check was answered wrong or is where it was raised. Missed: the check was answered
 * and the fault was not found, or was found only after the check had been answered as seen right. Left out: a check that
 * was not possible or not made, and one made after another had found the fault, which may have been mended by then.
 *
 * @param kit - with its findings
 * @param drill - one of its drills, ended as compared; another tells nothing
 * @param pattern - it is built to
 * @returns one for each planted fault and check
 * @source hit/miss data of MIL-HDBK-1823A (FROM MEMORY)
 */
export function trialsOf(kit: Pick<KitState, "findings">, drill: Drill, pattern: Pattern): readonly CheckTrial[] {
  if (drill.ended?.how !== "compared") return [];
  return compareDrill(kit, drill, pattern).faults.flatMap((fault) =>
    pattern.checks
      .filter(({ finds }) => finds.includes(fault.mode))
      .flatMap(({ id: check }) => {
        const found = outcome(drill, fault, check);
        return found === undefined ? [] : [{ check, item: fault.item, mode: fault.mode, found }];
      }),
  );
}

function outcome({ answers }: Drill, { found }: ComparedFault, check: string): boolean | undefined {
  const given = Object.values(answers).filter((one) => one.check === check && one.answer !== "not-possible");
  const isWrong = given.some(({ answer }) => answer === "wrong");
  if (found && (isWrong || found.check === check)) return true;
  if (given.length === 0) return undefined;
  if (!found) return false;
  const last = Math.max(...given.map(({ mark }) => Date.parse(mark.at)));
  return last <= Date.parse(found.raised.at) ? false : undefined;
}
