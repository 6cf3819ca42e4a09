import { InputError, parsedJson } from "#base";
import type { FastifyInstance, FastifyRequest } from "fastify";

/** Lists and objects within one another in a request. A line may have twelve; the reader takes seconds for thousands. */
const DEEPEST = 200;
const [QUOTE, BACKSLASH] = [34, 92];
const OPENING = new Set([91, 123]);
const CLOSING = new Set([93, 125]);

type Done = (error: Error | null, body?: unknown) => void;
type Read = ReturnType<FastifyInstance["getDefaultJsonParser"]>;
type Parser = (request: FastifyRequest, body: string, done: Done) => void;

/**
 * A reader of JSON that looks how deep it is before it reads it.
 *
 * @param read - what then reads it
 */
export function readingShallow(read: Read): Parser {
  return (request, body, done) => {
    if (nestsDeeperThan(DEEPEST, body)) done(tooDeep());
    else void read(request, body, done);
  };
}

/**
 * A reader of JSON that says which key it refuses a body for: the usual one says of any that it is no JSON.
 *
 * @param read - what then reads it, and refuses keys that would change what every object answers to
 */
export function namingKeys(read: Read): Read {
  return (request, body, done) =>
    read(request, body, (error, value) =>
      done(error !== null && parsedJson(body) !== undefined ? forbiddenKey() : error, value),
    );
}

/** True where lists and objects stand within one another deeper than that; what stands in text is no list. */
export function nestsDeeperThan(deepest: number, json: string): boolean {
  let depth = 0;
  for (let at = 0; at < json.length; at++) {
    const code = json.charCodeAt(at);
    if (code === QUOTE) at = endOfText(json, at);
    else if (OPENING.has(code) && ++depth > deepest) return true;
    else if (CLOSING.has(code)) depth -= 1;
  }
  return false;
}

function endOfText(json: string, from: number): number {
  let end = json.indexOf('"', from + 1);
  while (end > 0 && isEscaped(json, end)) end = json.indexOf('"', end + 1);
  return end < 0 ? json.length : end;
}

function isEscaped(json: string, at: number): boolean {
  let first = at;
  while (json.charCodeAt(first - 1) === BACKSLASH) first -= 1;
  return (at - first) % 2 === 1;
}

function tooDeep(): InputError {
  const allowed = `at most ${DEEPEST} lists and objects within one another`;
  const remedy = "Send lines as the app writes them.";
  return new InputError([{ code: "SV-176", field: "body", got: "deeper nesting", allowed, remedy }]);
}

function forbiddenKey(): InputError {
  const allowed = "names that no object has by itself: not __proto__, nor constructor with a prototype in it";
  const remedy = "Leave that name out and send it again.";
  return new InputError([{ code: "SV-126", field: "body", got: "such a name", allowed, remedy }]);
}
