/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PrimeWords } from "#src/words/made/kit/prime.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: PrimeWords = {
  willNot: (d) => "À " + d.lift + " de hauteur d'aspiration, elle ne s'amorcera pas.",
  runsIn: (d) => "À " + d.lift + " de hauteur d'aspiration, l'eau entre d'elle-même.",
  expect: (d) =>
    plural(d.strokes, 0, fr, {
      one:
        "À " +
        d.lift +
        " de hauteur d'aspiration, comptez environ " +
        strictNumber("fr", d.strokes, 0, "strokes") +
        " coup de pompe, " +
        d.duration +
        ".",
      other:
        "À " +
        d.lift +
        " de hauteur d'aspiration, comptez environ " +
        strictNumber("fr", d.strokes, 0, "strokes") +
        " coups de pompe, " +
        d.duration +
        ".",
    }),
  doNotCount: () => "Ne comptez pas sur l'amorçage à cette hauteur d'aspiration.",
  stated: (d) =>
    "Le fabricant annonce " + d.stated + " ; au-delà d'environ " + d.plain + ", la perte est nette (usage courant).",
  unstated: (d) =>
    "Le fabricant n'annonce pas de hauteur d'aspiration maximale ; au-delà d'environ " +
    d.plain +
    ", la perte est nette, et au-delà d'environ " +
    d.most +
    " on n'essaie pas d'aspirer (usage courant).",
  physics: (d) =>
    "Aucun amorceur ne monte l'eau au-delà de " +
    d.greatest +
    " ici : c'est une limite de la physique, pas une hauteur sur laquelle compter.",
  tooQuick: (d) =>
    "Trop rapide : il faut au moins " +
    d.least +
    " environ pour pomper l'air à cette hauteur d'aspiration. Y avait-il déjà de l'eau dans le tuyau, ou le chronomètre est-il parti en retard ? Videz le tuyau et amorcez à nouveau.",
  notExpected: () => "À cette hauteur d'aspiration, il ne faut pas s'attendre à ce qu'elle s'amorce.",
  asExpected: (d) => "Comme il se doit : on attendait environ " + d.expected + ".",
  slow: (d) =>
    "Lent : on attendait environ " +
    d.expected +
    ". De l'air entre à raison d'environ " +
    d.leak +
    ", " +
    d.share +
    " % de ce que l'amorceur retire. Avec cette fuite, aucun amorceur ne monte l'eau au-delà de " +
    d.greatest +
    ".",
  title: () => "L'amorçage",
  titleTooQuick: () => "Plus rapide que possible",
  titleLeak: () => "Cherchez une entrée d'air",
  lookInOrder: () => "Regardez dans cet ordre :",
};
export default words;
