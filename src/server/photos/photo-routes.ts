import { InputError } from "#base";
import {
  missingPhotosReply,
  missingPhotosRequest,
  PHOTO_BYTES_LIMIT,
  photoReply,
  sniffPhoto,
  type PhotoReply,
} from "#station";
import { createHash } from "node:crypto";
import { z } from "zod";
import type { Parts } from "../parts.ts";
import { Refusal, unknownAddress } from "../http/problem.ts";
import type { Routes } from "../routes.ts";

const photoParams = z.object({
  hash: z.string().regex(/^[0-9a-f]{64}$/, "the SHA-256 of the photo in lower-case hex"),
});

/** Photos by the hash of their bytes: sent once, never changed, held for good. */
export function addPhotoRoutes(app: Routes, parts: Parts): void {
  app.addContentTypeParser(/^image\//, { parseAs: "buffer" }, (_request, body, done) => done(null, body));
  app.put(
    "/api/photos/:hash",
    {
      config: { permission: "send-photo" },
      bodyLimit: PHOTO_BYTES_LIMIT,
      schema: { params: photoParams, response: { 200: photoReply, 201: photoReply } },
    },
    async (request, reply) => {
      const kept = await keepPhoto(parts, request.params.hash, request.body);
      return reply.code(kept.kept === "now" ? 201 : 200).send(kept);
    },
  );
  addPhotoReading(app, parts);
}

function addPhotoReading(app: Routes, parts: Parts): void {
  app.get(
    "/api/photos/:hash",
    { config: { permission: "read-log" }, schema: { params: photoParams } },
    async (request, reply) => {
      const photo = await parts.store.photo(request.params.hash);
      if (photo === undefined) throw unknownAddress(request);
      void reply.header("content-security-policy", "default-src 'none'; sandbox");
      return reply.type(photo.mime).send(Buffer.from(photo.bytes));
    },
  );
  app.post(
    "/api/photos/missing",
    {
      config: { permission: "read-log" },
      schema: { body: missingPhotosRequest, response: { 200: missingPhotosReply } },
    },
    async (request) => ({ missing: [...(await parts.store.missingPhotos(request.body.hashes))] }),
  );
}

async function keepPhoto(parts: Parts, hash: string, body: unknown): Promise<PhotoReply> {
  const bytes = body instanceof Uint8Array ? body : new Uint8Array();
  if (createHash("sha256").update(bytes).digest("hex") !== hash) throw notThatPhoto(bytes.length);
  const mime = sniffPhoto(bytes);
  if (mime === undefined) throw notAPhoto();
  if ((await parts.store.missingPhotos([hash])).length === 0) return { hash, kept: "already" };
  await parts.store.putPhoto({ hash, mime, bytes });
  return { hash, kept: "now" };
}

function notThatPhoto(length: number): InputError {
  const got = `${length} bytes with another hash`;
  const remedy = "The photo did not arrive whole. It is still on the device: send it again.";
  return new InputError([{ code: "SV-160", field: "body", got, allowed: "the bytes that the address names", remedy }]);
}

function notAPhoto(): Refusal {
  return new Refusal("wrong-media", {
    code: "SV-161",
    message: "These bytes are no JPEG, PNG or WebP picture.",
    remedy: "Send a photo as JPEG, PNG or WebP.",
  });
}
