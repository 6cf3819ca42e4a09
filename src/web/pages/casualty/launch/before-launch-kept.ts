import { parsedJson } from "#base";
import { useState } from "react";
import { CALL_SIZES, type Call } from "./before-launch.ts";
import { SITUATION_FIELDS } from "./situation/situation.ts";
import type { ToldLevel } from "./told/tellings.ts";
import { BOATS } from "./sizes.ts";

/* A phone that reloads, or a thumb that goes back, must not lose what came over a bad radio. */

const PLACE = "drykeel.before-launch";
/** What was told longer ago than this is of another boat [ms]. */
export const KEPT_MS = 2 * 3600 * 1000;

/** What has been told, with how it is changed and let go. */
export interface KeptCall {
  readonly call: Call;
  readonly change: (call: Call) => void;
  readonly clear: () => void;
}

/** Keeps what has been told in this tab until a sheet is opened, another boat is begun, or it is old. */
export function useKeptCall(): KeptCall {
  const [call, setCall] = useState(() => readCall(sessionStorage.getItem(PLACE), Date.now()));
  const change = (next: Call) => {
    setCall(next);
    sessionStorage.setItem(PLACE, keptText(next, Date.now()));
  };
  const clear = () => {
    setCall({});
    sessionStorage.removeItem(PLACE);
  };
  return { call, change, clear };
}

/** How a call is kept. */
export function keptText(call: Call, now: number): string {
  return JSON.stringify({ at: now, call });
}

/** A call as kept; what is old or cannot be read was not told. */
export function readCall(text: string | null, now: number): Call {
  const { at, call } = recordIn(text === null ? undefined : parsedJson(text));
  if (typeof at !== "number" || now - at > KEPT_MS) return {};
  const told = recordIn(call);
  const kind = BOATS.find(({ id }) => id === told.kind)?.id;
  const light = LIGHTS.find((id) => id === told.light);
  const tellings = Array.isArray(told.tellings) ? told.tellings.flatMap(levelIn) : [];
  return {
    ...(kind && { kind }),
    ...(light && { light }),
    ...(tellings.length > 0 && { tellings }),
    ...some(told, CALL_SIZES, "number"),
    ...some(told, TEXTS, "string"),
    ...some(told, FLAGS, "boolean"),
  };
}

const LIGHTS = ["daylight", "dark", "torch"] as const;
const TEXTS = [...SITUATION_FIELDS, "boat"] as const;
const FLAGS = ["herMains"] as const;

/** Of these, what is of the sort it must be. */
function some(told: Readonly<Record<string, unknown>>, keys: readonly (keyof Call)[], sort: string): Partial<Call> {
  return Object.fromEntries(keys.filter((key) => typeof told[key] === sort).map((key) => [key, told[key]]));
}

function levelIn(value: unknown): ToldLevel[] {
  const { at, water } = recordIn(value);
  return typeof at === "number" && typeof water === "number" ? [{ at, water }] : [];
}

function recordIn(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}
