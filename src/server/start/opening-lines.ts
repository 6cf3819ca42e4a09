import type { DataLoss } from "../data-folder/data-loss.ts";
import type { DemoAccount } from "../parts.ts";

/** What the terminal says once the station answers: where to go, who to sign in as, where the data is. */
export function openingLines(start: {
  readonly address: string;
  readonly data: string;
  readonly demo: readonly DemoAccount[];
  /** Pattern files left out, each with what is wrong. */
  readonly leftOut: readonly string[];
  readonly setupCode?: string;
}): readonly string[] {
  const lead = `Drykeel is at ${start.address}`;
  return [lead, ...waysIn(start), `Data: ${start.data}`, ...warnings(start.leftOut), "Stop with Ctrl+C."];
}

function warnings(leftOut: readonly string[]): readonly string[] {
  if (leftOut.length === 0) return [];
  const meaning = "Kits built to a pattern left out cannot be judged. Mend the file and start again.";
  return [...leftOut.map((one) => `WARNING: pattern file left out. ${one}`), meaning];
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

/**
 * Exit code of a server whose data were taken away: of those that sysexits.h names, "no input". A supervisor must not
 * start again then, since a start where no data are makes an empty station.
 */
export const LOST_EXIT_CODE = 66;

/** What the terminal says when the data were taken away under the server. */
export function stoppedLine({ what, remedy }: DataLoss): string {
  const warning = `Exit code ${LOST_EXIT_CODE}: started again as it is, an empty station would open at this address.`;
  return `STOPPED: ${what}. No line was acknowledged since. ${remedy}\n${warning}`;
}
