import { startCheckOf, type Pattern } from "#kit";
import type { CasualtyState } from "../casualty/casualty-state.ts";
import type { Finding, KitState, Turnaround } from "../state.ts";
import { benchDemands, type Benched } from "./bench-demands.ts";
import { casualtyDemands } from "./casualty-demands.ts";
import type { Demand } from "./demand.ts";
import { openingsOf } from "./openings.ts";
import { stoppingModes } from "./stopping-modes.ts";

/** A kit whose findings are told apart by the demands that failed. */
export type Failing = Benched & Pick<KitState, "id">;

/**
 * Which findings are of one demand that failed. It is one failure, however many findings were raised from it.
 *
 * In an opening: from when it did not work on, modes by which a kit does not work, and all that was raised at the proof that
 * it starts. After a casualty on which it did not work: such modes until its next opening is closed. Where it failed on a
 * casualty and again in that opening, what is found there is of the casualty.
 *
 * @param kit - as its entries tell it
 * @param casualties - of the station, open and closed
 * @param pattern - it is built to
 * @returns the demand of each finding that is of one; those of a drill's opening are of none
 * @source DERIVED: docs/methods/reliability.md
 */
export function failureOf(
  kit: Failing,
  casualties: readonly CasualtyState[],
  pattern: Pattern,
): ReadonlyMap<Finding, Demand> {
  const stopping = stoppingModes(pattern);
  const called = casualtyDemands(kit, casualties).filter(({ worked }) => !worked);
  const benched = benchDemands(kit, pattern).filter(({ worked }) => !worked);
  const start = startCheckOf(pattern)?.id;
  return new Map([
    ...benched.flatMap((demand) => paired(ofOpening(kit.findings, demand, stopping, start), demand)),
    ...called.flatMap((demand) => paired(ofCasualty(kit, demand, stopping), demand)),
  ]);
}

function paired(findings: readonly Finding[], demand: Demand): readonly (readonly [Finding, Demand])[] {
  return findings.map((finding) => [finding, demand]);
}

function ofOpening(
  findings: readonly Finding[],
  { turnaround, at }: Demand,
  stopping: ReadonlySet<string>,
  start: string | undefined,
): readonly Finding[] {
  if (turnaround === undefined) return [];
  const own = findings.filter((one) => one.turnaround === turnaround);
  return own.filter(
    ({ check, mode, raised }) =>
      (check !== undefined && check === start) || (stopping.has(mode) && Date.parse(raised.at) >= Date.parse(at)),
  );
}

function ofCasualty(kit: Failing, { at }: Demand, stopping: ReadonlySet<string>): readonly Finding[] {
  const next = nextOpening(kit, at);
  const until = next ? Date.parse(next.opened.at) : Infinity;
  return kit.findings.filter(({ mode, turnaround, raised }) => {
    if (!stopping.has(mode)) return false;
    if (turnaround !== undefined) return turnaround === next?.id;
    const time = Date.parse(raised.at);
    return time >= Date.parse(at) && time < until;
  });
}

/** The first opening after it that counts: in one of a drill faults were planted. */
function nextOpening(kit: Failing, at: string): Turnaround | undefined {
  const later = openingsOf(kit).filter(({ drill, opened }) => drill === undefined && isAfter(opened?.at, at));
  return later.toSorted((one, other) => Date.parse(one.opened.at) - Date.parse(other.opened.at))[0];
}

function isAfter(one: string | undefined, other: string): boolean {
  return one !== undefined && Date.parse(one) >= Date.parse(other);
}
