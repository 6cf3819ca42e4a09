import type { Righting } from "#readiness";
import { seeStability } from "#station";
import { Section } from "../../parts/index.ts";
import { PickRow } from "./pick-row.tsx";
import { RollClock } from "./roll-clock.tsx";
import { useSheet } from "./use-sheet.ts";

const RIGHTINGS: readonly { readonly id: Righting; readonly words: string }[] = [
  { id: "comes-back", words: "Comes back" },
  { id: "slowly", words: "Slowly" },
  { id: "stays", words: "Stays over" },
];

const LISTS = [-20, -10, -5, 0, 5, 10, 20].map((degrees) => ({
  id: `${degrees}`,
  words: degrees === 0 ? "None" : `${Math.abs(degrees)}° ${degrees < 0 ? "port" : "stbd"}`,
  si: (degrees * Math.PI) / 180,
}));

/** List, how she comes back, and her roll: what no sounding tells. */
export function StabilityPart() {
  const { casualty, write } = useSheet();
  const { list, righting, rollPeriod } = casualty.stability;
  return (
    <Section title="List and roll">
      <PickRow
        label="She rolls, and then?"
        options={RIGHTINGS}
        picked={righting}
        onPick={(id) => void write("how she comes back", (doing, now) => seeStability(doing, now, { righting: id }))}
      />
      <PickRow
        label="List"
        options={LISTS}
        picked={LISTS.find(({ si }) => si === list)?.id}
        onPick={(id) =>
          void write("her list", (doing, now) =>
            seeStability(doing, now, { list: LISTS.find((one) => one.id === id)?.si ?? 0 }),
          )
        }
      />
      <RollClock
        last={rollPeriod}
        onTimed={(period) =>
          void write(`roll of ${period.toFixed(1)} s`, (doing, now) => seeStability(doing, now, { rollPeriod: period }))
        }
      />
    </Section>
  );
}
