import { isValidElement, type ReactNode } from "react";

/** The words inside a control, as a person reads them. */
export function wordsOf(node: ReactNode): string {
  if (typeof node === "string" || typeof node === "number") return String(node);
  if (Array.isArray(node)) return node.map((one: ReactNode) => wordsOf(one)).join("");
  return isValidElement<{ readonly children?: ReactNode }>(node) ? wordsOf(node.props.children) : "";
}
