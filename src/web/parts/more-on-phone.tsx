import { useSyncExternalStore, type ReactNode } from "react";
import "./more-on-phone.css";

/** As wide as a phone held upright is at most; the style sheets of the runner keep to the same. */
const PHONE = "(max-width: 700px)";

export interface MoreProps {
  /** What lies behind the tap, in a few words. */
  readonly title: string;
  /** Parts of the page in it, by id: an address that names one of them opens it. */
  readonly parts?: readonly string[];
  readonly children: ReactNode;
}

/** On a phone behind one tap; beside it, on anything wider, as it stands. */
export function MoreOnPhone({ title, parts = [], children }: MoreProps) {
  if (!useIsPhone()) return children;
  return (
    <details className="more" open={parts.includes(location.hash.slice(1))}>
      <summary>{title}</summary>
      {children}
    </details>
  );
}

/** True while the page is no wider than a phone held upright. */
export function useIsPhone(): boolean {
  return useSyncExternalStore(subscribe, () => matchMedia(PHONE).matches);
}

function subscribe(onChange: () => void): () => void {
  const query = matchMedia(PHONE);
  query.addEventListener("change", onChange);
  return () => query.removeEventListener("change", onChange);
}
