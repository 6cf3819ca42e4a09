import { useState } from "react";
import { useSearchParams } from "wouter";
import type { Line } from "#web/act/lines.ts";
import { resumeAt, type Position } from "#web/act/position.ts";

/** What the runner shows. `done`: every line that must be answered is. */
export type Shown =
  | { readonly kind: "line"; readonly position: Position }
  | { readonly kind: "lines" }
  | { readonly kind: "seal" }
  /** The same, with the form to close it as grounded open. */
  | { readonly kind: "grounded" }
  | { readonly kind: "done" };

export interface Place {
  readonly shown: Shown;
  readonly goTo: (position: Position | undefined) => void;
  readonly show: (what: "lines" | "seal" | "grounded" | "resume") => void;
}

/** Where the runner stands, kept in the address so that links, reloads and the phone's back button work. */
export function usePlace(lines: readonly Line[], device: string): Place {
  const [search, setSearch] = useSearchParams();
  const [start] = useState(() => resumeAt(lines, device));
  const goTo = (position: Position | undefined) => setSearch(position ? searchOf(position) : { at: "done" });
  const show = (what: "lines" | "seal" | "grounded" | "resume") => {
    if (what === "resume") goTo(toPosition(resumeAt(lines, device)));
    else setSearch({ at: what });
  };
  return { shown: readPlace(search, start), goTo, show };
}

/** What an address asks to be shown; the place to resume at where it asks for nothing. */
export function readPlace(search: URLSearchParams, start: number | undefined): Shown {
  const [at, line, ask] = [search.get("at"), Number(search.get("line")), search.get("ask")];
  if (at === "lines" || at === "seal" || at === "grounded" || at === "done") return { kind: at };
  const alone = search.has("alone") ? { isAlone: true as const } : {};
  if (line > 0) return { kind: "line", position: ask === null ? { line } : { line, ask, ...alone } };
  const position = toPosition(start);
  return position ? { kind: "line", position } : { kind: "done" };
}

function searchOf({ line, ask, isAlone }: Position): Record<string, string> {
  return { line: String(line), ...(ask !== undefined && { ask }), ...(isAlone && { alone: "1" }) };
}

function toPosition(line: number | undefined): Position | undefined {
  return line === undefined ? undefined : { line };
}
