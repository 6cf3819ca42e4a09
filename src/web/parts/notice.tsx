import type { ReactNode } from "react";
import "./notice.css";

export interface NoticeProps {
  /** `attention`: to act on soon. `wrong`: something failed or is refused. The words must say so too. */
  readonly tone?: "plain" | "attention" | "wrong";
  readonly title?: string;
  readonly children?: ReactNode;
  /** Read out when it appears. */
  readonly isNews?: boolean;
}

/** A plain message in the page. For hazards use CautionBox: this is not a signal word. */
export function Notice({ tone = "plain", title, children, isNews = false }: NoticeProps) {
  return (
    <div className={`notice notice-${tone}`} {...(isNews && { role: tone === "wrong" ? "alert" : "status" })}>
      {title !== undefined && <p className="notice-title">{title}</p>}
      {children}
    </div>
  );
}

export interface EmptyStateProps {
  /** What is not there: "No open findings". */
  readonly title: string;
  /** What that means, and what to do next. */
  readonly children?: ReactNode;
}

/** Said in place of a list with nothing in it. */
export function EmptyState({ title, children }: EmptyStateProps) {
  return (
    <div className="empty">
      <p className="empty-title">{title}</p>
      {children}
    </div>
  );
}
