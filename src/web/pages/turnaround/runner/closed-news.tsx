import { standingInWords } from "#readiness";
import { useWords, withParts } from "#web/language/index.ts";
import { ButtonLink, sayDate, Section, StandingMark } from "#web/parts/index.ts";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** Said once a turnaround is closed: what the kit is good for now, why, and the day that ends it. */
export function ClosedNews({ at }: { readonly at: KitAtHand }) {
  const words = useWords("turnaroundEnd");
  const standingWords = useWords("standing");
  const stands = at.view.standings.get(at.kit.id);
  if (!stands) return null;
  const standing = standingInWords(stands, standingWords);
  return (
    <Section
      title={words.isClosed({ kit: at.kit.name })}
      beside={<StandingMark standing={standing.standing} size="large" />}
    >
      <ul className="record-reasons">
        {standing.because.map((reason) => (
          <li key={reason.text}>{reason.text}</li>
        ))}
      </ul>
      {standing.limits.map((limit) => (
        <p key={limit}>
          <strong>{words.limitName()}</strong> {limit}
        </p>
      ))}
      {standing.lapse && (
        <p className="record-lapse">
          {withParts((part) => words.until({ ...part, what: standing.lapse!.what }), {
            day: <strong>{sayDate(standing.lapse.day)}</strong>,
          })}
        </p>
      )}
      <ButtonLink to="/">{words.toBoard()}</ButtonLink>
    </Section>
  );
}
