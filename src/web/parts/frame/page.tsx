import { useEffect, type ReactNode } from "react";
import { Link } from "wouter";
import { useWords } from "#web/language/index.ts";
import { preferences, usePreferences } from "#web/theme/index.ts";
import { DeviceNotices } from "./device-notices.tsx";
import { SendMark } from "./send-mark.tsx";
import { StationNav } from "./station-nav.tsx";
import "./page.css";

export interface PageProps {
  /** Heading of the page and of the browser's tab. */
  readonly title: string;
  /** Where the back link leads, and its words. */
  readonly back?: { readonly to: string; readonly label: string };
  /** Beside the title: a standing, a button. */
  readonly beside?: ReactNode;
  /**
   * `full`: no station links, for the runner and for pages before sign-in. `work`: none either, and back link, title and
   * marks on one line, where every line of the first screen counts.
   */
  readonly frame?: "usual" | "full" | "work";
  readonly children: ReactNode;
}

/** The frame of every page: back link, title, what is not yet sent, night and day, then the page itself. */
export function Page({ title, back, beside, frame = "usual", children }: PageProps) {
  const words = useWords("frame");
  useEffect(() => {
    document.title = `${title} - Drykeel`;
  }, [title]);
  return (
    <div className={`page page-${frame}`}>
      <a className="page-skip" href="#main">
        {words.skip()}
      </a>
      <header className="page-head">
        <div className="page-strip">
          {back ? (
            <Link className="page-back" to={back.to}>
              <BackArrow /> <span className="page-back-label">{back.label}</span>
            </Link>
          ) : (
            <span className="page-name">Drykeel</span>
          )}
          <div className="page-marks">
            <SendMark isShort={frame === "work"} />
            <NightToggle />
          </div>
        </div>
        {frame === "usual" && <StationNav />}
        <div className="page-title">
          <h1>{title}</h1>
          {beside}
        </div>
        <ScaleRule />
      </header>
      <main id="main" className="page-main" tabIndex={-1}>
        {frame === "usual" && <DeviceNotices />}
        {children}
      </main>
    </div>
  );
}

export interface SectionProps {
  /** Where a link within the page leads. */
  readonly id?: string;
  readonly title: string;
  readonly beside?: ReactNode;
  readonly children: ReactNode;
}

/** A part of a page under its own heading, ruled off as on a chart. */
export function Section({ id, title, beside, children }: SectionProps) {
  return (
    <section className="section" {...(id !== undefined && { id })}>
      <div className="section-title">
        <h2>{title}</h2>
        {beside}
      </div>
      {children}
    </section>
  );
}

/** Night and day, one tap; the brightness of night is under Settings. */
export function NightToggle() {
  const { palette } = usePreferences();
  const words = useWords("frame");
  const other = palette === "day" ? "night" : "day";
  return (
    <button className="page-night" type="button" onClick={() => preferences.change({ palette: other })}>
      {words[other]()}
      <span className="for-readers-only"> {words.colours()}</span>
    </button>
  );
}

function BackArrow() {
  return (
    <svg className="page-arrow" viewBox="0 0 16 16" aria-hidden="true">
      <path d="M10.5 2 4 8l6.5 6" fill="none" stroke="currentColor" strokeWidth="2.5" />
    </svg>
  );
}

/** The latitude scale at a chart's edge, as the rule under a title. */
function ScaleRule() {
  return (
    <svg className="page-scale" height="7" width="100%" aria-hidden="true">
      <defs>
        <pattern id="chart-scale" width="48" height="7" patternUnits="userSpaceOnUse">
          <path d="M0 .5h48M0 6.5h48M0 0v7M24 0v7" stroke="currentColor" fill="none" />
          <rect x="0" y="2" width="24" height="3" fill="currentColor" />
        </pattern>
      </defs>
      <rect width="100%" height="7" fill="url(#chart-scale)" />
    </svg>
  );
}
