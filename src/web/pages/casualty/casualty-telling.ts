import type { Entry } from "#log";
import { isCasualtyKind, type Bodies, type CasualtyBodies } from "#readiness";
import { OUTCOMES } from "./outcomes.ts";
import { sayBoat, sayFlow, sayList } from "./say.ts";

type Tell<Kind extends keyof CasualtyBodies> = (body: Bodies[Kind]) => string;

/** What an entry of a casualty says beyond its kind; nothing for a kind this version does not know. */
export function tellCasualty({ kind, body }: Pick<Entry, "kind" | "body">): string {
  if (!isCasualtyKind(kind)) return "";
  const tell = TELLERS[kind] as Tell<never>;
  return tell(body as never);
}

const TELLERS: { readonly [Kind in keyof CasualtyBodies]: Tell<Kind> } = {
  "casualty-opened": ({ name, boat }) => `${name}, ${sayBoat(boat, "metric")}`,
  "casualty-changed": ({ boat, space, name }) =>
    [name, boat && sayBoat(boat, "metric"), space?.name].filter((part) => part !== undefined).join(", "),
  "sounding-taken": ({ text }) => text,
  "pump-set": ({ name, running, flow }) => `${name} ${running ? `pumping, ${sayFlow(flow, "metric")}` : "off"}`,
  "pump-refuelled": () => "",
  "hole-patched": ({ open }) => `${Math.round(100 * open)} % still open`,
  "stability-seen": ({ list, rollPeriod, righting }) =>
    [
      list !== undefined && sayList(list),
      rollPeriod !== undefined && `roll ${rollPeriod.toFixed(1)} s`,
      righting?.replaceAll("-", " "),
    ]
      .filter((part) => typeof part === "string")
      .join(", "),
  "fuel-smelt": ({ note }) => note ?? "",
  "fuel-cleared": ({ note }) => note,
  "casualty-noted": ({ note }) => note,
  "casualty-closed": ({ outcome, note }) => [OUTCOMES[outcome], note].filter((part) => part !== undefined).join(": "),
};
