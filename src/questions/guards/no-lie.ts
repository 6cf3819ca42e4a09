import { lieWithWater, type FloatingVessel, type Sounding } from "#flooding";

/** True where a boat as told has no angle at which she comes to rest afloat. */
export function hasNoLie(vessel: FloatingVessel): boolean {
  return lieWithWater(vessel).kind !== "afloat";
}

/** Soundings with what a person should look at, whoever says it. */
export type Told = Omit<Sounding, "warnings"> & {
  readonly warnings: readonly { readonly kind: string; readonly says: string }[];
};

/** What soundings say of the water alone: of a boat with no stable lie nothing is forecast. */
export function withoutForecast(sounding: Sounding): Told {
  const { forecast, warnings } = sounding;
  const lost = { chance: 1, within: 0 };
  return {
    ...sounding,
    forecast: { ...forecast, fan: [], dry: { chance: 0, within: 0 }, loss: lost },
    advice: [],
    warnings: [NO_LIE, ...warnings.filter(({ kind }) => kind !== "loss-possible" && kind !== "pump-will-suck-air")],
  };
}

const NO_LIE = {
  kind: "no-stable-lie",
  says: "As she is told there is no angle at which she comes to rest afloat: nothing is forecast. Look at her, and at hull, draught and centre of gravity.",
} as const;
