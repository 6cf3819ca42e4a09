/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { TrendsWords } from "#src/words/made/kit/trends.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: TrendsWords = {
  pulls: () => "Tirages pour démarrer",
  pullsAxis: () => "Tirages jusqu'au premier démarrage",
  sayPulls: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " tirage",
      other: strictNumber("fr", d.count, 0, "count") + " tirages",
    }),
  somePulls: (d) => d.count + " tirages",
  prime: () => "Amorçage",
  primeAxis: () => "Secondes du premier coup jusqu'à l'eau",
  fuel: () => "Carburant brûlé pendant un essai",
  fuelAxis: () => "Litres de carburant brûlés pendant l'essai",
  fuelAxisUs: () => "Quarts US de carburant brûlés pendant l'essai",
  water: () => "Eau trouvée dans la caisse",
  waterAxis: () => "Millilitres d'eau trouvés dans la caisse",
  waterAxisUs: () => "Onces liquides US d'eau trouvées dans la caisse",
  delivery: () => "Débit",
  deliveryAxis: () => "Débit mesuré sur débit attendu",
  atMost: (d) => "Au plus " + d.value,
  notedBelow: (d) => "Noté sous " + d.value,
  groundedBelow: (d) => "Immobilisé sous " + d.value,
  noneMeasured: () => "Pas encore de mesure.",
  onlyOne: (d) => "Dernier relevé " + d.value + ", le " + d.day + ". C'est le seul.",
  always: (d) =>
    "Dernier relevé " +
    d.value +
    ", le " +
    d.day +
    ". " +
    d.count +
    " depuis le " +
    d.first +
    ", toujours " +
    d.least +
    ". " +
    d.change,
  between: (d) =>
    "Dernier relevé " +
    d.value +
    ", le " +
    d.day +
    ". " +
    d.count +
    " depuis le " +
    d.first +
    ", de " +
    d.least +
    " à " +
    d.most +
    ". " +
    d.change,
  since: (d) => "Depuis le " + d.day + " environ : " + d.after + " plutôt que " + d.before + ", au milieu.",
  cause: (d) => d.mode + " : environ " + d.tenths + " sur 10",
  basisNone: () => "Les probabilités sont le jugement du modèle ; aucun constat n'y contribue encore.",
  basis: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Les probabilités viennent du jugement du modèle et de " +
        strictNumber("fr", d.count, 0, "count") +
        " constat sur ses kits.",
      other:
        "Les probabilités viennent du jugement du modèle et de " +
        strictNumber("fr", d.count, 0, "count") +
        " constats sur ses kits.",
    }),
  onCasualties: () => "Sur des détresses",
  onCasualtiesMore: () =>
    "D'après leurs fiches. Le débit est ce qu'ont montré les sondages là-bas : une estimation, dans aucune tendance ni aucun essai.",
  casualtyRuns: () => "Marches sur des détresses",
  casualty: () => "Détresse",
  start: () => "Démarrage",
  ran: () => "A tourné",
  notTold: () => "pas dit",
  deliverySeen: () => "Débit vu",
  notSeen: () => "pas vu",
  wouldNotStart: () => "n'a pas démarré",
  started: () => "a démarré",
  seen: (d) => "environ " + d.middle + " % de l'annoncé (" + d.low + " à " + d.high + ")",
};
export default words;
