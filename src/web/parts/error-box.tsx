import { isInputError, type Fault } from "#base";
import { useEffect, useRef } from "react";
import { useWords } from "../language/index.ts";
import { sayField, sayGiven } from "./words/field-words.ts";
import { Notice } from "./notice.tsx";

export interface ErrorBoxProps {
  /** Whatever was thrown; undefined draws nothing. An InputError shows each of its faults with its remedy. */
  readonly error: unknown;
  /** What did not happen: "Not saved"; "That was not accepted" where absent. */
  readonly title?: string;
}

/** What went wrong and what to do about it; brought into sight when it appears. */
export function ErrorBox({ error, title }: ErrorBoxProps) {
  const words = useWords("parts");
  const box = useRef<HTMLDivElement>(null);
  // In the middle: at an edge it could lie under a bar that stands over the page.
  useEffect(() => {
    if (!isNothing(error)) box.current?.scrollIntoView({ block: "center" });
  }, [error]);
  if (isNothing(error)) return null;
  return (
    <div ref={box}>
      <Notice tone="wrong" title={title ?? words.notAccepted()} isNews>
        {isInputError(error) ? <FaultList faults={error.faults} /> : <Other error={error} />}
      </Notice>
    </div>
  );
}

function isNothing(error: unknown): error is undefined | null {
  return error === undefined || error === null;
}

/** Where it is and what was given, in a person's words; a field that has none is left out, with what stood there. */
function WhatIsWrong({ fault: { field, got, allowed } }: { readonly fault: Fault }) {
  const words = useWords("parts");
  const name = sayField(field, words);
  const given = name === undefined ? undefined : sayGiven(got, words);
  return (
    <p>
      {name !== undefined && <strong>{name}: </strong>}
      {given !== undefined && `${given}. `}
      {words.allowed({ allowed: allowed.replace(/\.$/, "") })}
    </p>
  );
}

/** Faults one by one: where, what was given, what is allowed, what to do. */
export function FaultList({ faults }: { readonly faults: readonly Fault[] }) {
  return (
    <ul className="error-list">
      {faults.map((fault) => (
        <li key={`${fault.code} ${fault.field}`}>
          <WhatIsWrong fault={fault} />
          <p>
            {fault.remedy} <span className="error-code">{fault.code}</span>
          </p>
        </li>
      ))}
    </ul>
  );
}

/** An error of our own rooms says what to do in `remedy`; any other says only what it is. */
function Other({ error }: { readonly error: unknown }) {
  const words = useWords("parts");
  const { message, remedy } = error as { readonly message?: unknown; readonly remedy?: unknown };
  return (
    <>
      <p>{typeof message === "string" ? message : words.noReason()}</p>
      {typeof remedy === "string" && <p>{remedy}</p>}
    </>
  );
}
