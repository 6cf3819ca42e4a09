import { z } from "zod";

/** Which of what was made: a link's own id shows nothing of its secret. */
const linkId = z.string().max(96);

/** A place whose wall is wanted. */
export const wallLinkRequest = z.strictObject({ place: z.string().max(96) });

/** A new link. It is shown once: the station keeps only a hash of its secret. */
export const newLinkReply = z.object({ id: linkId, link: z.string() });
export type NewLinkReply = z.infer<typeof newLinkReply>;

/** Links that open something now. */
export const linksReply = z.object({
  links: z.array(z.object({ id: linkId, place: z.string().optional(), created: z.string() })),
});
export type LinksReply = z.infer<typeof linksReply>;

export const withdrawLinkRequest = z.object({ id: linkId });
