/* Made by `npx tsx scripts/messages.ts` from the catalogues in src/words/messages. */
import type { SettingsLockWords } from "#src/words/made/station/settings-lock.ts";
import { number, plural, select, strictNumber } from "#src/words/cases.ts";
import { fr } from "@messageformat/runtime/lib/cardinals";
const words: SettingsLockWords = {
  title: () => "Verrou de cet appareil",
  changing: (d) => "Changement du verrou : " + d.done + " sur " + d.all + " réécrits",
  changingMore: () =>
    "Vous pouvez continuer pendant ce temps. S'il est interrompu, il reprend quand quelqu'un ouvre cet appareil.",
  offInsecure: () =>
    "Désactivé. Il faut une adresse qui commence par https : c'est seulement là qu'un navigateur peut chiffrer.",
  off: () =>
    "Désactivé. Qui peut ouvrir cet appareil lit tout ce qui y est gardé. Verrouillé, il est chiffré jusqu'à ce qu'un code l'ouvre.",
  notLocked: () => "Pas verrouillé",
  turnOn: () => "Verrouiller cet appareil par un code",
  costs: () => "Ce que cela coûte, et ce que cela ne fait pas",
  costPin: (d) =>
    "Rien ne peut être lu ni envoyé avant qu'un code soit entré : à chaque démarrage, après chaque rechargement de la page, et quand personne n'y a touché pendant " +
    d.minutes +
    " minutes. Cette durée se choisit une fois le verrou mis.",
  costForgotten: () =>
    "Si plus personne ne connaît de code qui l'ouvre, les lignes et les photos non envoyées sont perdues.",
  costBeside: () =>
    "Une nouvelle fiche de détresse peut toujours être écrite sans ouvrir. Ce qui était attendu sur une fiche ouverte ou dans une remise en état sonne toujours, et dit ce que c'est une fois l'appareil ouvert.",
  costGuess: (d) =>
    "Un code court peut être deviné par qui a une copie de la mémoire de cet appareil. Chaque essai coûte " +
    number("fr", d.rounds, 0) +
    " tours de SHA-256 ; à 15 000 essais par seconde, comme en fait une carte graphique rapide, tous les codes de 6 chiffres prennent environ une minute, de 8 environ deux heures, de 10 huit jours, de 12 deux ans.",
  costOpen: () => "Il ne fait rien tant que cet appareil est ouvert, ni contre quelqu'un qui regarde entrer le code.",
  costReadable: () =>
    "Les identifiants, numéros et heures des lignes, les modèles des kits, le nom de cet appareil, l'heure d'une alarme, les rappels de ravitaillement et ce qui est dit avant d'appareiller restent lisibles. Ce qui a été écrit avant peut se trouver encore un temps dans les fichiers du navigateur.",
  on: (d) =>
    plural(d.count, 0, fr, {
      "0": "Activé. Ce qui est gardé ici est chiffré ; aucun code ne l'ouvre. Qui se connecte ici avec un code peut l'ouvrir dès lors.",
      one: "Activé. Ce qui est gardé ici est chiffré ; le code d'une personne l'ouvre. Qui se connecte ici avec un code peut l'ouvrir dès lors.",
      other:
        "Activé. Ce qui est gardé ici est chiffré ; les codes de " +
        strictNumber("fr", d.count, 0, "count") +
        " personnes l'ouvrent. Qui se connecte ici avec un code peut l'ouvrir dès lors.",
    }),
  lockNow: () => "Verrouiller maintenant",
  wrongPin: () => "Ce code n'ouvre pas cet appareil.",
  notTurnedOff: () => "Pas enlevé",
  turnOff: () => "Enlever le verrou",
  pinToChange: () => "Votre code, pour changer le verrou",
  idle: () => "Se verrouille quand personne n'y a touché pendant",
  idleHint: () => "Sur cet appareil. Ce qui est en cours d'écriture est gardé, et reprend là où il en était.",
  idleNever: () => "Il ne se verrouille pas de lui-même",
  idleHour: () => "1 heure",
  idleMinutes: (d) =>
    plural(d.count, 0, fr, {
      one: strictNumber("fr", d.count, 0, "count") + " minute",
      other: strictNumber("fr", d.count, 0, "count") + " minutes",
    }),
  asAtFirst: () => "Comme réglé au départ",
  whileOpen: () => "Tant qu'une fiche de détresse est ouverte, ou qu'un chronomètre de remise en état tourne ici",
  stayOpen: () => "Rester ouvert",
  stayOpenNote: () => "Personne ne tape un code pendant qu'un bateau coule",
  lockAllTheSame: () => "Verrouiller quand même",
  lockAllTheSameNote: () => "Les alarmes sonnent, et disent ce que c'est une fois l'appareil ouvert",
  heldOpen: () => "Une fiche de détresse est ouverte : cet appareil ne se verrouille pas en ce moment",
  onlyWhoOpens: () => "Seul qui peut l'ouvrir peut choisir cela",
  pinThatOpens: () => "Votre code, tel qu'il ouvre cet appareil",
  pinThatOpensHint: () => "Sans cela, qui le trouve ouvert pourrait faire ce choix.",
  notOpened: () => "Cela n'ouvre pas cet appareil.",
  noPasskeyGiven: () => "Aucune clé d'accès n'a été donnée.",
  passkeyCannot: () => "Cette clé d'accès ne peut pas ouvrir un verrou. Le code le peut.",
  notChanged: () => "Pas changé",
  withPin: (d) =>
    select(d.wanted, {
      stay: "Avec ce code, rester ouvert pendant ce temps",
      never: "Avec ce code, ne jamais se verrouiller",
      other: "Avec ce code, verrouiller après " + d.time,
    }),
  withPasskey: (d) =>
    select(d.wanted, {
      stay: "Avec une clé d'accès, rester ouvert pendant ce temps",
      never: "Avec une clé d'accès, ne jamais se verrouiller",
      other: "Avec une clé d'accès, verrouiller après " + d.time,
    }),
  leaveIt: () => "Laisser tel quel",
  passkeyOpens: () => "La clé d'accès ouvre cet appareil.",
  passkeyCannotPrf: () =>
    "Cette clé d'accès ne peut pas ouvrir un verrou : elle, ou ce navigateur, ne dérive pas de secret (PRF). Le code le peut.",
  noPasskey: () =>
    "Vous n'avez pas de clé d'accès à cette station, ou elle ne peut pas être interrogée pour le moment. Ajoutez-en une sous Connexion.",
  passkeysThatOpen: (d) =>
    plural(d.count, 0, fr, {
      "0": "Aucune clé d'accès ne l'ouvre. Une clé d'accès ne se devine pas ; le code à côté, si.",
      other:
        "Clés d'accès qui l'ouvrent : " +
        strictNumber("fr", d.count, 0, "count") +
        ". Une clé d'accès ne se devine pas ; le code à côté, si.",
    }),
  letPasskey: () => "Laisser ma clé d'accès l'ouvrir",
  notAdded: () => "Pas ajoutée",
};
export default words;
