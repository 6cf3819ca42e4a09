import type { Routes } from "../routes.ts";
import { openApiOf } from "./openapi.ts";

/** What the API takes and gives, for whoever writes a program that speaks with a station. It tells nothing of the station. */
export function addOpenApiRoute(app: Routes): void {
  let told: object | undefined;
  app.get("/api/openapi.json", { config: { permission: "open-app", asksNobody: true } }, async (_request, reply) => {
    told ??= openApiOf(app.listedRoutes);
    return reply.type("application/json").send(JSON.stringify(told));
  });
}
