import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { stageStation } from "../src/server/start/staged-station.ts";

/* Writes docs/openapi.json as a station serves it. */

const { app } = await stageStation();
const reply = await app.inject({ method: "GET", url: "/api/openapi.json" });
const text = `${JSON.stringify(reply.json(), null, 2)}\n`;
writeFileSync(join(import.meta.dirname, "..", "docs", "openapi.json"), text);
await app.close();
