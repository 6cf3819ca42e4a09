import type { Entry } from "#log";
import type { CasualtyState, EntryKind } from "#readiness";
import type { Act, Doing } from "#station";
import { createContext, useContext, useState } from "react";
import { useCarryOut, useRecorder, useStation, type StationView } from "../../device/index.ts";
import { useDoing } from "../../parts/index.ts";

/** The sheet as its parts see it: the casualty, what can be written, and the last line to take back. */
export interface Sheet {
  readonly casualty: CasualtyState;
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
    want: (doing: Doing, casualty: CasualtyState) => Act<Kind>,
  ) => Promise<boolean>;
  /** Does something that may fail, such as computing before writing. */
  readonly run: (act: () => Promise<unknown>) => Promise<boolean>;
  /** Not where fuel was smelt: one tap must not start the pumps again. */
  readonly last?: Written;
  readonly undo: () => Promise<boolean>;
}

/** The last line written here. */
export interface Written {
  readonly words: string;
  readonly entry: Entry;
}

/** What a sheet can do, for one casualty on this device. */
export function useSheetOf(casualty: CasualtyState, space: string): Sheet {
  const view = useStation();
  const carryOut = useCarryOut();
  const recorder = useRecorder();
  const { isBusy, error, run } = useDoing();
  const [last, setLast] = useState<Written>();
  const write: Sheet["write"] = (words, want) =>
    run(async () => {
      const entry = await carryOut((doing) => want(doing, casualty));
      setLast(entry.kind === "fuel-smelt" ? undefined : { words, entry });
    });
  const undo = () =>
    run(async () => {
      if (last) await recorder.strike(last.entry, "Undone at once.");
      setLast(undefined);
    });
  return { casualty, view, space, ...useLevel(space), isBusy, error, write, run, undo, ...(last && { last }) };
}

/** A level entered for one space is none of another's. */
function useLevel(space: string): Pick<Sheet, "level" | "setLevel"> {
  const [entered, setEntered] = useState<{ readonly space: string; readonly level: number | undefined }>();
  return {
    level: entered?.space === space ? entered.level : undefined,
    setLevel: (level) => setEntered({ space, level }),
  };
}

export const SheetContext = createContext<Sheet | undefined>(undefined);

/** The sheet this part stands in. */
export function useSheet(): Sheet {
  const sheet = useContext(SheetContext);
  if (!sheet) throw new Error("Broken invariant: a part of a sheet outside one");
  return sheet;
}
