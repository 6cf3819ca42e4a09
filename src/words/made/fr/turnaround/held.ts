/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { HeldWords } from "#src/words/made/turnaround/held.ts";
import { select } from "#src/words/cases.ts";
const words: HeldWords = {
  line: (d) => "ligne " + d.line + ", " + d.asks,
  step: (d) => "étape " + d.step,
  lowDelivery: (d) => d.line + " : débite " + d.share + " % de ce qu'il devrait",
  openFinding: (d) => "Un constat en cours immobilise le kit : " + d.name + ".",
  notAnswered: (d) => "Sans réponse : " + d.line + ".",
  foundWrong: (d) => "Trouvé défectueux : relevez un constat, ou répondez à nouveau : " + d.line + ".",
  notPutBack: (d) => "Pas remis en place : " + d.item + ".",
  notRenewed: (d) => "Sert une fois, pas renouvelé : " + d.item + ".",
  dateNotRead: (d) =>
    "Date pas lue : " + d.item + ". Lisez-la, montez-en un neuf, ou dites qu'elle ne peut pas être lue.",
  notRun: (d) => "Son temps n'est pas écoulé : " + d.line + ".",
  notMeasured: (d) => "Débit pas mesuré : " + d.line + ".",
  settleFirst: (d) => "À trancher d'abord : " + d.about,
  readSeal: () => "Lisez le numéro du nouveau scellé.",
  sealOnThis: (d) => "Le scellé " + d.seal + " est déjà sur ce kit.",
  sealOn: (d) => "Le scellé " + d.seal + " est déjà sur " + d.kit + ".",
  sealUsed: (d) => "Le scellé " + d.seal + " a déjà servi, sur " + d.kit + ".",
  drillEmpty: () => "Un exercice est en cours, et rien n'est posé : terminez d'abord l'exercice.",
  drillHidden: () =>
    "Un exercice est en cours : qui a posé les défauts révèle lesquels, ou l'exercice se termine comme non comparé.",
  drillNotShown: () =>
    "Ce qui a été posé n'a pas été montré : clorez-le comme immobilisé, puis faites une remise en état entière, ouverte après l'exercice.",
  drillUnjudged: (d) => "Pas posé : dites si c'est réel : " + d.name + ".",
  drillToEnd: () => "Chaque défaut posé est nommé comme retiré : terminez d'abord l'exercice.",
  drillPlanted: (d) =>
    "Posé, et pas nommé comme retiré : " + d.name + ". Retirez-le, puis dites-le sur la page de l'exercice.",
  drillLookAgain: (d) => "Regardez encore, un défaut posé a été retiré depuis : ligne " + d.line + ", " + d.item + ".",
  wrongLine: (d) => "Trouvé défectueux, " + d.line,
  halfDone: (d) => "La ligne " + d.line + " n'est faite qu'à moitié",
  stoppedEarly: (d) =>
    "La ligne " + d.line + " a été arrêtée avant son temps et ne pend plus ; elle est encore sans réponse",
  hangs: (d) => "La ligne " + d.line + " est suspendue, et encore sans réponse",
  hungEnough: (d) => "La ligne " + d.line + " est suspendue depuis assez longtemps, et encore sans réponse",
  toHang: (d) => "La ligne " + d.line + " est encore à suspendre, et sans réponse",
  nothingAfter: (d) => d.what + ". Rien de ce qui suit ne se fait avant cela.",
  forbids: (d) => d.what + ". Cela interdit de " + d.works + ".",
  listed: (d) => d.some + ", de " + d.next,
  work: (d) =>
    select(d.work, {
      fuel: "laisser couler du carburant",
      start: "démarrer",
      spark: "faire une étincelle",
      water: "pomper de l'eau",
      wrapping: "fermer l'emballage",
      other: "fermer le couvercle",
    }),
  hangAgain: () => "Suspendez-le à nouveau pour son temps, ou répondez « pas possible » et pourquoi.",
  answerIt: () => "Répondez-y, ou « pas possible » et pourquoi.",
  answerLater: () => "Répondez quand son temps est écoulé, ou « pas possible » et pourquoi.",
  mendIt: () => "Réparez-le, clorez le kit comme immobilisé, ou continuez ailleurs.",
  answerRest: () => "Répondez d'abord au reste, ou « pas possible » et pourquoi.",
};
export default words;
