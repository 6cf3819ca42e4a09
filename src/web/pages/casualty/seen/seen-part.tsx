import type { StabilitySeen } from "#readiness";
import { seeStability } from "#station";
import { Section } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { useSheet } from "../sheet/use-sheet.ts";
import { EDGES, LISTS, RIGHTINGS, trimPicks } from "./picks.ts";
import { RollClock } from "./roll-clock.tsx";

const NO_YES = [
  { id: "no", words: "No" },
  { id: "yes", words: "Yes" },
] as const;

const SKIPPER = [
  { id: "no", words: "Stay" },
  { id: "yes", words: "Leave" },
] as const;

/** What people see of her, which outranks every figure: what no sounding tells. */
export function SeenPart() {
  const { casualty, write } = useSheet();
  const { deckEdge, overSill, leaving, righting, rollPeriod } = casualty.stability;
  const see = (words: string, seen: StabilitySeen) => void write(words, (doing, now) => seeStability(doing, now, seen));
  return (
    <Section title="What you see of her">
      <PickRow
        label="Lowest deck edge"
        options={EDGES}
        picked={deckEdge}
        onPick={(id) => see(`deck edge ${id}`, { deckEdge: id })}
      />
      <PickRow
        label="Water in over a sill or hatch"
        options={NO_YES}
        picked={pickedOf(overSill)}
        onPick={(id) => see("water over a sill", { overSill: id === "yes" })}
      />
      <PickRow
        label="She rolls, and then?"
        options={RIGHTINGS}
        picked={righting}
        onPick={(id) => see("how she comes back", { righting: id })}
      />
      <Tilt see={see} />
      <RollClock
        last={rollPeriod}
        onTimed={(period) => see(`roll of ${period.toFixed(1)} s`, { rollPeriod: period })}
      />
      <PickRow
        label="Her own skipper says"
        options={SKIPPER}
        picked={pickedOf(leaving)}
        onPick={(id) => see(`her skipper says ${id === "yes" ? "leave" : "stay"}`, { leaving: id === "yes" })}
      />
    </Section>
  );
}

function pickedOf(told: boolean | undefined): "yes" | "no" | undefined {
  return told === undefined ? undefined : told ? "yes" : "no";
}

/** List and trim. */
function Tilt({ see }: { readonly see: (words: string, seen: StabilitySeen) => void }) {
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { list, trim } = casualty.stability;
  const trims = trimPicks(units);
  return (
    <>
      <PickRow
        label="List"
        options={LISTS}
        picked={LISTS.find(({ si }) => si === list)?.id}
        onPick={(id) => see("her list", { list: LISTS.find((one) => one.id === id)!.si })}
      />
      <PickRow
        label="Trim over her length"
        options={trims}
        picked={trims.find(({ si }) => si === trim)?.id}
        onPick={(id) => see("her trim", { trim: trims.find((one) => one.id === id)!.si })}
      />
    </>
  );
}
