import { CARD_PARTS, type CardStep, type Pattern } from "#kit";
import type { StepReport } from "#readiness";

/** A picture of the card for strangers that people told the pattern's owner about. */
export interface PictureTold {
  readonly step: CardStep;
  /** Counted through the whole card, from 1, as the card shows it. */
  readonly number: number;
  /** Reports, by what they said. */
  readonly reports: Readonly<Record<StepReport["what"], number>>;
  /** The same, each as it was told, newest first. */
  readonly told: readonly StepReport[];
}

/** Pictures of a pattern's card for strangers with their numbers, as the card shows them; none where it has no card. */
export function cardPictures({ stranger }: Pattern): readonly Pick<PictureTold, "step" | "number">[] {
  const ordered = CARD_PARTS.flatMap((part) => stranger?.steps.filter((step) => step.part === part) ?? []);
  return ordered.map((step, i) => ({ step, number: i + 1 }));
}

/**
 * Pictures of the card for strangers that were ever reported wrong, impossible or unclear.
 *
 * @param pattern - its newest version; pictures that it no longer has are left out
 * @param reports - on this pattern, those on its lines too
 * @returns most often first
 */
export function picturesTold(pattern: Pattern, reports: readonly StepReport[]): readonly PictureTold[] {
  const told = cardPictures(pattern).map(({ step, number }) => {
    const own = reports.filter((one) => one.card === true && one.step === step.id);
    return { step, number, ...reportedIn(own) };
  });
  return told
    .filter((one) => one.told.length > 0)
    .toSorted((one, other) => other.told.length - one.told.length || one.number - other.number);
}

/** Reports counted by what they said, and each as it was told, newest first. */
export function reportedIn(own: readonly StepReport[]): Pick<PictureTold, "reports" | "told"> {
  const count = (what: StepReport["what"]) => own.filter((one) => one.what === what).length;
  return {
    reports: { wrong: count("wrong"), impossible: count("impossible"), unclear: count("unclear") },
    told: own.toSorted((one, other) => other.at.localeCompare(one.at)),
  };
}
