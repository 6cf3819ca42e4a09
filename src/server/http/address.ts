import type { FastifyRequest } from "fastify";
import type { Parts } from "../parts.ts";

/** The address people have in front of them, such as "http://boathouse.local:4300": as set, or as they reached us. */
export function originOf(parts: Pick<Parts, "origin">, request: FastifyRequest): string {
  return parts.origin ?? new URL(`${request.protocol}://${request.host}`).origin;
}
