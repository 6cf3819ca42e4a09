import { demoAccounts, demoEntries, type DemoSetting } from "#demo";
import type { Pattern } from "#kit";
import { instantOf, newAmongRetaken, type Entry } from "#log";
import { deliveryQuestion } from "#questions";
import type { LogStore } from "#station";
import type { DemoAccount, ServerOptions } from "../parts.ts";
import { keepPin } from "../sign-in/pins.ts";

const SEED = 7;

/**
 * Fills an empty store with the demo station, in one piece: a start that is broken off leaves it empty.
 *
 * @param demo - `today`: its last day, "YYYY-MM-DD"; `kitDays`: how far its kits go back; `now`: when the store takes it
 */
export async function fillDemo(
  store: LogStore,
  demo: Pick<DemoSetting, "patterns" | "today" | "kitDays"> & { readonly now: string },
): Promise<void> {
  const { patterns, today, kitDays } = demo;
  const entries = demoEntries({ patterns, today, seed: SEED, expected: expectedDelivery, kitDays });
  await store.retake(entries.map((entry) => newAmongRetaken(entry, receiptOf(entry, demo.now))));
}

/** Devices with a network send each line as it is written: none of the demo's came late. */
function receiptOf({ at }: Entry, now: string): string {
  return new Date(Math.min(instantOf(at), instantOf(now))).toISOString();
}

/** What the demo's proof runs are held against: each is at 2 m of lift with the hose's end 1.5 m higher. */
function expectedDelivery(pattern: Pattern): number | undefined {
  if (!pattern.hydraulics) return undefined;
  const rig = { kit: pattern.id, suction: { lift: 2 }, discharge: { rise: 1.5 }, advise: false };
  const { flow } = deliveryQuestion.answer(rig, { patterns: () => pattern });
  return flow > 0 ? flow : undefined;
}

/** The demo's accounts with their PINs kept, where this store holds the demo's people; none where it does not. */
export async function openDemoAccounts(
  parts: Pick<ServerOptions, "secrets" | "ambient">,
  isMember: (account: DemoAccount) => boolean,
): Promise<readonly DemoAccount[]> {
  const accounts = demoAccounts();
  if (!accounts.every(isMember)) return [];
  for (const { person, pin } of accounts) {
    const held = await parts.secrets.credentialsOf(person);
    if (held.length === 0) await keepPin(parts, person, pin);
  }
  return accounts;
}
