import { useWords } from "#web/language/index.ts";
import type { CasualtyState } from "#readiness";
import type { PumpReview } from "#station";
import type { StationView } from "#web/device/index.ts";
import { ButtonLink, ButtonRow } from "#web/parts/button.tsx";
import { EmptyState, Section } from "#web/parts/index.ts";
import { sayPump } from "./review-words.ts";

interface PumpsPartProps {
  readonly pumps: readonly PumpReview[];
  readonly view: StationView;
  readonly casualty: CasualtyState;
}

/** Each pump: how soon it gave water, what that took, and the way to a finding or a word about its pattern. */
export function PumpsPart({ pumps, view, casualty }: PumpsPartProps) {
  const words = useWords("review");
  return (
    <Section title={words.pumps()}>
      {pumps.length === 0 && <EmptyState title={words.noPumps()} />}
      {pumps.map((pump) => (
        <div key={pump.pump} className="kit-trend">
          <h3>{pump.name}</h3>
          <ul>
            {sayPump(pump, words).map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
          <FindingLink pump={pump} view={view} casualty={casualty} />
        </div>
      ))}
    </Section>
  );
}

function FindingLink({ pump, view, casualty }: Omit<PumpsPartProps, "pumps"> & { readonly pump: PumpReview }) {
  const words = useWords("review");
  const kit = view.kits.find(({ id }) => id === pump.kit);
  if (!kit) return null;
  const note = encodeURIComponent(words.seenOn({ casualty: casualty.name }));
  return (
    <ButtonRow>
      <ButtonLink to={`/kit/${kit.id}/finding?note=${note}`}>{words.raise({ kit: kit.name })}</ButtonLink>
      <ButtonLink to={`/kit/${kit.id}`}>{words.kitPage({ kit: kit.name })}</ButtonLink>
    </ButtonRow>
  );
}
