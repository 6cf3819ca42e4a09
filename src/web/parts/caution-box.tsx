import { findCaution, type Caution, type SignalWord } from "#base";
import type { ReactNode } from "react";
import { useIsPhone } from "./more-on-phone.tsx";
import "./caution-box.css";

export interface CautionBoxProps {
  /** DANGER, WARNING, CAUTION or NOTICE, only as ANSI Z535 and ISO 3864-2 define them. */
  readonly signal: SignalWord;
  /** A few words naming the hazard. */
  readonly hazard?: string;
  readonly children: ReactNode;
}

/** A caution: signal word on its own colour beside its sign, then what it is, what it does, how to avoid it. */
export function CautionBox({ signal, hazard, children }: CautionBoxProps) {
  return (
    <section className={`caution caution-${signal.toLowerCase()}`} aria-label={`${signal}: ${hazard ?? ""}`}>
      <p className="caution-signal">
        <SignalSign signal={signal} />
        <span>{signal}</span>
        {hazard !== undefined && <span className="caution-hazard">{hazard}</span>}
      </p>
      <div className="caution-words">{children}</div>
    </section>
  );
}

export interface CautionLineProps extends CautionBoxProps {
  readonly hazard: string;
  /** What to do, in a few words, on the line itself. */
  readonly short?: string;
}

/** A caution as one line; a tap opens the rest of it. */
export function CautionLine({ signal, hazard, short, children }: CautionLineProps) {
  return (
    <details className={`caution-line caution-${signal.toLowerCase()}`}>
      <summary>
        <span className="caution-line-signal">
          <SignalSign signal={signal} />
          {signal}
        </span>
        <span>
          <strong>{hazard}</strong>
          {short !== undefined && `: ${short}`}
        </span>
      </summary>
      <div className="caution-words">{children}</div>
    </details>
  );
}

/** A caution of the program's own list. */
export function CautionText({ caution }: { readonly caution: Caution }) {
  return (
    <CautionBox signal={caution.signal} hazard={caution.hazard}>
      <CautionWords caution={caution} />
    </CautionBox>
  );
}

/** What it is, what it does, how to avoid it. */
export function CautionWords({ caution }: { readonly caution: Caution }) {
  return (
    <>
      <p>
        {caution.what} {caution.consequence}
      </p>
      <p className="caution-avoid">{caution.avoid}</p>
    </>
  );
}

/** Cautions by their ids, in the order given; draws nothing where there are none. */
export function Cautions({ ids }: { readonly ids: readonly string[] }) {
  const known = ids.map(findCaution).filter((caution) => caution !== undefined);
  return (
    <>
      {known.map((caution) => (
        <CautionText key={caution.id} caution={caution} />
      ))}
    </>
  );
}

/** The same by their names on a phone, where a page is read and not worked by; in full on anything wider. */
export function ShortCautions({ ids }: { readonly ids: readonly string[] }) {
  const known = ids.map(findCaution).filter((caution) => caution !== undefined);
  if (!useIsPhone()) return <Cautions ids={ids} />;
  return known.length > 0 && <NamedCautions cautions={known} />;
}

/** Names only, each signal word once: what goes on from before, or is only read about. All of it opens with a tap. */
export function NamedCautions({ cautions }: { readonly cautions: readonly Caution[] }) {
  return (
    <details className="cautions-named">
      <summary>
        {bySignal(cautions).map(([signal, hazards]) => (
          <span key={signal} className={`caution-name caution-${signal.toLowerCase()}`}>
            <span className="caution-line-signal">
              <SignalSign signal={signal} />
              {signal}
            </span>{" "}
            <strong>{hazards.join(", ")}</strong>{" "}
          </span>
        ))}
      </summary>
      {cautions.map((caution) => (
        <CautionText key={caution.id} caution={caution} />
      ))}
    </details>
  );
}

/** The names under each signal word, the gravest first. */
function bySignal(cautions: readonly Caution[]): readonly (readonly [SignalWord, readonly string[]])[] {
  return GRAVEST_FIRST.flatMap((signal) => {
    const hazards = cautions.filter((one) => one.signal === signal).map(({ hazard }) => hazard);
    return hazards.length === 0 ? [] : [[signal, hazards] as const];
  });
}

const GRAVEST_FIRST: readonly SignalWord[] = ["DANGER", "WARNING", "CAUTION", "NOTICE"];

/** The first sentence of what to do. */
export function firstSentence(avoid: string): string {
  return /^[^.]*\./.exec(avoid)?.[0] ?? avoid;
}

/** Triangle for hazards to people, disc for notices; drawn here. */
export function SignalSign({ signal }: { readonly signal: SignalWord }) {
  return (
    <svg className="caution-sign" viewBox="0 0 32 32" aria-hidden="true">
      {signal === "NOTICE" ? (
        <circle cx="16" cy="16" r="14" fill="currentColor" />
      ) : (
        <path d="M16 2.5 31 29H1z" fill="currentColor" stroke="currentColor" strokeWidth="2" strokeLinejoin="round" />
      )}
      <path
        className="caution-sign-mark"
        d={signal === "NOTICE" ? "M16 7v11M16 22v3" : "M16 11v9M16 23.2v2.8"}
        fill="none"
        strokeWidth="3.4"
      />
    </svg>
  );
}
