/** The id in a subject such as "kit:7f3k"; the subject itself where it has none. */
export function idOf(subject: string): string {
  return subject.slice(subject.indexOf(":") + 1);
}
