import type { FloodCase, FloodEventKind } from "./flood-case.ts";
import type { Piping } from "../openings/flows.ts";
import type { Change, PlacedPump } from "../hull/vessel.ts";

/** A change at a known time, ready to be made. */
export interface TimedChange {
  readonly at: number;
  readonly name: string;
  /** What is noted, if anything. */
  readonly kind: FloodEventKind | undefined;
  apply(): void;
}

/** All changes of a case in order of time: pumps' hours and refuelling, and the changes given. */
export function timetableOf(given: FloodCase, piping: Piping): TimedChange[] {
  const changes = [
    ...given.pumps.flatMap((pump) => pumpHours(pump, given.duration)),
    ...(given.changes ?? []).map(orderOf),
  ];
  return changes.sort((a, b) => a.at - b.at).map((order) => ({ ...order, apply: () => setShare(piping, order) }));
}

interface Order {
  readonly at: number;
  readonly name: string;
  readonly kind: FloodEventKind;
  readonly target: "pump" | "opening";
  readonly share: number;
}

function pumpHours(pump: PlacedPump, duration: number): Order[] {
  const start = pump.from ?? 0;
  const end = Math.min(pump.until ?? Number.POSITIVE_INFINITY, duration);
  const order = (at: number, share: number, kind: FloodEventKind): Order => ({
    at,
    name: pump.name,
    kind,
    target: "pump",
    share,
  });
  const orders = start > 0 && start <= duration ? [order(start, 1, "pump-started")] : [];
  if (pump.refuel !== undefined) {
    const { runtime, pause } = pump.refuel;
    for (let at = start + runtime; at < end; at += runtime + pause) {
      orders.push(order(at, 0, "refuel"), order(at + pause, at + pause < end ? 1 : 0, "pump-started"));
    }
  }
  if (pump.until !== undefined && pump.until <= duration) orders.push(order(pump.until, 0, "pump-stopped"));
  return orders.filter((one) => one.at <= duration);
}

function orderOf(change: Change): Order {
  const { at, share } = change;
  if (change.kind === "pump-share") {
    const kind = change.says === "failed" ? "pump-failed" : share === 0 ? "pump-stopped" : "pump-started";
    return { at, share, kind, name: change.pump, target: "pump" };
  }
  const kind = change.says === "patched" ? "opening-patched" : "opening-opened";
  return { at, share, kind, name: change.opening, target: "opening" };
}

function setShare(piping: Piping, order: Order): void {
  const targets = order.target === "pump" ? piping.pumps : piping.openings;
  for (const target of targets) if (target.name === order.name) target.share = order.share;
}
