import { useWords } from "#web/language/index.ts";
/** What a code shows and what it does not. The handbook says the same. */
export function NotProved() {
  const words = useWords("sheetJoin");
  return <p>{words.notProved()}</p>;
}
