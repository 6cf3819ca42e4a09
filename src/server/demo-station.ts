import { demoAccounts, demoEntries } from "#demo";
import type { Pattern } from "#kit";
import type { LogStore } from "#station";
import type { DemoAccount, ServerOptions } from "./parts.ts";
import { keepPin } from "./pins.ts";

const SEED = 7;

/**
 * Fills an empty store with the demo station, in one piece: a start that is broken off leaves it empty.
 *
 * @param demo - `today`: last day of its two years, "YYYY-MM-DD"; `now`: when the store takes it
 */
export async function fillDemo(
  store: LogStore,
  demo: { readonly patterns: readonly Pattern[]; readonly today: string; readonly now: string },
): Promise<void> {
  const entries = demoEntries({ patterns: demo.patterns, today: demo.today, seed: SEED });
  await store.append(entries, demo.now);
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
