import { formatDate } from "#base";
import { ButtonLink, Section, StandingMark } from "#web/parts/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** Said once a turnaround is closed: what the kit is good for now, why, and the day that ends it. */
export function ClosedNews({ at }: { readonly at: KitAtHand }) {
  const standing = at.view.standings.get(at.kit.id);
  if (!standing) return null;
  return (
    <Section title={`${at.kit.name} is closed`} beside={<StandingMark standing={standing.standing} size="large" />}>
      <ul className="record-reasons">
        {standing.because.map((reason) => (
          <li key={reason.text}>{reason.text}</li>
        ))}
      </ul>
      {standing.limits.map((limit) => (
        <p key={limit}>
          <strong>Limit:</strong> {limit}
        </p>
      ))}
      {standing.lapse && (
        <p className="record-lapse">
          Until <strong>{formatDate(standing.lapse.day)}</strong>: {standing.lapse.what}
        </p>
      )}
      <ButtonLink to="/">To the board</ButtonLink>
    </Section>
  );
}
