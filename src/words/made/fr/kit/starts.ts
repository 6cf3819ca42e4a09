/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { StartsWords } from "#src/words/made/kit/starts.ts";
import { plural, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: StartsWords = {
  ofTen: (d) => "environ " + d.low + " fois sur 10",
  ofTenRange: (d) => "entre " + d.low + " et " + d.high + " fois sur 10",
  neverAsked: () => "Personne n'a encore essayé de le démarrer, que le journal sache.",
  everyTime: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Lancé " +
        strictNumber("fr", d.count, 0, "count") +
        " fois, le " +
        d.since +
        ", il a démarré et donné de l'eau à chaque fois.",
      other:
        "Lancé " +
        strictNumber("fr", d.count, 0, "count") +
        " fois depuis le " +
        d.since +
        ", il a démarré et donné de l'eau à chaque fois.",
    }),
  failedSome: (d) =>
    plural(d.count, 0, fr, {
      one: "Lancé " + strictNumber("fr", d.count, 0, "count") + " fois, le " + d.since,
      other: "Lancé " + strictNumber("fr", d.count, 0, "count") + " fois depuis le " + d.since,
    }) +
    ", il n'a pas démarré ou pas donné d'eau " +
    plural(d.failures, 0, fr, { one: "une fois", other: strictNumber("fr", d.failures, 0, "failures") + " fois" }) +
    ".",
  started: () => "a démarré",
  noStart: () => "n'a pas démarré",
  noWater: () => "a démarré, pas d'eau",
  tooLittle: () => "a démarré, trop peu d'eau",
  byRecord: (d) =>
    "D'après ce relevé, un kit comme celui-ci, juste après une preuve, démarre et donne de l'eau " + d.often + ".",
  restsOthers: (d) =>
    "La plage vaut neuf fois sur dix. Elle repose sur " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " démarrage",
      other: strictNumber("fr", d.count, 0, "count") + " démarrages",
    }) +
    " de ce kit, et sur " +
    plural(d.starts, 0, fr, {
      one: strictNumber("fr", d.starts, 0, "starts") + " démarrage",
      other: strictNumber("fr", d.starts, 0, "starts") + " démarrages",
    }) +
    " de " +
    plural(d.others, 0, fr, {
      one: strictNumber("fr", d.others, 0, "others") + " autre kit",
      other: strictNumber("fr", d.others, 0, "others") + " autres kits",
    }) +
    " de son modèle.",
  tonightBy: (d) => d.tonight + ", d'après " + d.rests,
  ownStarts: (d) =>
    plural(d.count, 0, fr, {
      one: "son " + strictNumber("fr", d.count, 0, "count") + " démarrage, le " + d.since,
      other: "ses " + strictNumber("fr", d.count, 0, "count") + " démarrages depuis le " + d.since,
    }),
  noOwnStart: () => "aucun démarrage à lui",
  andOthers: (d) =>
    d.own +
    " et " +
    d.count +
    " de " +
    plural(d.others, 0, fr, {
      one: strictNumber("fr", d.others, 0, "others") + " autre",
      other: strictNumber("fr", d.others, 0, "others") + " autres",
    }),
  restsAlone: (d) =>
    "La plage vaut neuf fois sur dix. Elle repose seulement sur " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " démarrage",
      other: strictNumber("fr", d.count, 0, "count") + " démarrages",
    }) +
    " de ce kit, elle est donc large : aucun autre de son modèle n'a jamais été lancé.",
  hiddenUnknown: () =>
    "Aucun kit de son modèle n'est encore resté fermé entre deux ouvertures : ce qui vient sans être vu ne peut pas être dit.",
  hiddenOwn: (d) =>
    "Ouvert " +
    plural(d.looks, 0, fr, {
      one: strictNumber("fr", d.looks, 0, "looks") + " fois",
      other: strictNumber("fr", d.looks, 0, "looks") + " fois",
    }) +
    " après être resté fermé, ce kit avait " +
    plural(d.found, 0, fr, {
      one: strictNumber("fr", d.found, 0, "found") + " défaut",
      other: strictNumber("fr", d.found, 0, "found") + " défauts",
    }) +
    " qui l'auraient arrêté.",
  hiddenRateAll: (d) =>
    plural(d.count, 0, fr, {
      one:
        "D'après cela et les autres kits de son modèle, environ " +
        d.rate +
        " défaut vient sans être vu en dix ans de repos fermé.",
      other:
        "D'après cela et les autres kits de son modèle, environ " +
        d.rate +
        " défauts viennent sans être vus en dix ans de repos fermé.",
    }),
  hiddenRateOwn: (d) =>
    plural(d.count, 0, fr, {
      one: "D'après cela, environ " + d.rate + " défaut vient sans être vu en dix ans de repos fermé.",
      other: "D'après cela, environ " + d.rate + " défauts viennent sans être vus en dix ans de repos fermé.",
    }),
  hiddenSteady: () => "De tels défauts sont supposés venir à un rythme constant.",
  failedOnce: () => "Un démarrage manqué compte une fois, quoi que l'on ait trouvé après lui dans la même ouverture.",
  tonight: (d) => d.word + " cette nuit : " + d.often,
  unsure: () => "Peut démarrer et donner de l'eau, ou non,",
  veryLikely: () => "Démarre et donne de l'eau très probablement",
  likely: () => "Démarre et donne de l'eau probablement",
  may: () => "Peut démarrer et donner de l'eau",
  doubtful: () => "Démarrage et eau douteux",
  tenths: (d) => "environ " + d.high + " fois sur 10",
  tenthsRange: (d) => d.low + " à " + d.high + " fois sur 10",
  enough: (d) => "au moins " + d.least + " sur " + d.of + " démarrent et donnent de l'eau cette nuit " + d.often,
  enoughUnsure: (d) =>
    "au moins " + d.least + " sur " + d.of + " démarrent et donnent de l'eau cette nuit " + d.often + ", plage large",
  enoughRests: (d) =>
    "La plage vaut neuf fois sur dix. Elle repose sur " +
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " démarrage de ces kits, le " + d.since,
      other: strictNumber("fr", d.count, 0, "count") + " démarrages de ces kits depuis le " + d.since,
    }) +
    ".",
  enoughNone: () =>
    "La plage vaut neuf fois sur dix. Elle ne repose sur aucun démarrage de ces kits, elle est donc large.",
  enoughWithout: (d) =>
    "Pas comptés : " +
    d.kits +
    ", jamais mis à l'épreuve, ou d'un modèle dont aucun kit n'est resté fermé entre deux ouvertures.",
  toldOf: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Non comptée : " +
        strictNumber("fr", d.count, 0, "count") +
        " remise en état seulement racontée, du " +
        d.first +
        ".",
      other:
        "Non comptées : " +
        strictNumber("fr", d.count, 0, "count") +
        " remises en état seulement racontées, du " +
        d.first +
        " au " +
        d.last +
        ".",
    }) +
    " Une feuille ou un cahier dit que c'était fait, mais aucune ligne n'a reçu de réponse : rien ne dit ce qui a été regardé, trouvé ou démarré.",
  shareFuel: (d) => d.kits + " ont en commun le carburant d'une livraison.",
  shareLot: (d) => d.kits + " ont en commun : " + d.of + " d'un même lot.",
  shareHands: (d) => d.kits + " ont en commun les mains de " + d.of + ", qui les a fermés.",
  willItStart: () => "Va-t-il démarrer et donner de l'eau ?",
  afterProof: (d) => ", " + d.duration + " après sa dernière preuve.",
  restsOn: () => "Sur quoi cela repose",
  curveOf: (d) =>
    "La probabilité qu'il démarre et donne de l'eau selon les mois depuis sa dernière preuve. " +
    d.tonight +
    ", " +
    d.duration +
    " après. Le tout dans le tableau ci-dessous.",
  today: () => "Aujourd'hui",
  bandIs: () => "La ligne est le milieu, la bande vaut neuf fois sur dix.",
  curveTable: () => "Probabilité depuis la dernière preuve, en tableau",
  curveCaption: () => "Probabilité depuis la dernière preuve",
  after: () => "Après",
  works: () => "Démarre et donne de l'eau",
  onCasualty: () => "sur une détresse",
  inTurnaround: () => "pendant une remise en état",
  startedAt: (d) => ", " + d.where + " : " + d.outcome,
  wideRange: (d) =>
    plural(d.count, 0, fr, {
      one:
        "Juste après une preuve, il pourrait démarrer et donner de l'eau " +
        d.often +
        ". Cette plage est large : environ " +
        strictNumber("fr", d.count, 0, "count") +
        " ouverture de plus la préciserait.",
      other:
        "Juste après une preuve, il pourrait démarrer et donner de l'eau " +
        d.often +
        ". Cette plage est large : environ " +
        strictNumber("fr", d.count, 0, "count") +
        " ouvertures de plus la préciseraient.",
    }),
  noChance: (d) => "Aucune probabilité n'est dite pour cette nuit : " + d.why + ".",
  restsNone: () =>
    "La plage vaut neuf fois sur dix. Elle ne repose sur aucun démarrage de ce kit, elle est donc large : moins de deux de son modèle ont jamais été lancés.",
  oneMore: (d) =>
    "Juste après une preuve, il est supposé manquer " +
    d.now +
    " fois sur 100. Un échec de plus d'un autre kit de son modèle pourrait en faire " +
    d.more +
    " : l'influence des autres sur un kit dépend de ce qui les sépare, et un échec change cela aussi. Ne le tenez pas pour meilleur que ce qui a été dit.",
  oneMoreShort: (d) =>
    d.told + " ; un échec de plus d'un autre pourrait le faire paraître meilleur : ne le tenez pas pour meilleur",
};
export default words;
