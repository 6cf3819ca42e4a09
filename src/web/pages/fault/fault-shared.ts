import type { Step, Trouble } from "#kit";
import type { Where } from "#station";
import type { KitAtHand } from "#web/kit-view/at-hand.ts";

/** What is being tried on a kit; kept on this device until it is ended. */
export interface Finding {
  readonly sign: string;
  readonly tried: readonly string[];
  /** The try that helped. */
  readonly ended: string;
  /** Names of pumps that could not be taken in its place: they stand by no more. */
  readonly refused: readonly string[];
}

/** What every view of a fault being found has. */
export interface FaultShared {
  readonly at: KitAtHand;
  readonly trouble: Trouble;
  /** Findings so far by mode, on kits of this pattern. */
  readonly found: ReadonlyMap<string, number>;
  readonly where: Where;
  /** By name, those that can be taken in its place and were not refused. */
  readonly nextPumps: readonly string[];
  /** Minutes since its engine ran, where that was lately [min]. */
  readonly ranAgo?: number | undefined;
  /** On a casualty: another pump may have to come. What was told of kits of other stations, if anything was. */
  readonly atSea?: { readonly casualty: string; readonly otherKits?: string | undefined };
  /** The line of a turnaround that one came from, whose dangers are there still. */
  readonly from: Step | undefined;
  readonly finding: Finding;
  readonly onChange: (finding: Finding) => void;
  /** Back to the choice of what is seen. */
  readonly onBegin: () => void;
}
