import { sayCount } from "#base";
import type { FaultAdvice, Likely } from "#station";

/** A chance as people say it: never a bare percentage. */
export function sayShare(chance: number): string {
  if (chance >= 0.85) return "very likely this";
  if (chance >= 0.6) return "more likely this than not";
  if (chance >= 0.4) return "about as likely as not";
  if (chance >= 0.28) return "about 1 in 3";
  if (chance >= 0.18) return "about 1 in 5";
  if (chance >= 0.08) return "about 1 in 10";
  return "less than 1 in 10";
}

/** "About 1 minute", "about 4 minutes", "under a minute". */
export function sayMinutes(minutes: number): string {
  if (minutes < 0.9) return "under a minute";
  const whole = Math.round(minutes);
  return `about ${sayCount(whole, "minute")}`;
}

/** What the chances rest on. */
export function sayBasis(findings: number): string {
  const judged = "Chances and minutes are judgement, from the kit's pattern.";
  if (findings === 0) return `${judged} No finding of the fleet bears on them yet.`;
  const found = findings === 1 ? "1 finding of the fleet is" : `${findings} findings of the fleet are`;
  return `${judged} ${found} counted in.`;
}

/** Why the next pump comes first. */
export function sayWhyNextPump({ causes }: FaultAdvice, minutes: number): string {
  const likely = causes[0];
  const left = likely === undefined ? "" : ` What is left is most likely: ${lowerFirst(likely.cause.says)}.`;
  return `The next pump gives water in ${sayMinutes(minutes)}, sooner than what is left to try here.${left}`;
}

/** A finding's note: what was seen and done, so that the bench need not begin again. */
export function sayNote(name: string, does: readonly string[], ended: boolean): string {
  const last = does.at(-1);
  const tried = (ended ? does.slice(0, -1) : does).map((one) => one.replace(/\.$/, "")).join("; ");
  const without = tried === "" ? "" : ` Tried without help: ${tried}.`;
  return `${name}.${without}${ended && last !== undefined ? ` What helped: ${last}` : ""}`.slice(0, 480);
}

/** Causes worth a line: the likeliest, to so many as are read at a glance. */
export function worthTelling(causes: readonly Likely[]): readonly Likely[] {
  return causes.filter(({ chance }) => chance >= 0.02).slice(0, 6);
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
