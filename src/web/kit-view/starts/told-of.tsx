import { familyOf, type Pattern } from "#kit";
import type { KitState } from "#readiness";
import { useStation } from "#web/device/index.ts";
import { useWords } from "#web/language/index.ts";
import { sayToldOf } from "./start-words.ts";

/** Turnarounds of some kits that a figure does not count, as they were only told of. */
export function ToldOf({ kits }: { readonly kits: readonly KitState[] }) {
  const told = sayToldOf(kits, useWords("starts"));
  return told === undefined ? null : <p className="quiet">{told}</p>;
}

/** The same of all kits of a pattern, whatever its version, those taken off charge too. */
export function ToldOfPattern({ pattern }: { readonly pattern: Pattern }) {
  const { kits, retired } = useStation();
  return <ToldOf kits={[...kits, ...retired].filter((kit) => familyOf(kit.pattern) === pattern.id)} />;
}
