import { useWords } from "#web/language/index.ts";
import type { StabilitySeen } from "#readiness";
import { seeStability } from "#station";
import { Section } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { useSheet } from "../sheet/use-sheet.ts";
import { edgePicks, listPicks, rightingPicks, trimPicks } from "./picks.ts";
import { sayEdge } from "./words.ts";
import { RollClock } from "./roll-clock.tsx";

/** Two answers, of which one says yes. */
function noYes(no: string, yes: string) {
  return [
    { id: "no", words: no },
    { id: "yes", words: yes },
  ] as const;
}

/** What people see of her, which outranks every figure: what no sounding tells. */
export function SeenPart() {
  const words = useWords("sheetSeen");
  const told = useWords("casualtyTold");
  const { casualty, write } = useSheet();
  const { deckEdge, overSill, leaving, righting, rollPeriod } = casualty.stability;
  const see = (wrote: string, seen: StabilitySeen) => void write(wrote, (doing, now) => seeStability(doing, now, seen));
  return (
    <Section title={words.whatSeen()}>
      <PickRow
        label={words.lowestEdge()}
        options={edgePicks(words)}
        picked={deckEdge}
        onPick={(id) => see(sayEdge(id, told), { deckEdge: id })}
      />
      <PickRow
        label={words.overSill()}
        options={noYes(words.no(), words.yes())}
        picked={pickedOf(overSill)}
        onPick={(id) => see(words.wroteSill(), { overSill: id === "yes" })}
      />
      <PickRow
        label={words.rollsThen()}
        options={rightingPicks(words)}
        picked={righting}
        onPick={(id) => see(words.wroteRighting(), { righting: id })}
      />
      <Tilt see={see} />
      <RollClock
        last={rollPeriod}
        onTimed={(period) => see(words.wroteRoll({ seconds: period.toFixed(1) }), { rollPeriod: period })}
      />
      <PickRow
        label={words.skipperSays()}
        options={noYes(words.stay(), words.leave())}
        picked={pickedOf(leaving)}
        onPick={(id) => see(id === "yes" ? words.wroteLeave() : words.wroteStay(), { leaving: id === "yes" })}
      />
    </Section>
  );
}

function pickedOf(told: boolean | undefined): "yes" | "no" | undefined {
  return told === undefined ? undefined : told ? "yes" : "no";
}

/** List and trim. */
function Tilt({ see }: { readonly see: (wrote: string, seen: StabilitySeen) => void }) {
  const words = useWords("sheetSeen");
  const told = useWords("casualtyTold");
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { list, trim } = casualty.stability;
  const trims = trimPicks(units, words, told);
  const lists = listPicks(words);
  return (
    <>
      <PickRow
        label={words.list()}
        options={lists}
        picked={lists.find(({ si }) => si === list)?.id}
        onPick={(id) => see(words.wroteHerList(), { list: lists.find((one) => one.id === id)!.si })}
      />
      <PickRow
        label={words.trim()}
        options={trims}
        picked={trims.find(({ si }) => si === trim)?.id}
        onPick={(id) => see(words.wroteTrim(), { trim: trims.find((one) => one.id === id)!.si })}
      />
    </>
  );
}
