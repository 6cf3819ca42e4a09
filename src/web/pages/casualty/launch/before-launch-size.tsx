import { useWords } from "#web/language/index.ts";
import { useState, type ReactNode } from "react";
import { usePreferences } from "#web/theme/index.ts";
import { PickRow } from "#web/parts/pick-row.tsx";
import { SizeField } from "./size-field.tsx";
import { TypedRise } from "./typed-rise.tsx";
import {
  OTHER,
  pressedOf,
  sayBack,
  sayRise,
  sayTyped,
  sizeFault,
  typedUnit,
  type Pick,
  type TypedSizeKind,
} from "./sizes.ts";

interface SizePicksProps {
  readonly label: string;
  readonly picks: readonly Pick[];
  readonly si: number | undefined;
  readonly onPick: (si: number | undefined) => void;
  /** A figure stands typed that cannot be, and is not counted with; or it does so no more. */
  readonly onRefused: (isRefused: boolean) => void;
}

/** A size by one tap, or typed behind the last one. */
export function SizePicksOrTyped({ kind, ...props }: SizePicksProps & { readonly kind: TypedSizeKind }) {
  const { units } = usePreferences();
  return (
    <PicksOrTyped {...props} sayOther={(si) => sayTyped(kind, si, units)}>
      {(onRead) => <TypedSize kind={kind} onRead={onRead} />}
    </PicksOrTyped>
  );
}

/** A rise or fall by one tap, or typed as it was told: "5 cm in 3 min". */
export function RisePicksOrTyped(props: SizePicksProps) {
  const words = useWords("launchTold");
  const { units } = usePreferences();
  return (
    <PicksOrTyped {...props} sayOther={(si) => sayRise(si, units, words)}>
      {(onRead) => <TypedRise onRead={onRead} />}
    </PicksOrTyped>
  );
}

interface PicksOrTypedProps extends SizePicksProps {
  /** How what was typed stands on its button. */
  readonly sayOther: (si: number) => string;
  /** Where it is typed. */
  readonly children: (onRead: OnRead) => ReactNode;
}

type OnRead = (si: number | undefined, isRefused: boolean) => void;

/** The one pressed is the one counted with, typed or not. Nothing told is the same as "not known". */
function PicksOrTyped({ label, picks, si, onPick, onRefused, sayOther, children }: PicksOrTypedProps) {
  const words = useWords("launchTold");
  const [isTyping, setTyping] = useState(false);
  const [isRefused, setRefused] = useState(false);
  const picked = pressedOf(picks, si, isRefused);
  const isOther = si !== undefined && picked === OTHER;
  const other = isOther ? words.otherSize({ size: sayOther(si) }) : words.other();
  const refuse = (next: boolean) => {
    setRefused(next);
    onRefused(next);
  };
  const choose = (id: string) => {
    setTyping(id === OTHER);
    if (id !== OTHER) refuse(false);
    if (id !== OTHER) onPick(picks.find((pick) => pick.id === id)?.si);
  };
  return (
    <>
      <PickRow label={label} options={[...picks, { id: OTHER, words: other }]} picked={picked} onPick={choose} />
      {isTyping &&
        children((read, isOff) => {
          refuse(isOff);
          onPick(read);
        })}
    </>
  );
}

interface TypedSizeProps {
  readonly kind: TypedSizeKind;
  readonly onRead: OnRead;
}

/** A size that cannot be is not told on. */
function TypedSize({ kind, onRead }: TypedSizeProps) {
  const words = useWords("launchTold");
  const { units } = usePreferences();
  const faultOf = (si: number) => sizeFault(kind, si, words);
  const read = (si: number | undefined, text: string) => {
    const taken = si !== undefined && faultOf(si) === undefined ? si : undefined;
    onRead(taken, taken === undefined && text.trim() !== "");
  };
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
