import type { Fault } from "#base";
import type { Pattern } from "#kit";
import {
  judgeBody,
  type Bodies,
  type CasualtyState,
  type Device,
  type EntryKind,
  type KitState,
  type Person,
  type Place,
  type Practised,
  type Qualification,
  type RescueBoat,
  type StockPart,
  type StationPolicy,
} from "#readiness";
import { roleMayNot } from "../judging/faults.ts";
import { mayWrite, WRITING } from "../judging/permission.ts";

/** A line to be written: whoever keeps it adds id, time, person, device and what was known. */
export interface Draft<Kind extends EntryKind = EntryKind> {
  readonly subject: string;
  readonly kind: Kind;
  readonly body: Bodies[Kind];
  /** Place it belongs to: the kit's own, or "station". */
  readonly place: string;
  /** "id@version" of the pattern it is made under. */
  readonly pattern?: string;
}

/** What a person wants to do: a line to write, or why not. */
export type Act<Kind extends EntryKind = EntryKind> =
  | { readonly kind: "entry"; readonly draft: Draft<Kind> }
  | { readonly kind: "refused"; readonly because: readonly Fault[] };

/** The station as it stands where something is being done, and who is doing it. */
export interface ActContext {
  readonly me: Person;
  /** Calendar day at the person's place. */
  readonly today: string;
  /** RFC 3339: the device's clock at this act, where the door knows it. */
  readonly now?: string;
  readonly kits: readonly KitState[];
  readonly places: readonly Place[];
  readonly people: readonly Person[];
  readonly boats: readonly RescueBoat[];
  readonly devices: readonly Device[];
  readonly parts: readonly StockPart[];
  /** Kits taken off charge: what was done on them was done all the same. */
  readonly retired?: readonly KitState[];
  readonly casualties?: readonly CasualtyState[];
  /** What asks for a second person; nothing where absent. */
  readonly qualifications?: readonly Qualification[];
  /** What a summary knew of who did what, where the lines are not at hand. */
  readonly practised?: readonly Practised[];
  /** The station's own, where it is stricter than a pattern. */
  readonly policy?: StationPolicy;
  /** By "id@version". */
  readonly patterns: ReadonlyMap<string, Pattern>;
}

/** The line, unless the role may not write it, the body is not as it must be, or a rule speaks against it. */
export function allow<Kind extends EntryKind>(
  doing: ActContext,
  draft: Draft<Kind>,
  against: readonly (Fault | undefined)[] = [],
): Act<Kind> {
  const faults = [
    ...(mayWrite(doing.me.role, draft.kind) ? [] : [roleMayNot(doing.me.role, draft.kind, WRITING[draft.kind])]),
    ...judgeBody(draft),
    ...against.filter((fault) => fault !== undefined),
  ];
  return faults.length > 0 ? { kind: "refused", because: faults } : { kind: "entry", draft };
}

/** A draft about a kit, at the kit's place and under its pattern. */
export function aboutKit<Kind extends EntryKind>(kit: KitState, kind: Kind, body: Bodies[Kind]): Draft<Kind> {
  const pattern = kit.pattern === "" ? {} : { pattern: kit.pattern };
  return { subject: `kit:${kit.id}`, kind, body, place: kit.place, ...pattern };
}

/** One reason against, or none where all is well. */
export function unless(holds: boolean, fault: Fault): Fault | undefined {
  return holds ? undefined : fault;
}
