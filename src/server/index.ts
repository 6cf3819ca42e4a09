export { createServer } from "./server.ts";
export type { DemoAccount, ServerOptions } from "./parts.ts";
export type { Papers } from "./paper-routes.ts";
