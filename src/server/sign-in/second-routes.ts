import { InputError } from "#base";
import type { Entry } from "#log";
import { confirmSecond, secondByPinRequest, type SecondByPinRequest } from "#station";
import { z } from "zod";
import { callerOf } from "../http/gate.ts";
import { Refusal } from "../http/problem.ts";
import type { Parts } from "../parts.ts";
import type { Routes } from "../routes.ts";
import { proveDevice } from "./device-key.ts";
import { provePin } from "./pins.ts";

/** At most so many tries from one network address; each person's own tries are slowed beside that. */
const FEW = { rateLimit: { max: 20, timeWindow: "1 minute" } } as const;

/** The second person types their PIN on the doer's device: the station proves it, and writes the line as theirs. */
export function addSecondRoutes(app: Routes, parts: Parts): void {
  app.post(
    "/api/second",
    {
      config: { permission: "confirm-by-pin", ...FEW },
      schema: { body: secondByPinRequest, response: { 200: z.object({ entry: z.string() }) } },
    },
    async (request) => {
      const { device } = callerOf(request);
      const proof = await proveDevice(parts, request, device);
      const { name, pin } = request.body;
      const person = await provePin(parts, { name, pin, device }, proof);
      return { entry: (await writeConfirmed(parts, { person, device }, request.body)).id };
    },
  );
}

async function writeConfirmed(
  { wholeLog, ambient, store }: Parts,
  { person, device }: { readonly person: string; readonly device: string },
  { kit: id, turnaround, named }: SecondByPinRequest,
): Promise<Entry> {
  const reading = (await wholeLog.read()).read();
  const me = reading.people.find((one) => one.id === person);
  const kit = reading.kits.find((one) => one.id === id);
  if (me === undefined || kit === undefined) throw notHere();
  const at = ambient.now();
  const act = confirmSecond({ ...reading, me, today: at.slice(0, 10), now: at }, kit, {
    turnaround,
    named,
    byPin: true,
  });
  if (act.kind === "refused") throw new InputError(act.because);
  const entry: Entry = { id: ambient.newId(), at, by: person, device, after: kit.heads, ...act.draft };
  await store.append([entry], at);
  return entry;
}

function notHere(): Refusal {
  return new Refusal("conflict", {
    code: "SV-203",
    message: "The station does not have this kit yet.",
    remedy: "Wait until all lines of this device are sent, then try again.",
  });
}
