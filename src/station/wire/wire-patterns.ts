import { z } from "zod";

/** The most characters of a pattern's file. */
const MOST_CHARACTERS = 512 * 1024;
const text = z.string().min(1).max(MOST_CHARACTERS);
/** "id@version" */
const patternKey = z
  .string()
  .max(70)
  .regex(/^[a-z0-9]+(-[a-z0-9]+)*@\d{1,4}$/, { error: "id and version, such as my-kit@2" });

/** `GET /api/patterns/:pattern/file`: the file of one version, with its comments, and what stands beside it. */
export const patternFileParams = z.object({ pattern: patternKey });
export const patternFileReply = z.object({
  pattern: z.string(),
  text: z.string(),
  /** Text of the files beside it, by name. */
  beside: z.record(z.string(), z.string()),
});
export type PatternFileReply = z.infer<typeof patternFileReply>;

/**
 * `POST /api/patterns/issue`: a new version for the station; `base` is the one whose drawings it keeps.
 * `PUT /api/patterns/draft` takes the same and lays it out as the caller's draft; `DELETE` takes that in again.
 */
export const issueRequest = z.strictObject({ text, base: patternKey.optional() });
export type IssueRequest = z.infer<typeof issueRequest>;
export const issueReply = z.object({ pattern: z.string(), by: z.string(), at: z.string() });
export type IssueReply = z.infer<typeof issueReply>;

/** `GET /api/patterns/drafts`: what people laid out to be walked. */
export const draftsReply = z.object({
  drafts: z.array(
    z.object({ by: z.string(), at: z.string(), text: z.string(), beside: z.record(z.string(), z.string()) }),
  ),
});
export type DraftsReply = z.infer<typeof draftsReply>;
