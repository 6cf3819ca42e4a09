import { useWords, withParts } from "#web/language/index.ts";
import { sayFlow, type Words } from "#words";
import type { CasualtyPump, PumpSign } from "#readiness";
import { Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { minutesPastFuel, sayPastFuel } from "./pump-fuel.ts";
import { sayLook, saySign } from "../seen/words.ts";
import { useMinute } from "#web/timing/use-minute.ts";
import { isUnstarted } from "./pump-state.ts";

/** What a pump is thought to move, as a share of what is stated. */
export interface PumpBelieved {
  readonly seen: { readonly p05: number; readonly p50: number; readonly p95: number };
  readonly doubt: "none" | "weak" | "dead";
}

interface PumpHeadProps {
  readonly pump: CasualtyPump;
  readonly believed: PumpBelieved | undefined;
  readonly sign: PumpSign | undefined;
}

/** Its name, what it does now by all that is known, and what is stated beside that. */
export function PumpHead({ pump, believed, sign }: PumpHeadProps) {
  const words = useWords("sheetPumps");
  const told = useWords("casualtyTold");
  const past = minutesPastFuel(pump, useMinute());
  const amiss = amissOf(pump, believed, sign);
  return (
    <div className="pump-head">
      <PumpShape running={pump.running} />
      <strong>{pump.name}</strong>
      {past > 0 && <strong className="pump-past">{sayPastFuel(past, words)}</strong>}
      {amiss && <strong className="pump-past">{sayAmiss(amiss, words, told)}</strong>}
      <span>
        <State pump={pump} believed={believed} sign={sign} />
      </span>
    </div>
  );
}

/** What to look at first, where it is amiss: below the buttons, which keep their place. */
export function PumpLook({ pump, believed, sign }: PumpHeadProps) {
  const words = useWords("sheetPumps");
  const amiss = amissOf(pump, believed, sign);
  const look = amiss && sayLook(amiss.sign, words);
  return look === undefined ? null : <p className="pump-look">{look}</p>;
}

/** What is wrong with a pump: seen by a person, or by what the soundings say of it. */
interface Amiss {
  readonly sign: PumpSign;
  readonly isSeen: boolean;
}

function sayAmiss({ sign, isSeen }: Amiss, words: Words["sheetPumps"], told: Words["casualtyTold"]): string {
  if (isSeen) return saySign(sign, told);
  return sign === "weak" ? words.movesLittle() : words.movesNothing();
}

/** What a person saw comes before what soundings say of it. */
function amissOf(
  { running }: CasualtyPump,
  believed: PumpBelieved | undefined,
  sign: PumpSign | undefined,
): Amiss | undefined {
  if (sign !== undefined && sign !== "water") return { sign, isSeen: true };
  if (!running || sign === "water") return undefined;
  if (believed?.doubt === "dead") return { sign: "no-water", isSeen: false };
  return believed?.doubt === "weak" ? { sign: "weak", isSeen: false } : undefined;
}

/** What was seen at its outlet comes before what it is thought to move. */
function State({ pump, believed, sign }: PumpHeadProps) {
  const words = useWords("sheetPumps");
  const { units } = usePreferences();
  if (isUnstarted(pump)) return words.notStarted();
  const since = pump.runs.at(-1);
  const when = since && <Timestamp at={pump.running ? since.from : (since.to ?? since.from)} as="time" />;
  if (!pump.running) return withParts(words.offSince, { at: when });
  if (sign === "no-water") return withParts(words.runsSince, { at: when });
  const stated = sayFlow(pump.flow, units);
  if (!believed) return withParts(words.pumpingSince, { flow: stated, at: when });
  const flow = sayFlow(pump.flow * believed.seen.p50, units);
  return withParts(words.pumpingAbout, { flow, stated: <small>{words.ofStated({ flow: stated })}</small> });
}

/** A jet while it pumps, a barred ring while it does not. */
function PumpShape({ running }: { readonly running: boolean }) {
  return (
    <svg className="pump-shape" viewBox="0 0 24 24" aria-hidden="true" fill="none" stroke="currentColor">
      {running ? (
        <path d="M2 9h9c7 0 10 4 10 12M2 15h7c4 0 6 2 6 6" strokeWidth="3" />
      ) : (
        <path d="M12 3a9 9 0 1 0 .01 0zM6 18 18 6" strokeWidth="2.5" />
      )}
    </svg>
  );
}
