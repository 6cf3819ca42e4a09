import { useWords } from "#web/language/index.ts";
import type { StabilitySeen } from "#readiness";
import { seeStability } from "#station";
import { Section } from "#web/parts/index.ts";
import { usePreferences } from "#web/theme/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { useSheet } from "../sheet/use-sheet.ts";
import { DEGREE, edgePicks, listPicks, rightingPicks, trimPicks } from "./picks.ts";
import { sayEdge } from "./words.ts";
import { TypedList } from "./typed-list.tsx";
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
  const see = (wrote: string, seen: StabilitySeen) => write(wrote, (doing, now) => seeStability(doing, now, seen));
  return (
    <Section title={words.whatSeen()}>
      <PickRow
        label={words.lowestEdge()}
        options={edgePicks(words)}
        picked={deckEdge}
        onPick={(id) => void see(sayEdge(id, told), { deckEdge: id })}
      />
      <PickRow
        label={words.overSill()}
        options={noYes(words.no(), words.yes())}
        picked={pickedOf(overSill)}
        onPick={(id) => void see(words.wroteSill(), { overSill: id === "yes" })}
      />
      <PickRow
        label={words.rollsThen()}
        options={rightingPicks(words)}
        picked={righting}
        onPick={(id) => void see(words.wroteRighting(), { righting: id })}
      />
      <Tilt see={see} />
      <RollClock
        last={rollPeriod}
        onTimed={(period) => void see(words.wroteRoll({ seconds: period.toFixed(1) }), { rollPeriod: period })}
      />
      <PickRow
        label={words.skipperSays()}
        options={noYes(words.stay(), words.leave())}
        picked={pickedOf(leaving)}
        onPick={(id) => void see(id === "yes" ? words.wroteLeave() : words.wroteStay(), { leaving: id === "yes" })}
      />
    </Section>
  );
}

function pickedOf(told: boolean | undefined): "yes" | "no" | undefined {
  return told === undefined ? undefined : told ? "yes" : "no";
}

/** List and trim. */
function Tilt({ see }: { readonly see: (wrote: string, seen: StabilitySeen) => Promise<boolean> }) {
  const words = useWords("sheetSeen");
  const told = useWords("casualtyTold");
  const { casualty } = useSheet();
  const { units } = usePreferences();
  const { list, trim } = casualty.stability;
  const trims = trimPicks(units, words, told);
  const lists = listPicks(words, list);
  const seeList = (si: number) => see(words.wroteHerList(), { list: si });
  return (
    <>
      <PickRow
        label={words.list()}
        options={lists}
        picked={list === undefined ? undefined : lists.find(({ si }) => Math.abs(si - list) < DEGREE / 2)?.id}
        onPick={(id) => void seeList(lists.find((one) => one.id === id)!.si)}
      />
      <TypedList onList={seeList} />
      <PickRow
        label={words.trim()}
        options={trims}
        picked={trims.find(({ si }) => si === trim)?.id}
        onPick={(id) => void see(words.wroteTrim(), { trim: trims.find((one) => one.id === id)!.si })}
      />
    </>
  );
}
