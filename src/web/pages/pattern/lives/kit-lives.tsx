import type { Pattern } from "#kit";
import { nextOpening, outlookOf } from "#readiness";
import { kitLasts, type ItemLives, type KitLasts, type LivesLog } from "#station";
import { useMemo } from "react";
import { useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { sayLong } from "../interval/interval-words.ts";
import { ItemLink } from "./item-link.tsx";
import { sayLasting, type LivesWords } from "./lives-words.ts";
import { sayNextOpening } from "./next-opening-words.ts";
import { useLivesWords } from "./use-lives-words.ts";

const itemOf = ({ item }: KitLasts) => item.id;

/** So many of those least likely to last are shown at once. */
const SHOWN = 8;

interface KitLivesProps {
  readonly own: LivesLog["kits"][number];
  /** The newest version. */
  readonly pattern: Pattern;
  readonly lives: readonly ItemLives[];
  readonly log: LivesLog;
}

/** Which items of one kit last to its next opening, and what that opening is. */
export function KitLives({ own, pattern, lives, log }: KitLivesProps) {
  const words = useLivesWords();
  const { today } = useStation();
  const standing = useWords("standing");
  const { kit } = own;
  const built = log.patterns.get(kit.pattern) ?? pattern;
  const next = useMemo(
    () => nextOpening(kit, built, outlookOf(kit, built, log.policy), log.policy, today),
    [kit, built, log.policy, today],
  );
  const isAhead = next !== undefined && next.kind !== "now";
  const lasting = isAhead ? kitLasts(own, pattern, lives, log, next.day) : [];
  return (
    <Section id="kit" title={words.lives.untilNext({ kit: kit.name })}>
      <p>{sayNextOpening(next, today, words, standing)}</p>
      {isAhead && <Lasting lasting={lasting} pattern={pattern} />}
    </Section>
  );
}

function Lasting({ lasting, pattern }: { readonly lasting: readonly KitLasts[]; readonly pattern: Pattern }) {
  const words = useLivesWords();
  const columns = kitColumns(pattern, words);
  if (lasting.length === 0) return <p>{words.lives.nothingLooked()}</p>;
  return (
    <>
      <p>{words.lives.leastFirst()}</p>
      <Table
        caption={words.lives.lastsToNext()}
        isCaptionHidden
        columns={columns}
        rows={lasting.slice(0, SHOWN)}
        rowKey={itemOf}
      />
      {lasting.length > SHOWN && (
        <details className="kit-table">
          <summary>{words.lives.otherItems({ count: lasting.length - SHOWN })}</summary>
          <Table
            caption={words.lives.otherItemsOf()}
            isCaptionHidden
            columns={columns}
            rows={lasting.slice(SHOWN)}
            rowKey={itemOf}
          />
        </details>
      )}
    </>
  );
}

function kitColumns(pattern: Pattern, words: LivesWords): readonly Column<KitLasts>[] {
  return [
    { key: "item", head: words.lives.item(), cell: ({ item }) => <ItemLink pattern={pattern} item={item} /> },
    { key: "age", head: words.lives.age(), align: "figures", cell: ({ age }) => sayLong(age, words.interval) },
    { key: "lasts", head: words.lives.lastsToNext(), align: "figures", cell: ({ lasts }) => sayLasting(lasts, words) },
  ];
}
