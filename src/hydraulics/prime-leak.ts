import { InputError, printGiven } from "#base";
import { findRoot } from "#numerics";
import { STANDARD_GRAVITY } from "#water";
import { greatestLift, prime, primingOf, type PrimingCase } from "./priming.ts";

/** What a timed prime says about air leaks. */
export type PrimeLeak =
  | { readonly kind: "as-expected"; readonly expectedSeconds: number; readonly because: string }
  | {
      readonly kind: "leaks";
      readonly expectedSeconds: number;
      /** Free air that leaks in [m³/s]. */
      readonly airLeak: number;
      /** Share of what the primer takes out [1]. */
      readonly share: number;
      /** With this leak it will not prime above [m]. */
      readonly greatestLift: number;
      readonly because: string;
      /** Where to look, the quickest and likeliest first. */
      readonly lookFirst: readonly string[];
    }
  | { readonly kind: "cannot-prime"; readonly because: string };

/** A prime this much slower than computed still counts as expected [1]: strokes by hand are not a clock's. */
const ALLOWED_SLOWNESS = 1.25;

const OPEN_PATHS = [
  "Is the strainer deep under water, and does it stay there when she rolls?",
  "Is the drain cock shut and the filler cap on with its gasket?",
  "Is a gasket missing in a suction coupling?",
  "Is the casing filled to the top?",
];
const SMALL_PATHS = [
  "Re-seat every suction coupling: gasket clean, both levers fully over.",
  "Listen and feel along the hose for a hiss; wet each joint.",
  "Look at the shaft seal and the flap valve.",
  "Is there a hump in the hose that holds air?",
];

/**
 * The air leak a slow prime implies, and where to look first.
 *
 * @param given - the priming as it was meant; its own leak is not used
 * @param observed - seconds from first stroke to water, [s]
 * @returns the leak of free air that makes the computed time equal the observed one
 * @range as `primingOf`; a primer with worn valves looks like a leak
 * @source DERIVED: inverse of `primingOf`; the looking order is common practice
 * @throws InputError HY-140 when the time is not above 0, or the case's faults
 */
export function leakFromPrime(given: PrimingCase, observed: number): PrimeLeak {
  requireSeconds(observed);
  const tight = primingOf({ ...given, airLeak: 0 });
  if (tight.kind === "will-not-prime") return { kind: "cannot-prime", because: tight.because };
  const expectedSeconds = tight.seconds;
  if (observed <= ALLOWED_SLOWNESS * expectedSeconds) {
    const because = `about ${expectedSeconds.toFixed(0)} s were to be expected`;
    return { kind: "as-expected", expectedSeconds, because };
  }
  return leaks(given, expectedSeconds, leakFor(given, observed));
}

function leaks(given: PrimingCase, expectedSeconds: number, airLeak: number): PrimeLeak {
  const share = airLeak / (given.stroke * given.strokeRate);
  return {
    kind: "leaks",
    expectedSeconds,
    airLeak,
    share,
    greatestLift: greatestLift({ ...given, airLeak }),
    because: `about ${expectedSeconds.toFixed(0)} s were to be expected; air leaks in at ${(100 * share).toFixed(0)} % of what the primer takes out`,
    lookFirst: share > 0.4 ? [...OPEN_PATHS, ...SMALL_PATHS] : [...SMALL_PATHS, ...OPEN_PATHS],
  };
}

/** The leak at which priming takes this long, between none and the one that stops it altogether. */
function leakFor(given: PrimingCase, observed: number): number {
  const column = given.water.density * STANDARD_GRAVITY * Math.max(0, given.lift);
  const most = (given.stroke * given.strokeRate * (given.airPressure - column)) / given.airPressure;
  const late = (airLeak: number): number => {
    const outcome = prime({ ...given, airLeak });
    return (outcome.kind === "primes" ? outcome.seconds : 1e9) - observed;
  };
  const root = findRoot(late, 0, most, { rootTolerance: 1e-12 });
  return root.kind === "not-bracketed" ? most : root.root;
}

function requireSeconds(observed: number): void {
  if (observed > 0 && Number.isFinite(observed)) return;
  const allowed = "more than 0 s";
  throw new InputError([
    { code: "HY-140", field: "seconds", got: printGiven(observed), allowed, remedy: "Give the seconds timed." },
  ]);
}
