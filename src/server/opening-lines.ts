import type { DemoAccount } from "./parts.ts";

/** What the terminal says once the station answers: where to go, who to sign in as, where the data is. */
export function openingLines(start: {
  readonly address: string;
  readonly data: string;
  readonly demo: readonly DemoAccount[];
  readonly setupCode?: string;
}): readonly string[] {
  const lead = `Drykeel is at ${start.address}`;
  return [lead, ...waysIn(start), `Data: ${start.data}`, "Stop with Ctrl+C."];
}

function waysIn({ demo, setupCode }: { demo: readonly DemoAccount[]; setupCode?: string }): readonly string[] {
  if (setupCode !== undefined)
    return [`This station is empty. Open that address and set it up with the code ${setupCode}`];
  if (demo.length === 0) return [];
  const accounts = demo.map(({ name, role, pin }) => `  ${name.padEnd(24)} ${role.padEnd(14)} PIN ${pin}`);
  return [
    "This is the demo station. Sign in as one of:",
    ...accounts,
    "For a station of your own: DATA_DIR=./station npm start -- --empty",
  ];
}
