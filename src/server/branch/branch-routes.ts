import {
  bringBackReply,
  bringBackRequest,
  commonReply,
  commonRequest,
  PUSH_BYTES_LIMIT,
  type CommonReply,
  type CommonRequest,
  type LogStore,
} from "#station";
import { callerOf } from "../http/gate.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";
import { bringBack } from "./bring-back.ts";
import { lastInCommon } from "./compare-heads.ts";

/** For devices whose copy is not what the station has: where the two part, and what the station has lost. */
export function addBranchRoutes(app: Routes, parts: Parts): void {
  app.post(
    "/api/log/common",
    { config: { permission: "read-log" }, schema: { body: commonRequest, response: { 200: commonReply } } },
    async (request) => ({ common: await commonOf(parts.store, request.body.places) }),
  );
  app.post(
    "/api/log/bring-back",
    {
      config: { permission: "bring-back" },
      bodyLimit: PUSH_BYTES_LIMIT,
      schema: { body: bringBackRequest, response: { 200: bringBackReply } },
    },
    async (request) => {
      const { kept, clashing, before } = await bringBack(parts, callerOf(request), request.body);
      return { kept: [...kept], clashing: [...clashing], ...(before && { before }) };
    },
  );
}

async function commonOf(store: LogStore, places: CommonRequest["places"]): Promise<CommonReply["common"]> {
  const common: Record<string, number> = {};
  for (const [place, heads] of Object.entries(places)) common[place] = await lastInCommon(store, place, heads);
  return common;
}
