import { PickRow } from "#web/parts/pick-row.tsx";
import { useSheet } from "../sheet/use-sheet.ts";

/** Which space is looked at, where water is in more than one. */
export function SpaceTabs({ onSpace }: { readonly onSpace: (id: string) => void }) {
  const { casualty, space } = useSheet();
  if (casualty.spaces.length < 2) return null;
  const options = casualty.spaces.map(({ id, name }) => ({ id, words: name }));
  return <PickRow label="Space looked at" options={options} picked={space} onPick={onSpace} />;
}
