import { sayPercent, type Words } from "#words";
import { chanceToSee } from "#reliability";
import { sayNotDrawn, type VisitSize, type VisitWish } from "#station";
import { useStation } from "#web/device/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { EmptyState, Section } from "#web/parts/index.ts";
import { useWords } from "#web/language/index.ts";

interface SampleProps {
  readonly size: VisitSize;
  readonly wish: Omit<VisitWish, "seed">;
}

/** How many kits and lines, why so many, and what it costs; which ones is drawn when the visit is begun. */
export function SamplePanel({ size, wish }: SampleProps) {
  const words = useWords("visits");
  const { frame, kits } = size;
  return (
    <Section title={words.sample()}>
      {frame.kits.length === 0 ? (
        <EmptyState title={words.nothingToCompare()}>{words.noneClosed()}</EmptyState>
      ) : (
        <>
          <p className="visit-size">{words.size({ kits, all: frame.kits.length, lines: sayLines(size, words) })}</p>
          <p>{whyKits(size, wish, words)}</p>
          <p>{whyLines(size, wish, words)}</p>
          <Opening size={size} />
        </>
      )}
      <NotDrawn size={size} />
      <p className="quiet">{words.drawnFrom()}</p>
      <p className="quiet">{words.seedMore()}</p>
    </Section>
  );
}

function sayLines({ lines: { least, most } }: VisitSize, words: Words["visits"]): string {
  return least.size === most.size
    ? words.linesExact({ lines: most.size })
    : words.linesBetween({ least: least.size, most: most.size });
}

function whyKits(
  { frame, ofKits, kits }: VisitSize,
  { share, chance }: SampleProps["wish"],
  words: Words["visits"],
): string {
  const all = frame.kits.length;
  const given = kits === 0 ? 0 : chanceToSee(all, ofKits.wrong, kits);
  const said = words.whyKits({
    wrong: ofKits.wrong,
    all,
    share: sayPercent(share),
    chance: sayPercent(given),
  });
  if (kits >= ofKits.size) return said;
  return `${said} ${words.wouldTake({ chance: sayPercent(chance), kits: ofKits.size })}`;
}

function whyLines(
  { lines: { least, most } }: VisitSize,
  { share, chance }: SampleProps["wish"],
  words: Words["visits"],
): string {
  const isOne = least.size === most.size && least.chance === most.chance;
  return words.whyLines({ share: sayPercent(share), chance: sayPercent(isOne ? least.chance : chance) });
}

/** What opening does to the strength of the places. */
function Opening({ size: { frame, kits } }: Pick<SampleProps, "size">) {
  const words = useWords("visits");
  const { standings } = useStation();
  const ready = frame.kits.filter(({ kit }) => standings.get(kit.id)?.standing.startsWith("ready")).length;
  return (
    <CautionBox signal="NOTICE" hazard={words.areOpened()}>
      <p>{words.areOpenedMore({ ready, all: frame.kits.length, kits })}</p>
    </CautionBox>
  );
}

function NotDrawn({ size: { frame } }: Pick<SampleProps, "size">) {
  const words = useWords("visits");
  if (frame.left.length === 0) return null;
  return (
    <details>
      <summary>{words.notDrawnFrom({ count: frame.left.length })}</summary>
      <ul className="visit-list">
        {frame.left.map(({ kit, because }) => (
          <li key={kit.id}>{words.notDrawn({ kit: kit.name, because: sayNotDrawn(because) })}</li>
        ))}
      </ul>
    </details>
  );
}
