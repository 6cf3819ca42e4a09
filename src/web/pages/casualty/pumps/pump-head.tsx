import { sayFlow } from "#words";
import type { CasualtyPump, PumpSign } from "#readiness";
import { Timestamp } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { minutesPastFuel, sayPastFuel } from "./pump-fuel.ts";
import { LOOK_AT, SIGN_WORDS } from "../seen/words.ts";
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
  const past = minutesPastFuel(pump, useMinute());
  const amiss = amissOf(pump, believed, sign);
  return (
    <div className="pump-head">
      <PumpShape running={pump.running} />
      <strong>{pump.name}</strong>
      {past > 0 && <strong className="pump-past">{sayPastFuel(past)}</strong>}
      {amiss && <strong className="pump-past">{amiss.words}</strong>}
      <span>
        <State pump={pump} believed={believed} />
      </span>
    </div>
  );
}

/** What to look at first, where it is amiss: below the buttons, which keep their place. */
export function PumpLook({ pump, believed, sign }: PumpHeadProps) {
  const amiss = amissOf(pump, believed, sign);
  const look = amiss && LOOK_AT[amiss.sign];
  return look === undefined ? null : <p className="pump-look">{look}</p>;
}

/** What a person saw comes before what soundings say of it. */
function amissOf(
  { running }: CasualtyPump,
  believed: PumpBelieved | undefined,
  sign: PumpSign | undefined,
): { readonly words: string; readonly sign: PumpSign } | undefined {
  if (sign !== undefined && sign !== "water") return { words: SIGN_WORDS[sign], sign };
  if (!running || sign === "water") return undefined;
  if (believed?.doubt === "dead") return { words: "moves little or nothing", sign: "no-water" };
  return believed?.doubt === "weak" ? { words: "moves little", sign: "weak" } : undefined;
}

function State({ pump, believed }: Omit<PumpHeadProps, "sign">) {
  const { units } = usePreferences();
  if (isUnstarted(pump)) return "aboard, not started";
  const since = pump.runs.at(-1);
  const when = since && <Timestamp at={pump.running ? since.from : (since.to ?? since.from)} as="time" />;
  if (!pump.running) return <>off since {when}</>;
  const stated = sayFlow(pump.flow, units);
  if (!believed)
    return (
      <>
        pumping, {stated} stated, since {when}
      </>
    );
  return (
    <>
      pumping, about {sayFlow(pump.flow * believed.seen.p50, units)} <small>of {stated} stated</small>
    </>
  );
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
