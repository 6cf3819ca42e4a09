import { CALLING, ROLES } from "#station";
import { z } from "zod";
import type { ListedRoute } from "../http/gate.ts";

/** The version of the program whose routes these are; a test holds it to package.json. */
const VERSION = "0.2.0";

type Json = Readonly<Record<string, unknown>>;

/**
 * The description of every route of the API in the form of OpenAPI 3.1, from the schemas that judge requests and replies.
 *
 * @param routes - every route there is, with its line in the permission table
 */
export function openApiOf(routes: readonly ListedRoute[]): Json {
  const described = routes.filter(({ url, method }) => url.startsWith("/api/") && method !== "HEAD");
  const urls = [...new Set(described.map(({ url }) => url))].toSorted();
  return {
    openapi: "3.1.0",
    info: { title: "Drykeel", version: VERSION, description: ABOUT, license: { name: "Apache-2.0" } },
    components: {
      securitySchemes: { session: { type: "apiKey", in: "cookie", name: "drykeel_session" } },
      schemas: { Problem: PROBLEM_SCHEMA },
    },
    paths: Object.fromEntries(urls.map((url) => [pathOf(url), pathItem(described.filter((one) => one.url === url))])),
  };
}

const ABOUT =
  "A station's server. Whoever is signed in has a session cookie. x-roles names who may call a route; a refusal is a Problem.";

const PROBLEM_SCHEMA: Json = {
  type: "object",
  required: ["code", "message", "remedy"],
  properties: {
    code: { type: "string", description: "As docs/errors.md lists it, such as SV-101" },
    message: { type: "string", description: "What is wrong" },
    remedy: { type: "string", description: "What to do" },
    faults: { type: "array", items: { type: "object" }, description: "Every fault in what was sent" },
    wait: { type: "number", description: "Seconds to wait, where waiting helps [s]" },
    nextVersion: { type: "integer", description: "The version taken next, where another of a pattern is refused" },
  },
};

function pathOf(url: string): string {
  return url.replace(/:(\w+)/g, "{$1}");
}

function pathItem(routes: readonly ListedRoute[]): Json {
  return Object.fromEntries(routes.map((route) => [route.method.toLowerCase(), operationOf(route)]));
}

function operationOf(route: ListedRoute): Json {
  const { permission, schema = {}, url, method } = route;
  const allowed: readonly string[] = CALLING[permission];
  const isOpen = allowed.includes("signed-out");
  const parameters = [...parametersOf(schema.params, "path", url), ...parametersOf(schema.querystring, "query", url)];
  return {
    operationId: `${method.toLowerCase()}${pathOf(url).replaceAll(/[^A-Za-z0-9]+(\w)?/g, (_, next: string = "") => next.toUpperCase())}`,
    "x-permission": permission,
    "x-roles": ROLES.filter((role) => allowed.includes(role)),
    security: isOpen ? [] : [{ session: [] }],
    ...(parameters.length > 0 && { parameters }),
    ...(schema.body !== undefined && { requestBody: { required: true, content: jsonOf(schema.body, "input") } }),
    responses: responsesOf(schema.response),
  };
}

function parametersOf(schema: unknown, place: "path" | "query", url: string): readonly Json[] {
  const told = schema === undefined ? {} : (schemaOf(schema, "input") as { properties?: Json; required?: string[] });
  const names =
    place === "path" ? [...url.matchAll(/:(\w+)/g)].map(([, name]) => name!) : Object.keys(told.properties ?? {});
  return names.map((name) => ({
    name,
    in: place,
    required: place === "path" || told.required?.includes(name) === true,
    schema: told.properties?.[name] ?? { type: "string" },
  }));
}

function responsesOf(response: unknown): Json {
  const told = Object.entries((response ?? {}) as Json).map(([status, schema]) => [
    status,
    { description: "Done", content: jsonOf(schema, "output") },
  ]);
  const done =
    told.length > 0 ? Object.fromEntries(told) : { 200: { description: "Done; not JSON, or without content" } };
  const problem = { "application/json": { schema: { $ref: "#/components/schemas/Problem" } } };
  return { ...done, default: { description: "Refused", content: problem } };
}

function jsonOf(schema: unknown, io: "input" | "output"): Json {
  return { "application/json": { schema: schemaOf(schema, io) } };
}

/** What no JSON Schema can say is left open; the form is that of OpenAPI 3.1, which is JSON Schema 2020-12. */
function schemaOf(schema: unknown, io: "input" | "output"): Json {
  if (!(schema instanceof z.ZodType)) return {};
  const { $schema: _, ...told } = z.toJSONSchema(schema, { io, unrepresentable: "any" });
  return told;
}
