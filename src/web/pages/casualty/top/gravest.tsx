import { useWords } from "#web/language/index.ts";
import type { OnSceneAnswer } from "#questions";
import { CautionLine } from "#web/parts/caution-box.tsx";
import { useSheet } from "../sheet/use-sheet.ts";

type Leave = OnSceneAnswer["leave"];
type Warning = OnSceneAnswer["warnings"][number];

/** What the line at the top says. */
const SAID_ABOVE = ["fuel-smelt", "stale"];
/** What is said of the soundings themselves, and asks for another: not while fuel is smelt. */
const OF_SOUNDINGS = [
  "above-deck",
  "does-not-fit",
  "fall-has-slowed",
  "falls-unpumped",
  "pump-will-suck-air",
  "few-readings",
];

/** What is said of an answer besides its word, gravest first; nothing that asks below while fuel is smelt. */
export function useWarnings(answer: OnSceneAnswer | undefined): readonly Warning[] {
  const { casualty } = useSheet();
  const quiet = casualty.fuelSmelt ? [...SAID_ABOVE, ...OF_SOUNDINGS] : SAID_ABOVE;
  return (answer?.warnings ?? []).filter(({ kind }) => !quiet.includes(kind));
}

/**
 * Signs to leave her by, and the gravest warning: a line each, and one alone where the word at the top is that she be
 * left. In the page before there is any, so that it is read out.
 */
export function Gravest({ answer }: { readonly answer: OnSceneAnswer | undefined }) {
  const words = useWords("sheetTop");
  const [first] = useWarnings(answer);
  const leave = answer && answer.leave.kind !== "no-sign" ? answer.leave : undefined;
  const isDanger = first?.signal === "DANGER";
  const isGraver = isDanger && leave?.kind === "be-ready";
  const isSaidAbove = isDanger && leave?.kind === "now" && leave.seen;
  return (
    <section className="warnings" aria-live="polite" aria-label={words.gravest()}>
      {isGraver && <WarningLine warning={first} />}
      {leave && !isSaidAbove && <LeaveLine leave={leave} />}
      {first && !isGraver && <WarningLine warning={first} />}
    </section>
  );
}

/** All the others, a line each. */
export function OtherWarnings({ answer }: { readonly answer: OnSceneAnswer | undefined }) {
  const words = useWords("sheetTop");
  const others = useWarnings(answer).slice(1);
  return (
    <section className="warnings" aria-live="polite" aria-label={words.warnings()}>
      {others.map((warning) => (
        <WarningLine key={warning.kind} warning={warning} />
      ))}
    </section>
  );
}

function WarningLine({ warning: { signal, hazard, says } }: { readonly warning: Warning }) {
  return (
    <CautionLine signal={signal} hazard={hazard}>
      <p>{says}</p>
    </CautionLine>
  );
}

function LeaveLine({ leave: { kind, because } }: { readonly leave: Leave }) {
  const words = useWords("sheetTop");
  const isNow = kind === "now";
  return (
    <CautionLine signal={isNow ? "DANGER" : "WARNING"} hazard={isNow ? words.leaveNow() : words.leaveReady()}>
      <p>{because.join(" ")}</p>
      <p>{isNow ? words.leaveNowMore() : words.leaveReadyMore()}</p>
    </CautionLine>
  );
}
