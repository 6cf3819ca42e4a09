import * as runtime from "@messageformat/runtime";

export { number, strictNumber } from "@messageformat/runtime";

type Cases = Readonly<Record<string, string>>;

/** The words for a number by the rules of the language; here every case is text, which the library leaves open. */
export const plural = runtime.plural as (
  value: number,
  offset: number,
  rule: (value: number, isOrdinal?: boolean) => string,
  cases: Cases,
) => string;

/** The words for a choice; here every case is text. */
export const select = runtime.select as (chosen: string, cases: Cases) => string;
