/** Every role there is. */
export const ROLES = ["keeper", "crew", "assessor", "commander", "administrator"] as const;

export type Role = (typeof ROLES)[number];

/* Who may write which kind of entry: each kind names one of these in its own file. */

/** Who works on kits. */
export const HANDS: readonly Role[] = ["keeper", "crew", "administrator"];
/** Who may be at the telephone when a boat calls, and write on her sheet: a call never waits for a role. */
export const ON_SCENE: readonly Role[] = ["keeper", "crew", "commander", "administrator"];
/** Who decides for others. */
export const KEEPING_ROLES: readonly Role[] = ["keeper", "administrator"];
export const ADMINISTRATORS: readonly Role[] = ["administrator"];
/** Who sees kits at close hand. */
export const WATCHERS: readonly Role[] = ["keeper", "crew", "assessor", "administrator"];
/** Who looks again at what keepers wrote. */
export const VISITORS: readonly Role[] = ["keeper", "assessor", "administrator"];
/** The server or the shell writes it itself. */
export const NOBODY: readonly Role[] = [];
