import { describeFault, isInputError, printGiven, type Fault } from "#base";
import { isStoreError, PROBLEM, type Problem, type StoreError } from "#station";
import type { FastifyError, FastifyInstance, FastifyReply, FastifyRequest } from "fastify";
import { hasZodFastifySchemaValidationErrors } from "fastify-type-provider-zod";

/** The one place where an answer becomes an HTTP status. Elsewhere a refusal only says which kind it is. */
const STATUS = {
  "bad-input": 400,
  "signed-out": 401,
  "not-allowed": 403,
  "not-found": 404,
  conflict: 409,
  "too-large": 413,
  "wrong-media": 415,
  "too-much": 422,
  locked: 423,
  slowed: 429,
  broken: 500,
  unavailable: 503,
} as const;

export type RefusalKind = keyof typeof STATUS;

/** A request refused for an ordinary reason. Thrown by routes, answered as a {@link Problem}. */
export class Refusal extends Error {
  override readonly name = "Refusal";
  readonly kind: RefusalKind;
  readonly problem: Problem;

  constructor(kind: RefusalKind, problem: Problem) {
    super(problem.message);
    this.kind = kind;
    this.problem = problem;
  }
}

/** Answers every error and every unknown address as JSON, and tells the log only what the person cannot mend. */
export function answerProblems(app: FastifyInstance): void {
  app.setErrorHandler((error: unknown, request, reply) => answer(reply, refusalOf(error, request)));
  app.setNotFoundHandler((request, reply) => answer(reply, unknownAddress(request)));
}

/** What guards an answer to which nothing else has set headers. */
export const BARE_HEADERS = {
  "content-security-policy": "default-src 'none'; frame-ancestors 'none'",
  "x-content-type-options": "nosniff",
  "referrer-policy": "no-referrer",
};

/**
 * Answers what fails before any route or hook is found, such as an address that cannot be decoded. Nothing else has
 * set headers by then.
 */
export function answerUnroutable(error: FastifyError, _request: FastifyRequest, reply: FastifyReply): void {
  void reply.headers(BARE_HEADERS);
  void answer(reply, unreadable(error));
}

/** Sends a refusal, also from within a hook. */
export function answer(reply: FastifyReply, refusal: Refusal): FastifyReply {
  const { problem } = refusal;
  if (problem.wait !== undefined) void reply.header("retry-after", String(Math.ceil(problem.wait)));
  return reply.code(STATUS[refusal.kind]).header("cache-control", "no-store").type("application/json").send(problem);
}

export function unknownAddress(request: FastifyRequest): Refusal {
  return new Refusal("not-found", {
    code: "SV-121",
    message: `There is nothing at ${printGiven(request.url)}.`,
    remedy: "Check the address, or start again from the board.",
  });
}

function refusalOf(error: unknown, request: FastifyRequest): Refusal {
  if (error instanceof Refusal) return error;
  if (isInputError(error)) return badInput(error.faults);
  if (hasZodFastifySchemaValidationErrors(error)) return badInput(error.validation.map(faultOfIssue));
  if (isStoreError(error)) return storeFailed(error, request);
  return refusalOfStatus(error as FastifyError, request);
}

/** The disk or the database cannot be worked with: devices keep what they have and send it again. */
function storeFailed(error: StoreError, request: FastifyRequest): Refusal {
  request.log.error(error);
  return new Refusal("unavailable", { code: error.code, message: error.message, remedy: error.remedy });
}

export function badInput(faults: readonly Fault[]): Refusal {
  return new Refusal("bad-input", {
    code: faults[0]?.code ?? "SV-122",
    message: faults.map(describeFault).join("\n"),
    remedy: faults[0]?.remedy ?? "Correct what is named and send it again.",
    faults,
  });
}

function faultOfIssue(issue: { instancePath: string; message?: string }): Fault {
  const field = issue.instancePath.replace(/^\//, "").replaceAll("/", ".") || "request";
  const allowed = issue.message ?? "what the address takes";
  return { code: "SV-122", field, got: "something else", allowed, remedy: "Correct it and send it again." };
}

function refusalOfStatus(error: FastifyError, request: FastifyRequest): Refusal {
  if (error.statusCode === 413) return tooLarge(request.routeOptions.bodyLimit);
  if (error.statusCode === 415) return wrongMedia(request);
  if (error.statusCode === 429) return slowedByAddress(error);
  if (error.statusCode !== undefined && error.statusCode < 500) return unreadable(error);
  request.log.error(error);
  return broken();
}

/** @param limit - the most that is taken [byte] */
export function tooLarge(limit: number): Refusal {
  return new Refusal("too-large", {
    code: PROBLEM.tooLarge,
    message: `This is too large: at most ${limit} bytes are taken at once.`,
    remedy: "Send it in parts: fewer lines at a time, or a photo made smaller.",
  });
}

function wrongMedia(request: FastifyRequest): Refusal {
  return new Refusal("wrong-media", {
    code: "SV-123",
    message: `This address does not take ${printGiven(request.headers["content-type"])}.`,
    remedy: "Send JSON as application/json, a photo as image/jpeg, image/png or image/webp.",
  });
}

function slowedByAddress(error: FastifyError & { wait?: number }): Refusal {
  return new Refusal("slowed", {
    code: PROBLEM.slowed,
    message: "Too many attempts came from this network address.",
    remedy: "Wait a minute and try again.",
    wait: error.wait ?? 60,
  });
}

function unreadable(error: FastifyError): Refusal {
  return new Refusal("bad-input", {
    code: "SV-124",
    message: `The request cannot be read: ${error.message}`,
    remedy: "Check the address, and send the whole of it again as well-formed JSON.",
  });
}

/** A bug or a broken disk: the details are in the server's own log, never in the answer. */
function broken(): Refusal {
  return new Refusal("broken", {
    code: "SV-125",
    message: "The server could not do this because of a fault of its own.",
    remedy: "Nothing is lost on this device. Try again; if it goes on, look at the server's terminal.",
  });
}
