import { wrongLevel, wrongMeasures, type CasualtyBoat, type CasualtyState, type WrongMeasure } from "#readiness";

/** A casualty without what cannot be, and what that is: an older version or two devices at once may have written it. */
export interface Believable {
  readonly casualty: CasualtyState;
  readonly measures: readonly WrongMeasure[];
  readonly soundings: readonly ImpossibleSounding[];
}

export interface ImpossibleSounding {
  readonly sounding: CasualtyState["soundings"][number];
  readonly wrong: WrongMeasure;
}

/**
 * Leaves out the measures no such boat has, one after the other until the rest fit each other, and then the soundings
 * above the highest level that can stand in her. Her length is never left out: without it there is nothing to guess by.
 *
 * @param told - as its entries tell it
 */
export function believableOf(told: CasualtyState): Believable {
  const { boat, measures } = believableBoat(told.boat);
  const soundings = told.soundings.flatMap((sounding) => {
    const wrong = wrongLevel(boat, sounding.level);
    return wrong ? [{ sounding, wrong }] : [];
  });
  if (measures.length + soundings.length === 0) return { casualty: told, measures, soundings };
  const impossible = new Set(soundings.map(({ sounding }) => sounding));
  const kept = told.soundings.filter((one) => !impossible.has(one));
  return { casualty: { ...told, boat, soundings: kept }, measures, soundings };
}

function believableBoat(boat: CasualtyBoat): Pick<Believable, "measures"> & { readonly boat: CasualtyBoat } {
  const [first] = wrongMeasures(boat).filter(({ field }) => field !== "length");
  if (!first) return { boat, measures: [] };
  const { [first.field as "depth"]: _, ...others } = boat;
  const rest = believableBoat(others);
  return { boat: rest.boat, measures: [first, ...rest.measures] };
}
