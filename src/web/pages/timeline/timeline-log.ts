import type { UnitSystem } from "#base";
import type { Entry } from "#log";
import { kitsOfCasualty, type Bodies, type CasualtyState } from "#readiness";
import type { TimelineLog } from "#station";
import type { StationView } from "#web/device/index.ts";

/** What a timeline is told from, and every line with the strikes. */
export interface HeldTimeline extends TimelineLog {
  readonly entries: readonly Entry[];
}

/** The sheet's lines and the kits that were on her, as this device has them. */
export function heldTimeline(view: StationView, casualty: CasualtyState, units: UnitSystem): HeldTimeline {
  const history = view.historyOf(`casualty:${casualty.id}`);
  const strikes = history.flatMap(({ struck }) => struck ?? []);
  const known = new Set(history.map(({ entry }) => entry.id));
  return {
    lines: history.map(({ entry, struck, received }) => ({
      entry,
      ...(received !== undefined && { received }),
      ...(struck && { struck: (struck.body as Bodies["struck"]).reason }),
    })),
    entries: [...history.map(({ entry }) => entry), ...strikes.filter(({ id }) => !known.has(id))],
    kits: kitsOn(view, casualty),
    units,
  };
}

function kitsOn(view: StationView, casualty: CasualtyState): TimelineLog["kits"] {
  const kits = [...view.kits, ...view.retired];
  const handOvers = kits.flatMap(({ id }) =>
    view
      .entriesOf(`kit:${id}`)
      .filter(isHandOver)
      .map(({ at, by, body }) => ({ kit: id, at, by, ...body })),
  );
  return kitsOfCasualty(casualty, handOvers).map(({ kit, handed }) => ({
    name: kits.find(({ id }) => id === kit)?.name ?? kit,
    ...(handed && { handed }),
  }));
}

function isHandOver(entry: Entry): entry is Entry<"handed-over", Bodies["handed-over"]> {
  return entry.kind === "handed-over";
}
