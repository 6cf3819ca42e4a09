/** Why a start cannot go on, in words that say what to do. The start file prints it and ends. */
export class StartProblem extends Error {
  override readonly name = "StartProblem";
}

/** The code that Node gives a failed system call, such as "EACCES". */
export function codeOf(cause: unknown): string | undefined {
  return (cause as NodeJS.ErrnoException).code;
}
