import { z } from "zod";

const id = z.string().min(1).max(100);

/** What the second person confirms by their PIN on the doer's device: in which kit's turnaround, named in which line. */
export const secondByPinRequest = z.strictObject({
  kit: id,
  turnaround: id,
  named: id,
  /** Whose PIN it is, by name. */
  name: z.string().min(1).max(80),
  pin: z.string().min(1).max(20),
});
export type SecondByPinRequest = z.infer<typeof secondByPinRequest>;
