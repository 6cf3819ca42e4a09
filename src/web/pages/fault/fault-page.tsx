import { allSteps, TROUBLE_SIGNS, type Step, type Trouble } from "#kit";
import type { CasualtyState } from "#readiness";
import { findingsByMode, minutesSinceRun, nextPumps, troubleAfterRun, type Where } from "#station";
import { useParams, useSearch } from "wouter";
import { useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Button, Notice, Page } from "#web/parts/index.ts";
import { Cautions } from "#web/parts/caution-box.tsx";
import { findKit, type KitAtHand } from "#web/kit-view/at-hand.ts";
import { useKept } from "#web/act/use-kept.ts";
import { NoSuchKit } from "#web/kit-view/no-such-kit.tsx";
import { useNow } from "#web/timing/index.ts";
import type { FaultShared, Finding } from "./fault-shared.ts";
import { FaultEnd } from "./fault-end.tsx";
import { FaultTry } from "./fault-try.tsx";
import "./fault.css";

const NOTHING: Finding = { sign: "", tried: [], ended: "", refused: [] };

/** A kit that does not do what it should: one thing to try at a time, until it does or the next pump is taken. */
export default function FaultPage() {
  const { id = "" } = useParams<{ readonly id: string }>();
  const asked = new URLSearchParams(useSearch());
  const at = findKit(useStation(), id);
  const words = useWords("fault");
  const frame = useWords("frame");
  if (!at) return <NoSuchKit />;
  const casualty = asked.get("casualty");
  const line = Number(asked.get("line"));
  const back =
    casualty !== null
      ? { to: `/casualty/${casualty}`, label: frame.casualty() }
      : line > 0
        ? { to: `/kit/${id}/turnaround?line=${line}`, label: words.line({ line: String(line) }) }
        : { to: `/kit/${id}`, label: at.kit.name };
  const isFuelSmelt = at.view.casualties.some((one) => one.id === casualty && one.fuelSmelt !== undefined);
  return (
    <Page title={words.title({ kit: at.kit.name })} back={back}>
      {isFuelSmelt ? (
        <Cautions ids={["petrol-vapour"]} />
      ) : (
        <FaultFinding
          at={at}
          asked={asked.get("sign") ?? ""}
          casualty={casualty ?? undefined}
          from={allSteps(at.pattern).find((step) => step.line === line)}
        />
      )}
    </Page>
  );
}

interface FaultFindingProps {
  readonly at: KitAtHand;
  /** The sign that the way here named. */
  readonly asked: string;
  /** On which it failed: each is a finding of its own. On the bench where absent. */
  readonly casualty: string | undefined;
  readonly from: Step | undefined;
}

function FaultFinding({ at, asked, casualty, from }: FaultFindingProps) {
  const words = useWords("fault");
  const sheet = at.view.casualties.find(({ id }) => id === casualty);
  const where: Where = casualty === undefined ? "bench" : "boat";
  const kept = useKept(`fault.${at.kit.id}.${casualty ?? where}`, { ...NOTHING, sign: asked });
  const finding = findingFor(kept.value, asked);
  const standing = sheet ? nextPumps(sheet, at.view.kits, at.kit.id) : [];
  const others = standing.filter((name) => !finding.refused.includes(name));
  const ranAgo = useRanAgo(at, sheet);
  const troubles = at.pattern.troubles ?? [];
  const trouble = troubles.find(({ sign }) => sign === finding.sign);
  const found = findingsByMode(at.view.kits, at.kit.pattern);
  if (troubles.length === 0) return <Notice tone="plain" title={words.nothingToTry()} />;
  if (!trouble) return <SignChoice troubles={troubles} onChoose={(sign) => kept.change({ ...NOTHING, sign })} />;
  const shared: FaultShared = {
    at,
    trouble: troubleAfterRun(trouble, ranAgo, finding.tried),
    found,
    // Where there is no other pump to take, what is left to try here is all there is.
    where: others.length === 0 ? "bench" : where,
    nextPumps: others,
    ranAgo,
    ...(sheet && { atSea: { casualty: sheet.id, otherKits: sheet.situation?.otherKits } }),
    from,
    finding,
    onChange: kept.change,
    onBegin: () => kept.change(NOTHING),
  };
  return finding.ended === "" ? <FaultTry {...shared} /> : <FaultEnd {...shared} />;
}

/** Minutes since its engine ran, as the sheet or the open turnaround knows; told once, so that no try changes under a hand. */
function useRanAgo({ kit, pattern }: KitAtHand, sheet: CasualtyState | undefined): number | undefined {
  const now = useNow(false);
  const pump = sheet?.pumps.find((one) => one.kit === kit.id);
  return minutesSinceRun(pattern, { pump, turnaround: kit.turnaround }, now);
}

/** What was tried so far; from the beginning where the way here names another sign than the one it was tried for. */
function findingFor(kept: Finding, asked: string): Finding {
  const isOther = asked !== "" && kept.sign !== asked;
  return isOther ? { ...NOTHING, sign: asked } : kept;
}

interface SignChoiceProps {
  readonly troubles: readonly Trouble[];
  readonly onChoose: (sign: string) => void;
}

/** What is seen, in words a stranger would use. */
function SignChoice({ troubles, onChoose }: SignChoiceProps) {
  const words = useWords("fault");
  const ordered = TROUBLE_SIGNS.flatMap((sign) => troubles.filter((one) => one.sign === sign));
  return (
    <section className="fault" aria-label={words.whatIsSeen()}>
      <h2>{words.whatDoesItDo()}</h2>
      {ordered.map(({ sign, name }) => (
        <Button key={sign} kind="primary" wide onPress={() => onChoose(sign)}>
          {name}
        </Button>
      ))}
    </section>
  );
}
