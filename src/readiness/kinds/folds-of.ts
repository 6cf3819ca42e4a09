import type { Entry, History } from "#log";
import type { KitDraft } from "../draft.ts";
import type { CasualtyDraft } from "../drafts/casualty-draft.ts";
import type { ReportsDraft } from "../drafts/reports-draft.ts";
import type { Qualification } from "../people/qualification.ts";
import type { Device, Person, Place, RescueBoat } from "../state.ts";
import type { StationDraft } from "../station/station-draft.ts";
import type { PartDraft } from "../stock/part-draft.ts";
import type { VisitSoFar } from "../visit/visit-state.ts";

/** What a line of each sort of subject does: it writes to a draft, or gives the state after it. */
interface FoldOf<Body> {
  /** `apply` folds another line of the same kit. */
  readonly kit: (draft: KitDraft, body: Body, entry: Entry, apply: (draft: KitDraft, entry: Entry) => void) => void;
  readonly casualty: (draft: CasualtyDraft, body: Body, entry: Entry) => void;
  readonly part: (draft: PartDraft, body: Body, entry: Entry) => void;
  readonly pattern: (draft: ReportsDraft, body: Body, entry: Entry) => void;
  readonly visit: (visit: VisitSoFar, body: Body, entry: Entry, history: History) => VisitSoFar;
  readonly station: (station: StationDraft, body: Body, entry: Entry) => void;
  readonly place: (place: Place, body: Body, entry: Entry) => Place;
  readonly person: (person: Person, body: Body, entry: Entry) => Person;
  readonly device: (device: Device, body: Body, entry: Entry) => Device;
  readonly boat: (boat: RescueBoat | undefined, body: Body, entry: Entry) => RescueBoat | undefined;
  readonly qualification: (
    qualification: Qualification | undefined,
    body: Body,
    entry: Entry,
  ) => Qualification | undefined;
}

/** Folds of one sort of subject, by kind. */
export type FoldsOf<Subject extends keyof FoldOf<never>, Bodies> = {
  readonly [Kind in keyof Bodies]: FoldOf<Bodies[Kind]>[Subject];
};

/** True for a kind that has a fold among these. */
export function isKindOf<Folds extends object>(folds: Folds, kind: string): kind is keyof Folds & string {
  return Object.hasOwn(folds, kind);
}
