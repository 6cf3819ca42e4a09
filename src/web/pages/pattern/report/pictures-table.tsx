import type { PictureTold } from "#station";
import { Section } from "#web/parts/index.ts";
import { Table, type Column } from "#web/parts/table.tsx";
import { useWords } from "#web/language/index.ts";
import type { Words } from "#words";
import { ToldOfLine } from "./told-of-line.tsx";

/** Pictures of the card for strangers that people told of; nothing where nobody did. */
export function PicturesTable({ pictures }: { readonly pictures: readonly PictureTold[] }) {
  const words = useWords("patternReport");
  if (pictures.length === 0) return null;
  return (
    <Section id="pictures" title={words.picturesTold()}>
      <Table
        caption={words.picturesTold()}
        isCaptionHidden
        columns={pictureColumns(words)}
        rows={pictures}
        rowKey={({ step }) => step.id}
      />
    </Section>
  );
}

const pictureColumns = (words: Words["patternReport"]): readonly Column<PictureTold>[] => [
  { key: "picture", head: words.picture(), cell: ({ step, number }) => `${number}. ${step.words.en ?? step.id}` },
  { key: "told", head: words.reported(), cell: (picture) => <ToldOfLine line={picture} /> },
];
