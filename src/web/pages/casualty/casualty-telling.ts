import type { UnitSystem } from "#base";
import { sayDuration, sayFlow, sayPercent, type Words } from "#words";
import type { Entry } from "#log";
import { isCasualtyKind, type Bodies, type CasualtyBodies } from "#readiness";
import { sayOutcome } from "./outcomes.ts";
import { saySituation } from "./launch/situation/situation.ts";
import { saySeen, saySign } from "./seen/words.ts";
import { sayBoat } from "./sheet/say.ts";

type Told = Words["casualtyTold"];
type Tell<Kind extends keyof CasualtyBodies> = (body: Bodies[Kind], units: UnitSystem, words: Told) => string;

/** What an entry of a casualty says beyond its kind; nothing for a kind this version does not know. */
export function tellCasualty({ kind, body }: Pick<Entry, "kind" | "body">, units: UnitSystem, words: Told): string {
  if (!isCasualtyKind(kind)) return "";
  const tell = TELLERS[kind] as Tell<never>;
  return tell(body as never, units, words);
}

/** What starting and priming took: "3 pulls, 40 s to water". */
function sayStart(pulls: number | undefined, seconds: number | undefined, words: Told): string {
  const cord = pulls !== undefined && words.pulls({ count: pulls });
  const prime = seconds !== undefined && words.toWater({ duration: sayDuration(seconds) });
  return [cord, prime].filter((part) => part !== false).join(", ");
}

const TELLERS: { readonly [Kind in keyof CasualtyBodies]: Tell<Kind> } = {
  "casualty-opened": ({ name, boat, situation }, units, words) =>
    [name, sayBoat(boat, units, words), situation && saySituation(situation, words)].filter((part) => part).join(", "),
  "casualty-changed": ({ boat, space, name, situation }, units, words) =>
    [name, boat && sayBoat(boat, units, words), space?.name, situation && saySituation(situation, words)]
      .filter((part) => part !== undefined)
      .join(", "),
  "sounding-taken": ({ text }) => text,
  "pump-set": ({ name, running, flow }, units, words) =>
    running ? words.pumping({ pump: name, flow: sayFlow(flow, units) }) : words.pumpOff({ pump: name }),
  "pump-seen": ({ sign }, _, words) => saySign(sign, words),
  "pump-start-told": ({ pulls, primeSeconds }, _, words) => sayStart(pulls, primeSeconds, words),
  "pump-refuelled": () => "",
  "hole-patched": ({ open }, _, words) => words.stillOpen({ share: sayPercent(open) }),
  "stability-seen": (seen, units, words) => saySeen(seen, units, words).join(", "),
  "tow-set": ({ under }, _, words) => (under ? words.inTow() : words.castOff()),
  "fuel-smelt": ({ note }) => note ?? "",
  "fuel-cleared": ({ note }) => note,
  "casualty-joined": () => "",
  "casualty-noted": ({ note }) => note,
  "review-noted": ({ note }) => note,
  "casualty-reviewed": ({ note }) => note ?? "",
  "casualty-closed": ({ outcome, note }, _, words) => {
    const said = sayOutcome(outcome, words);
    return note === undefined ? said : words.ended({ outcome: said, note });
  },
};
