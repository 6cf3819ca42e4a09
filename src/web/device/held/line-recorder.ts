import type { Entry } from "#log";
import type { Draft, Recorder, StationView } from "../sync/contract.ts";
import type { Sitting } from "../device-state.ts";
import type { HeldLog } from "./held-log.ts";
import type { PhotoShelf } from "./photo-shelf.ts";

interface LineRecorderParts {
  readonly log: HeldLog;
  readonly shelf: PhotoShelf;
  /** Who sits here now, and at which device. */
  readonly who: () => { readonly sitting: Sitting | undefined; readonly device: string };
  readonly station: () => StationView | undefined;
  readonly onLine: () => void;
  readonly onPhoto: () => Promise<void>;
}

/** What pages write lines and keep photos with, in the name of whoever sits here. */
export function lineRecorder({ log, shelf, who, station, onLine, onPhoto }: LineRecorderParts): Recorder {
  const hand = () => {
    const { sitting, device } = who();
    if (!sitting) throw new Error("Broken invariant: a line written while nobody is signed in");
    return { person: sitting.person.id, device };
  };
  const record = async (draft: Draft): Promise<Entry> => {
    const entry = await log.write(draft, hand());
    onLine();
    return entry;
  };
  return {
    station,
    record,
    recordAll: async (drafts) => {
      const entries = await log.writeAll(drafts, hand());
      onLine();
      return entries;
    },
    strike: ({ id, subject, place }, reason) => record({ subject, place, kind: "struck", body: { entry: id, reason } }),
    keepPhoto: async (file) => {
      const ref = await shelf.keep(file);
      await onPhoto();
      return ref;
    },
    photoUrl: (hash) => shelf.url(hash),
  };
}
