import type { readCodes } from "./code-reader.ts";

export { sayNoCamera, useCamera, type CameraState } from "./use-camera.ts";

type ReadCodes = typeof readCodes;

/** What reads codes is fetched with the first picture, from this device's own copy of the app. */
export class LazyReader {
  #read: Promise<ReadCodes> | undefined;

  async read(picture: ImageData | Blob): Promise<readonly string[]> {
    this.#read ??= import("./code-reader.ts").then((reader) => reader.readCodes);
    return (await this.#read)(picture);
  }
}
