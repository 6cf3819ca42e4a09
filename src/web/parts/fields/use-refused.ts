import { useState } from "react";

/** Fields of one form in which something stands that they do not take. */
export interface Refused {
  /** Whether there is one: what such a field gives is not what it would give empty. */
  readonly isAny: boolean;
  /** Told at each change of a field, by a name of its own in the form. */
  readonly tell: (field: string, isRefused: boolean) => void;
}

/** Keeps a form from being taken as though a field that refuses its figure were empty. */
export function useRefused(): Refused {
  const [fields, setFields] = useState<ReadonlySet<string>>(new Set());
  const tell = (field: string, isRefused: boolean) =>
    setFields((before) => new Set([...before].filter((one) => one !== field).concat(isRefused ? [field] : [])));
  return { isAny: fields.size > 0, tell };
}
