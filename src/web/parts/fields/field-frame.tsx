import { useId, type ReactNode } from "react";
import "./field.css";

/** What every field may say about itself. */
export interface FieldWords {
  readonly label: string;
  /** One line under the label: what to enter and where to find it. */
  readonly hint?: string;
  /** What is wrong and what to do; shown in place, read out when it appears. */
  readonly fault?: string;
}

interface FieldFrameProps extends FieldWords {
  /** The input, given the ids it must carry. */
  readonly children: (ids: FieldIds) => ReactNode;
  readonly after?: ReactNode;
}

export interface FieldIds {
  readonly id: string;
  readonly "aria-describedby"?: string;
  readonly "aria-invalid"?: true;
}

/** Label above, hint, input, then fault: the same order in every field. */
export function FieldFrame({ label, hint, fault, children, after }: FieldFrameProps) {
  const id = useId();
  const described = [hint !== undefined && `${id}-hint`, fault !== undefined && `${id}-fault`]
    .filter(Boolean)
    .join(" ");
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      {hint !== undefined && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {children({
        id,
        ...(described && { "aria-describedby": described }),
        ...(fault !== undefined && { "aria-invalid": true as const }),
      })}
      {after}
      <FieldFault id={`${id}-fault`} fault={fault} />
    </div>
  );
}

/** The line that says what is wrong with a field. Always in the page, so that its arrival is read out. */
export function FieldFault({ id, fault }: { readonly id: string; readonly fault: string | undefined }) {
  return (
    <div aria-live="polite" id={id}>
      {fault !== undefined && <p className="field-fault">{fault}</p>}
    </div>
  );
}
