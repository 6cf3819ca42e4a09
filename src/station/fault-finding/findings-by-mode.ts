import { familyOf } from "#kit";
import { isOfDrill, type KitState } from "#readiness";

/**
 * How often each mode was found on kits of one pattern, whatever its version; what was planted for a drill left out.
 *
 * @param kits - of the station
 * @param pattern - "id@version" of the kit in hand
 * @returns findings by mode
 */
export function findingsByMode(kits: readonly KitState[], pattern: string): ReadonlyMap<string, number> {
  const family = familyOf(pattern);
  const alike = kits.filter((kit) => familyOf(kit.pattern) === family);
  const found = new Map<string, number>();
  const real = alike.flatMap((kit) => kit.findings.filter((finding) => !isOfDrill(finding, kit)));
  for (const { mode } of real) found.set(mode, (found.get(mode) ?? 0) + 1);
  return found;
}
