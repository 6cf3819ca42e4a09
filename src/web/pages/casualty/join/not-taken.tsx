import { useWords } from "#web/language/index.ts";
import { useStation, type TakenSheet } from "#web/device/index.ts";
import { FaultList, Notice, Timestamp } from "#web/parts/index.ts";
import { sayKind } from "#web/parts/words/entry-words.ts";
import { nameOf } from "#web/kit-view/at-hand.ts";

type Line = TakenSheet["refused"][number];

/** So many are told one by one. */
const TOLD = 6;

/** Lines that were handed over and not taken: each with what it is, who wrote it, and why. */
export function NotTaken({ refused }: Pick<TakenSheet, "refused">) {
  const words = useWords("sheetJoin");
  if (refused.length === 0) return null;
  return (
    <Notice tone="wrong" title={words.notTakenLines({ count: refused.length })}>
      {refused.slice(0, TOLD).map((line) => (
        <article key={line.place}>
          <p>
            <Which line={line} />
          </p>
          <FaultList faults={line.faults} />
        </article>
      ))}
      {refused.length > TOLD && <p>{words.notTakenMore({ count: refused.length - TOLD })}</p>}
    </Notice>
  );
}

function Which({ line: { entry, place } }: { readonly line: Line }) {
  const words = useWords("sheetJoin");
  const kinds = useWords("entryKinds");
  const view = useStation();
  if (!entry) return <strong>{words.notALine({ place })}</strong>;
  return (
    <strong>
      {sayKind(entry.kind, kinds)}, <Timestamp at={entry.at} as="time" />, {nameOf(view, entry.by)}
    </strong>
  );
}
