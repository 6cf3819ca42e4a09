import { CALLING, mayCall, ROLES } from "#station";
import type { HTTPMethods } from "fastify";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ListedRoute } from "./http/gate.ts";
import { stageStation, type Browser, type StagedStation } from "./start/staged-station.ts";

describe("permission table", () => {
  let station: StagedStation;
  let routes: readonly ListedRoute[];

  beforeAll(async () => {
    station = await stageStation({ webDir: `${process.cwd()}/docs` });
    await station.app.ready();
    routes = station.app.listedRoutes.toSorted(byOrder);
  });
  afterAll(() => station.app.close());

  it("has a route for every line, and a line for every route", () => {
    expect([...new Set(routes.map((route) => route.permission))].toSorted()).toEqual(Object.keys(CALLING).toSorted());
  });

  it.each([undefined, ...ROLES])("decides every route, for the role %s", async (role) => {
    const browser = role === undefined ? station.browser() : await station.signedIn(role, `device-${role}`);
    const asked = [];
    for (const route of routes) asked.push({ ...route, letIn: await isLetIn(browser, route) });
    expect(asked).toEqual(routes.map((route) => ({ ...route, letIn: mayCall(role, route.permission) })));
  });

  it("refuses to make a route without a line", async () => {
    const { app } = await stageStation();
    expect(() => app.get("/api/unlisted", async () => "open")).toThrow("no permission for /api/unlisted");
  });
});

/** Calls a route as it comes; what it says of the request itself does not matter, only whether the gate opened. */
async function isLetIn(browser: Browser, { url, method }: ListedRoute): Promise<boolean> {
  const filled = url.replace(":hash", "0".repeat(64)).replace(/:\w+/g, "none").replace("*", "board");
  const { status, code } = await browser.open(method as HTTPMethods, filled);
  return method === "HEAD" ? ![401, 403].includes(status) : !["SV-101", "SV-104"].includes(code);
}

/** Signing out comes last: after it everything is refused. */
function byOrder(one: ListedRoute, other: ListedRoute): number {
  return Number(one.permission === "sign-out") - Number(other.permission === "sign-out");
}
