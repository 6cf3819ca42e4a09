import type { UnitSystem } from "#base";
import { sayDuration, sayFlow, sayPercent } from "#words";
import type { Entry } from "#log";
import { isCasualtyKind, type Bodies, type CasualtyBodies } from "#readiness";
import { sayCount } from "#web/parts/words/say-count.ts";
import { OUTCOMES } from "./outcomes.ts";
import { saySituation } from "./launch/situation/situation.ts";
import { saySeen, SIGN_WORDS } from "./seen/words.ts";
import { sayBoat } from "./sheet/say.ts";

type Tell<Kind extends keyof CasualtyBodies> = (body: Bodies[Kind], units: UnitSystem) => string;

/** What an entry of a casualty says beyond its kind; nothing for a kind this version does not know. */
export function tellCasualty({ kind, body }: Pick<Entry, "kind" | "body">, units: UnitSystem): string {
  if (!isCasualtyKind(kind)) return "";
  const tell = TELLERS[kind] as Tell<never>;
  return tell(body as never, units);
}

/** What starting and priming took: "3 pulls, 40 s to water". */
function sayStart(pulls: number | undefined, seconds: number | undefined): string {
  const cord = pulls !== undefined && sayCount(pulls, "pull");
  const prime = seconds !== undefined && `${sayDuration(seconds)} to water`;
  return [cord, prime].filter((part) => part !== false).join(", ");
}

const TELLERS: { readonly [Kind in keyof CasualtyBodies]: Tell<Kind> } = {
  "casualty-opened": ({ name, boat, situation }, units) =>
    [name, sayBoat(boat, units), situation && saySituation(situation)].filter((part) => part).join(", "),
  "casualty-changed": ({ boat, space, name, situation }, units) =>
    [name, boat && sayBoat(boat, units), space?.name, situation && saySituation(situation)]
      .filter((part) => part !== undefined)
      .join(", "),
  "sounding-taken": ({ text }) => text,
  "pump-set": ({ name, running, flow }, units) => `${name} ${running ? `pumping, ${sayFlow(flow, units)}` : "off"}`,
  "pump-seen": ({ sign }) => SIGN_WORDS[sign],
  "pump-start-told": ({ pulls, primeSeconds }) => sayStart(pulls, primeSeconds),
  "pump-refuelled": () => "",
  "hole-patched": ({ open }) => `${sayPercent(open)} still open`,
  "stability-seen": (seen, units) => saySeen(seen, units).join(", "),
  "tow-set": ({ under }) => (under ? "taken in tow" : "cast off"),
  "fuel-smelt": ({ note }) => note ?? "",
  "fuel-cleared": ({ note }) => note,
  "casualty-joined": () => "",
  "casualty-noted": ({ note }) => note,
  "review-noted": ({ note }) => note,
  "casualty-reviewed": ({ note }) => note ?? "",
  "casualty-closed": ({ outcome, note }) => [OUTCOMES[outcome], note].filter((part) => part !== undefined).join(": "),
};
