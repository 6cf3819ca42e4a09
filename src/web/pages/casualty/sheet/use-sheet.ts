import { useWords } from "#web/language/index.ts";
import type { Entry } from "#log";
import type { CasualtyState, EntryKind } from "#readiness";
import type { Act, ActContext } from "#station";
import { createContext, useContext, useState } from "react";
import { useCarryOut, useRecorder, useStation, type StationView } from "#web/device/index.ts";
import { useDoing } from "#web/parts/index.ts";
import type { Believable } from "#questions";
import { levelInHand } from "../soundings/sounding-clocks.ts";

/** The sheet as its parts see it: the casualty, what can be written, and the last line to take back. */
export interface Sheet {
  /** Without what cannot be. */
  readonly casualty: CasualtyState;
  readonly leftOut: Pick<Believable, "measures" | "soundings">;
  readonly view: StationView;
  /** Id of the space looked at. */
  readonly space: string;
  /** The level being entered in this space, not yet written down [m]. */
  readonly level: number | undefined;
  readonly setLevel: (level: number | undefined) => void;
  readonly isBusy: boolean;
  readonly error: unknown;
  /** Writes a line; `words` say what was written, for the way back. True where it went through. */
  readonly write: <Kind extends EntryKind>(
    words: string,
    want: (doing: ActContext, casualty: CasualtyState) => Act<Kind>,
  ) => Promise<boolean>;
  /** Does something that may fail, such as computing before writing. */
  readonly run: (act: () => Promise<unknown>) => Promise<boolean>;
  /** Not where fuel was smelt: one tap must not start the pumps again. */
  readonly last?: Written;
  readonly undo: () => Promise<boolean>;
  /** Strikes a line. */
  readonly takeBack: (entry: Entry, reason: string) => Promise<boolean>;
}

/** The last line written here. */
export interface Written {
  readonly words: string;
  readonly entry: Entry;
}

/**
 * What a sheet can do, for one casualty on this device.
 *
 * @param told - as its entries tell it: what is written is judged against all of it, but for impossible measures
 * @param believable - the same without what cannot be
 * @param space - id of the space looked at
 */
export function useSheetOf(told: CasualtyState, believable: Believable, space: string): Sheet {
  const messages = useWords("sheet");
  const { casualty, ...leftOut } = believable;
  const view = useStation();
  const carryOut = useCarryOut();
  const recorder = useRecorder();
  const { isBusy, error, run } = useDoing();
  const [last, setLast] = useState<Written>();
  const write: Sheet["write"] = (words, want) =>
    run(async () => {
      const entry = await carryOut((doing) => want(doing, { ...told, boat: casualty.boat }));
      setLast(entry.kind === "fuel-smelt" ? undefined : { words, entry });
    });
  const takeBack: Sheet["takeBack"] = (entry, reason) =>
    run(async () => {
      await recorder.strike(entry, reason);
      setLast((before) => (before?.entry.id === entry.id ? undefined : before));
    });
  const undo = async () => last !== undefined && takeBack(last.entry, messages.undone());
  const level = useLevel(space);
  return {
    casualty,
    leftOut,
    view,
    space,
    ...level,
    isBusy,
    error,
    write,
    run,
    undo,
    takeBack,
    ...(last && { last }),
  };
}

/** A level entered for one space is none of another's. */
function useLevel(space: string): Pick<Sheet, "level" | "setLevel"> {
  const [entered, setEntered] = useState<{ readonly space: string; readonly level: number | undefined }>();
  return {
    level: entered?.space === space ? entered.level : undefined,
    setLevel: (level) => {
      setEntered({ space, level });
      levelInHand.set(Date.now());
    },
  };
}

export const SheetContext = createContext<Sheet | undefined>(undefined);

/** The sheet this part stands in. */
export function useSheet(): Sheet {
  const sheet = useContext(SheetContext);
  if (!sheet) throw new Error("Broken invariant: a part of a sheet outside one");
  return sheet;
}
