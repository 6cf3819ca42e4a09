import { useWords } from "#web/language/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { useSheet } from "../sheet/use-sheet.ts";

/** Which space is looked at, where water is in more than one. */
export function SpaceTabs({ onSpace }: { readonly onSpace: (id: string) => void }) {
  const words = useWords("soundings");
  const { casualty, space } = useSheet();
  if (casualty.spaces.length < 2) return null;
  const options = casualty.spaces.map(({ id, name }) => ({ id, words: name }));
  return <PickRow label={words.spaceLooked()} options={options} picked={space} onPick={onSpace} />;
}
