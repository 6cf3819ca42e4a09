import type { Pattern } from "#kit";

/** Modes by which a kit does not start, prime or deliver. */
export function stoppingModes({ modes, troubles = [] }: Pattern): ReadonlySet<string> {
  const named = new Set(troubles.flatMap(({ causes }) => causes.flatMap(({ mode }) => mode ?? [])));
  const grounding = modes.filter(({ effect }) => effect === "grounds").map(({ id }) => id);
  return new Set(named.size === 0 ? grounding : grounding.filter((id) => named.has(id)));
}
