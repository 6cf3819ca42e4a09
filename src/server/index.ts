export { createServer } from "./server.ts";
export type { DemoAccount, ServerOptions } from "./parts.ts";
