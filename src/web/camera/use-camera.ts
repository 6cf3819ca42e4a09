import type { Words } from "#words";
import { useEffect, useEffectEvent, useRef, useState } from "react";

/** How it stands with the camera. */
export type CameraState =
  | { readonly kind: "asking" | "seeing" }
  /** No camera, none that this page may use, or none over this connection. */
  | { readonly kind: "none"; readonly because: NoCamera };

/** Why there is no camera: no HTTPS, not allowed, or none that is free. */
type NoCamera = "insecure" | "denied" | "missing";

const NO_CAMERA = { insecure: "cameraInsecure", denied: "cameraDenied", missing: "cameraMissing" } as const;

/** Why there is no camera, in words. */
export function sayNoCamera(because: NoCamera, words: Words["parts"]): string {
  return words[NO_CAMERA[because]]();
}

/** Between two looks [ms]. */
const LOOK_MS = 120;
/** The longer side of what is looked at: fields of a large code are still several dots wide [pixel]. */
const LONGEST = 1280;

/**
 * Looks through the camera again and again.
 *
 * @param look - called with each picture; the next is taken once it is done
 */
export function useCamera(look: (picture: ImageData) => Promise<void>) {
  const video = useRef<HTMLVideoElement>(null);
  const onPicture = useEffectEvent(look);
  const [state, setState] = useState<CameraState>({ kind: "asking" });
  useEffect(() => {
    const over = new AbortController();
    void watch(video, (picture) => onPicture(picture), setState, over.signal);
    return () => over.abort();
  }, []);
  return { video, state };
}

async function watch(
  video: { readonly current: HTMLVideoElement | null },
  look: (picture: ImageData) => Promise<void>,
  report: (state: CameraState) => void,
  over: AbortSignal,
): Promise<void> {
  const stream = await openCamera();
  if (typeof stream === "string") return report({ kind: "none", because: stream });
  const stop = () => stream.getTracks().forEach((track) => track.stop());
  const element = video.current;
  if (over.aborted || element === null) return stop();
  over.addEventListener("abort", stop);
  element.srcObject = stream;
  await element.play().catch(() => undefined);
  if (!over.aborted) report({ kind: "seeing" });
  const canvas = document.createElement("canvas");
  while (!over.aborted) {
    const picture = pictureOf(element, canvas);
    if (picture !== undefined) await look(picture);
    await new Promise((resolve) => setTimeout(resolve, LOOK_MS));
  }
}

/** The stream, or why there is none. */
async function openCamera(): Promise<MediaStream | NoCamera> {
  // A page that did not come over HTTPS has no camera, and this whole part of the browser is missing.
  if (!("mediaDevices" in navigator)) return "insecure";
  try {
    return await navigator.mediaDevices.getUserMedia({
      audio: false,
      video: { facingMode: "environment", width: { ideal: LONGEST }, height: { ideal: 960 } },
    });
  } catch (cause) {
    if (!(cause instanceof DOMException)) throw cause;
    return cause.name === "NotAllowedError" ? "denied" : "missing";
  }
}

function pictureOf(video: HTMLVideoElement, canvas: HTMLCanvasElement): ImageData | undefined {
  const { videoWidth, videoHeight } = video;
  if (videoWidth === 0) return undefined;
  const scale = Math.min(1, LONGEST / Math.max(videoWidth, videoHeight));
  canvas.width = Math.round(videoWidth * scale);
  canvas.height = Math.round(videoHeight * scale);
  const context = canvas.getContext("2d", { willReadFrequently: true });
  context?.drawImage(video, 0, 0, canvas.width, canvas.height);
  return context?.getImageData(0, 0, canvas.width, canvas.height);
}
