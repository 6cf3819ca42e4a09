import { PROBLEM } from "#station";
import { expect, it } from "vitest";
import { fromOf } from "./use-plan.ts";

const refused = (code: string) => ({ kind: "refused" as const, problem: { code, message: "Why." } });

it.each([
  [{ kind: "answered" as const }, { kind: "station" }],
  [{ kind: "unreachable" as const }, { kind: "no-network" }],
  [refused(PROBLEM.tookTooLong), { kind: "no-time" }],
  [refused("SV-186"), { kind: "refused", because: "Why." }],
])("why no better plan came is what the station said: %j", (reply, from) => {
  expect(fromOf(reply)).toEqual(from);
});
