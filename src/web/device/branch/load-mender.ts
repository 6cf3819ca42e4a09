import type { BranchMender, MenderParts } from "./branch-mender.ts";

/** What mends a log that has parted from the station's; fetched when it is needed, for most devices never mend anything. */
export async function loadMender(parts: MenderParts): Promise<BranchMender> {
  const { BranchMender } = await import("./branch-mender.ts");
  return new BranchMender(parts);
}
