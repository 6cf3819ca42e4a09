import { prepareZXingModule, readBarcodes, type ReaderOptions } from "zxing-wasm/reader";
import wasmAddress from "zxing-wasm/reader/zxing_reader.wasm?url";

/** Its WebAssembly comes from this server, and from this device's own copy without a network; never from elsewhere. */
prepareZXingModule({ overrides: { locateFile: () => wasmAddress } });

const OPTIONS: ReaderOptions = { formats: ["QRCode"], tryHarder: true, tryInvert: true, maxNumberOfSymbols: 8 };

/**
 * Reads every QR code in a picture.
 *
 * @param picture - of a camera, or a file of one
 * @returns the text of each, of those that could be read whole
 */
export async function readCodes(picture: ImageData | Blob): Promise<readonly string[]> {
  const found = await readBarcodes(picture, OPTIONS);
  return found.filter(({ isValid }) => isValid).map(({ text }) => text);
}
