/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { PatternLivesWords } from "#src/words/made/pattern/pattern-lives.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
import { plural } from "#src/words/cases.ts";
const words: PatternLivesWords = {
  title: () => "Combien durent les choses",
  counting: () => "Décompte de ce que dit le journal.",
  titleOf: (d) => "Combien durent les choses : " + d.pattern,
  titleItem: (d) => d.item + " : combien il dure",
  early: () => "Toutes les lignes ne sont pas encore sur cet appareil",
  earlyMore: () =>
    "Les durées de vie se comptent depuis chaque montage et chaque constat. Elles sont dites une fois que toutes les lignes sont ici.",
  nobodyLooked: () => "Personne n'en a encore examiné un",
  nothing: () => "Rien encore sur quoi s'appuyer",
  nothingItem: () => "Aucune ouverture d'un kit de ce modèle n'a examiné un tel élément, ou le modèle n'en a pas.",
  nothingMore: () =>
    "Aucun élément d'un kit de ce modèle n'a été examiné à une ouverture. Une ouverture de chacun est un début.",
  reportCard: () => "Bulletin",
  reportCardOf: () => "Bulletin du modèle",
  howOften: () => "À quel rythme l'ouvrir",
  basis: () =>
    "De tous les kits de ce modèle, quelle que soit sa version. Une vie commence quand une chose est montée ou prouvée réparée, ou quand le kit entre en charge ; elle est examinée aux ouvertures, et finit au premier constat.",
  ranges: () =>
    "Les fourchettes valent neuf fois sur dix. Rien ne change tout seul : qui répond du modèle décide, et le manuel de l'appareil et une date imprimée passent d'abord.",
  untilNext: (d) => d.kit + " jusqu'à sa prochaine ouverture",
  next: (d) => "Prochaine ouverture : " + d.what,
  nextNow: () => "Il est ouvert, ou à ouvrir dès qu'il est là : il n'y a pas de prochaine ouverture jusqu'où durer.",
  nextNone: () => "Rien de daté ne le fera ouvrir : ni ouverture planifiée, ni date qui l'immobilise.",
  nextGiven: (d) => "le " + d.day + ", jour convenu, dans " + d.span + ".",
  nextPlanned: (d) => "la semaine du " + d.day + " selon le plan de l'année, dans " + d.span + ".",
  nextAccepted: (d) => "d'ici au " + d.day + ", dans " + d.span + " : alors finit l'intervalle accepté pour ce modèle.",
  nextGrounds: (d) => "d'ici au " + d.day + ", dans " + d.span + " : ensuite il est immobilisé (" + d.ends + ").",
  nothingLooked: () => "Rien de ce qu'il contient maintenant n'a encore été examiné.",
  leastFirst: () =>
    "Les moins susceptibles de durer d'abord. Ce qui est trouvé mauvais et non réparé est laissé de côté.",
  lastsToNext: () => "Dure jusqu'à la prochaine ouverture",
  otherItems: (d) => d.count + " " + plural(d.count, 0, fr, { one: "autre élément", other: "autres éléments" }),
  otherItemsOf: () => "Ses autres éléments",
  item: () => "Élément",
  age: () => "Âge",
  earned: () => "Ce qui mérite une autre durée de vie",
  nothingEarned: () =>
    "Rien ne mérite une vie plus courte ou plus longue d'après ce qui a été vu. Ce qu'il faudrait se trouve à chaque élément.",
  itemVerdict: (d) => d.item + " : " + d.verdict,
  earnedLine: (d) => "Comparé à " + d.span + " : " + d.lasting + ". " + d.rests + ".",
  everyItem: () => "Tous les éléments",
  noneBad: () => "Aucun n'a jamais été trouvé mauvais.",
  badTable: () => "Éléments trouvés mauvais un jour",
  neverBad: (d) => d.count + " jamais " + plural(d.count, 0, fr, { one: "trouvé mauvais", other: "trouvés mauvais" }),
  neverBadTable: () => "Éléments jamais trouvés mauvais",
  seen: () => "Vu",
  heldAgainst: () => "Comparé à",
  lastsIt: () => "Y dure",
  so: () => "Donc",
  verdictLine: (d) => d.verdict + ".",
  itemLine: (d) =>
    "Comparé à " +
    d.span +
    " : " +
    d.lasting +
    " (la fourchette vaut neuf fois sur dix). " +
    d.rests +
    " ; examiné au-delà de cet âge " +
    plural(d.beyond, 0, fr, { "1": "une fois", other: d.beyond + " fois" }) +
    ".",
  statedLife: () => "durée de vie indiquée",
  openingToNext: () => "d'une ouverture à la suivante",
  stillGood: () => "Encore bons, selon l'âge",
  chart: (d) =>
    "Sur dix, combien sont encore bons à chaque âge, tel que vu et d'après une loi. " +
    d.rests +
    ". Les chiffres sont dans le tableau ci-dessous.",
  ofTenGood: () => "Sur dix, encore bons",
  sinceNew: () => "depuis qu'il est neuf",
  chartMore: () =>
    "Marches : tel que vu, sans aucune loi ; où la fin tombe entre deux examens, personne ne peut le savoir. Ligne pointillée : la loi d'après laquelle les chances sont dites.",
  asTable: () => "Encore bons, en tableau",
  goodTable: () => "Encore bons à chaque âge d'un examen",
  byMode: () => "Mode par mode",
  modes: () => "Modes",
  mode: () => "Mode",
  notWithin: () => "Ne vient pas dans ce temps",
  renewed: () => "Renouvelé encore et encore",
  noneRenewed: () => "Aucun n'a été renouvelé depuis que son kit est en charge.",
  renewedChart: (d) =>
    "Combien de fois un kit en a eu un neuf, en moyenne : " +
    d.count +
    " après " +
    d.age +
    " en charge. Les chiffres sont dans le tableau ci-dessous.",
  renewedReading: () => "Neufs d'un kit, en moyenne, avec la fourchette de neuf sur dix",
  sinceCharge: () => "depuis que le kit est en charge",
  renewedAsTable: () => "Renouvellements, en tableau",
  renewedTable: () => "Renouvellements selon l'âge du kit",
  sinceChargeHead: () => "Depuis la mise en charge",
  newOnes: () => "Neufs d'un kit",
  countRange: (d) => d.count + " (" + d.low + " à " + d.high + ")",
  timesInTen: (d) => d.tenths + " fois sur 10",
  timesInTenRange: (d) => d.low + " à " + d.high + " fois sur 10",
  rests: (d) =>
    plural(d.lives, 0, fr, { one: d.lives + " vie", other: d.lives + " vies" }) +
    ", " +
    plural(d.ended, 0, fr, { "0": "aucune finie", one: d.ended + " finie", other: d.ended + " finies" }) +
    ", " +
    plural(d.looks, 0, fr, { one: d.looks + " examen", other: d.looks + " examens" }) +
    plural(d.lost, 0, fr, {
      "0": "",
      one: ", " + d.lost + " perdue et non comptée comme finie",
      other: ", " + d.lost + " perdues et non comptées comme finies",
    }) +
    plural(d.undated, 0, fr, {
      "0": "",
      one: ", " + d.undated + " mauvaise au premier examen à un âge non consigné et non comptée",
      other: ", " + d.undated + " mauvaises au premier examen à un âge non consigné et non comptées",
    }),
  spanStated: (d) => "sa durée de vie indiquée de " + d.span,
  spanNext: (d) => d.span + ", d'une ouverture à la suivante",
  shorterLife: () => "Mérite une vie plus courte : même au mieux, moins de 9 sur 10 y durent",
  shorterNext: () => "Même au mieux, moins de 9 sur 10 durent d'une ouverture à la suivante",
  longerLife: () => "Mérite une vie plus longue : même au pire, 9 sur 10 durent la moitié de plus",
  lastsLife: () => "Dure sa vie indiquée au moins 9 fois sur 10",
  lastsNext: () => "Dure d'une ouverture à la suivante au moins 9 fois sur 10",
  cannotTell: (d) =>
    "Trop peu pour le dire : il faut environ " +
    plural(d.count, 0, fr, { one: d.count + " examen", other: d.count + " examens" }) +
    " de plus",
  cannotTellMost: (d) => "Trop peu pour le dire : il faut plus de " + d.count + " examens de plus",
};
export default words;
