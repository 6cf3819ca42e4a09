import type { Photo } from "#station";
import { isEmbeddable } from "./embeddable.ts";
import { printable } from "./printable.ts";
import { MARGIN, type Sheet } from "./sheet.ts";

const BOX = { width: 240, height: 180, gap: 14 } as const;

/** Photos two beside each other with their captions; one that is not to be had is named instead. */
export function writePhotos(
  sheet: Sheet,
  wanted: readonly { readonly hash: string; readonly caption: string }[],
  photos: ReadonlyMap<string, Photo>,
): void {
  if (wanted.length === 0) return;
  sheet.heading("Photos");
  for (let first = 0; first < wanted.length; first += 2) {
    sheet.need(BOX.height + 30);
    const top = sheet.pdf.y;
    for (const [column, one] of wanted.slice(first, first + 2).entries()) {
      writePhoto(sheet, MARGIN + column * (BOX.width + BOX.gap), top, one.caption, photos.get(one.hash));
    }
    sheet.pdf.x = MARGIN;
    sheet.pdf.y = top + BOX.height + 30;
  }
}

function writePhoto({ pdf }: Sheet, left: number, top: number, caption: string, photo: Photo | undefined): void {
  pdf.lineWidth(0.4).strokeColor("#555").rect(left, top, BOX.width, BOX.height).stroke();
  pdf.font("regular").fontSize(8).fillColor("#000");
  if (photo !== undefined && isEmbeddable(photo)) {
    pdf.image(Buffer.from(photo.bytes), left + 1, top + 1, {
      fit: [BOX.width - 2, BOX.height - 2],
      align: "center",
      valign: "center",
    });
  } else
    pdf.text(
      photo ? `This photo (${photo.mime}) cannot be printed: see it on screen.` : "Photo not yet received.",
      left + 8,
      top + 8,
    );
  pdf.text(printable(caption), left, top + BOX.height + 4, { width: BOX.width, height: 22, ellipsis: true });
}
