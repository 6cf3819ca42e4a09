import { useEffect, useRef, type ReactNode } from "react";

/** Heading of what the runner shows now. Takes the focus when it changes, so that readers start there, at the top. */
export function StepHeading({ children }: { readonly children: ReactNode }) {
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    heading.current?.focus({ preventScroll: true });
    globalThis.scrollTo({ top: 0 });
  }, []);
  return (
    <h1 ref={heading} tabIndex={-1} className="step-heading">
      {children}
    </h1>
  );
}
