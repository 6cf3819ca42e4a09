import { sayPercent } from "#words";
import { chanceToSee } from "#reliability";
import { sayNotDrawn, type VisitSize, type VisitWish } from "#station";
import { useStation } from "#web/device/index.ts";
import { CautionBox } from "#web/parts/caution-box.tsx";
import { EmptyState, Section, sayCount } from "#web/parts/index.ts";

interface SampleProps {
  readonly size: VisitSize;
  readonly wish: Omit<VisitWish, "seed">;
}

/** How many kits and lines, why so many, and what it costs; which ones is drawn when the visit is begun. */
export function SamplePanel({ size, wish }: SampleProps) {
  const { frame, kits } = size;
  return (
    <Section title="The sample">
      {frame.kits.length === 0 ? (
        <EmptyState title="Nothing to compare">No kit here is closed and has answers of its keeper.</EmptyState>
      ) : (
        <>
          <p className="visit-size">
            {sayCount(kits, "kit")} of {frame.kits.length}, and {sayLines(size)} in {kits === 1 ? "it" : "them"}
          </p>
          <p>{whyKits(size, wish)}</p>
          <p>{whyLines(size, wish)}</p>
          <Opening size={size} />
        </>
      )}
      <NotDrawn size={size} />
      <p className="quiet">
        Drawn are looks and readings of the stages before rigging. Runs, primes, waits, the seal on record and what was
        not possible to the keeper are left out.
      </p>
      <p className="quiet">
        The seed is written in the log before anybody sees what it draws, so nobody can draw until a sample suits.
        Anybody can draw the same from it. A visit that is begun and left stays in the log.
      </p>
    </Section>
  );
}

function sayLines({ lines: { least, most } }: VisitSize): string {
  return least.size === most.size ? sayCount(most.size, "line") : `${least.size} to ${sayCount(most.size, "line")}`;
}

function whyKits({ frame, ofKits, kits }: VisitSize, { share, chance }: SampleProps["wish"]): string {
  const all = frame.kits.length;
  const given = kits === 0 ? 0 : chanceToSee(all, ofKits.wrong, kits);
  const said = `Kits: if ${ofKits.wrong} of the ${all} (${sayPercent(share)}, rounded up) had something wrong, at least one of those is drawn with a chance of ${sayPercent(given)}.`;
  if (kits >= ofKits.size) return said;
  return `${said} For ${sayPercent(chance)} it would take ${ofKits.size}: what the visit shows is of the kits drawn.`;
}

function whyLines({ lines: { least, most } }: VisitSize, { share }: SampleProps["wish"]): string {
  const chance = Math.min(least.chance, most.chance);
  return `Lines: if ${sayPercent(share)} of those in the kits drawn (rounded up) were wrong, at least one of those is drawn with a chance of ${sayPercent(chance)} or more. How many that takes depends on the kits.`;
}

/** What opening does to the strength of the places. */
function Opening({ size: { frame, kits } }: Pick<SampleProps, "size">) {
  const { standings } = useStation();
  const ready = frame.kits.filter(({ kit }) => standings.get(kit.id)?.standing.startsWith("ready")).length;
  return (
    <CautionBox signal="NOTICE" hazard="Kits drawn are opened">
      <p>
        {ready} of the {sayCount(frame.kits.length, "kit")} drawn from can go now, and {kits === 1 ? "one" : kits} will
        be drawn. Each that is opened cannot go, until it has been turned round and sealed. Open one after another, and
        keep enough that can go.
      </p>
    </CautionBox>
  );
}

function NotDrawn({ size: { frame } }: Pick<SampleProps, "size">) {
  if (frame.left.length === 0) return null;
  return (
    <details>
      <summary>{sayCount(frame.left.length, "kit")} not drawn from</summary>
      <ul className="visit-list">
        {frame.left.map(({ kit, because }) => (
          <li key={kit.id}>
            {kit.name}: {sayNotDrawn(because)}
          </li>
        ))}
      </ul>
    </details>
  );
}
