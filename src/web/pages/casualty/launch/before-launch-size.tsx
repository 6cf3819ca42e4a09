import { useWords } from "#web/language/index.ts";
import { useState } from "react";
import { usePreferences } from "#web/theme/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { SizeField } from "./size-field.tsx";
import { sayBack, sayTyped, sizeFault, typedUnit, type Pick, type TypedSizeKind } from "./sizes.ts";

interface SizePicksProps {
  readonly label: string;
  readonly picks: readonly Pick[];
  readonly si: number | undefined;
  readonly onPick: (si: number | undefined) => void;
}

/** A size by one tap. Nothing told is the same as "not known", where that is one of the answers. */
export function SizePicks({ label, picks, si, onPick }: SizePicksProps) {
  const picked = picks.find((pick) => pick.si === si)?.id;
  const choose = (id: string) => onPick(picks.find((pick) => pick.id === id)?.si);
  return <PickRow label={label} options={picks} picked={picked} onPick={choose} />;
}

const OTHER = "other";

/** A size by one tap, or typed behind the last one; the one pressed is the one counted with, typed or not. */
export function SizePicksOrTyped({
  kind,
  label,
  picks,
  si,
  onPick,
}: SizePicksProps & { readonly kind: TypedSizeKind }) {
  const words = useWords("launchTold");
  const { units } = usePreferences();
  const [isTyping, setTyping] = useState(false);
  const picked = picks.find((pick) => pick.si === si)?.id ?? (si === undefined ? undefined : OTHER);
  const isOther = si !== undefined && picked === OTHER;
  const other = isOther ? words.otherSize({ size: sayTyped(kind, si, units) }) : words.other();
  const choose = (id: string) => {
    setTyping(id === OTHER);
    if (id !== OTHER) onPick(picks.find((pick) => pick.id === id)?.si);
  };
  return (
    <>
      <PickRow label={label} options={[...picks, { id: OTHER, words: other }]} picked={picked} onPick={choose} />
      {isTyping && <TypedSize kind={kind} onRead={onPick} />}
    </>
  );
}

interface TypedSizeProps {
  readonly kind: TypedSizeKind;
  readonly onRead: (si: number | undefined) => void;
}

/** A size that cannot be is not told on. */
function TypedSize({ kind, onRead }: TypedSizeProps) {
  const words = useWords("launchTold");
  const { units } = usePreferences();
  const faultOf = (si: number) => sizeFault(kind, si, words);
  const read = (si: number | undefined) => onRead(si !== undefined && faultOf(si) === undefined ? si : undefined);
  return (
    <SizeField
      label={words[kind]()}
      unit={typedUnit(kind, units)}
      faultOf={faultOf}
      sayBack={(si) => sayBack(kind, si)}
      onRead={read}
    />
  );
}
