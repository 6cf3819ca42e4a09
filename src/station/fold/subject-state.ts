import type { Entry, History } from "#log";
import {
  applyBoatEntry,
  applyDeviceEntry,
  applyPersonEntry,
  applyPlaceEntry,
  applyQualificationEntry,
  applyToCasualty,
  applyToDraft,
  applyToPart,
  applyToReports,
  applyVisitEntry,
  blankPart,
  applyToStation,
  draftCasualty,
  draftKit,
  KitDraft,
  PartDraft,
  ReportsDraft,
  StationDraft,
  type CasualtyDraft,
  type CasualtyState,
  type Device,
  type KitState,
  type PatternsByVersion,
  type Person,
  type Place,
  type Qualification,
  type RescueBoat,
  type VisitSoFar,
} from "#readiness";

/** One subject of a station while its lines are folded in; `base` is what lines not at hand made of it. */
export type SubjectState =
  | { readonly sort: "kit"; readonly draft: KitDraft | undefined; readonly base?: KitState }
  | { readonly sort: "person"; readonly person: Person | undefined }
  | { readonly sort: "place"; readonly place: Place | undefined }
  | { readonly sort: "device"; readonly device: Device | undefined }
  | { readonly sort: "casualty"; readonly draft: CasualtyDraft | undefined; readonly base?: CasualtyState }
  | { readonly sort: "boat"; readonly boat: RescueBoat | undefined }
  | { readonly sort: "pattern"; readonly draft: ReportsDraft }
  | { readonly sort: "part"; readonly draft: PartDraft }
  | { readonly sort: "qualification"; readonly qualification: Qualification | undefined }
  | { readonly sort: "visit"; readonly visit: VisitSoFar | undefined }
  | { readonly sort: "station"; readonly draft: StationDraft | undefined }
  | { readonly sort: "other" };

/** A subject before its first line. */
export function blankSubject(subject: string): SubjectState {
  const sort = subject.split(":", 1)[0];
  if (sort === "kit") return { sort, draft: undefined };
  if (sort === "person") return { sort, person: undefined };
  if (sort === "place") return { sort, place: undefined };
  if (sort === "device") return { sort, device: undefined };
  if (sort === "casualty") return { sort, draft: undefined };
  if (sort === "boat") return { sort, boat: undefined };
  if (sort === "qualification") return { sort, qualification: undefined };
  if (sort === "visit") return { sort, visit: undefined };
  if (sort === "pattern") return { sort, draft: new ReportsDraft([]) };
  if (sort === "part") return { sort, draft: new PartDraft(blankPart(subject)) };
  return sort === "station" ? { sort, draft: undefined } : { sort: "other" };
}

/** A subject after one more line. */
export function applyToSubject(
  state: SubjectState,
  entry: Entry,
  history: History,
  patterns: PatternsByVersion,
): SubjectState {
  switch (state.sort) {
    case "kit": {
      const { base } = state;
      const draft = state.draft ?? (base ? new KitDraft(base, history, patterns) : draftKit(entry, history, patterns));
      applyToDraft(draft, entry);
      return state.draft ? state : { ...state, draft };
    }
    case "person":
      return { sort: "person", person: applyPersonEntry(state.person, entry) };
    case "place":
      return { sort: "place", place: applyPlaceEntry(state.place, entry) };
    case "device":
      return { sort: "device", device: applyDeviceEntry(state.device, entry) };
    case "casualty": {
      const draft = state.draft ?? draftCasualty(entry, state.base);
      applyToCasualty(draft, entry);
      return state.draft ? state : { ...state, draft };
    }
    case "boat":
      return { sort: "boat", boat: applyBoatEntry(state.boat, entry) };
    case "qualification":
      return { sort: "qualification", qualification: applyQualificationEntry(state.qualification, entry) };
    case "visit":
      return { sort: "visit", visit: applyVisitEntry(state.visit, entry, history) };
    case "pattern":
      applyToReports(state.draft, entry);
      return state;
    case "part":
      applyToPart(state.draft, entry);
      return state;
    case "station": {
      const draft = state.draft ?? new StationDraft();
      applyToStation(draft, entry);
      return state.draft ? state : { sort: "station", draft };
    }
    case "other":
      return state;
  }
}
