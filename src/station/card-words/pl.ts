import type { CardWords } from "./card-words.ts";

/** The card's own words in this language; not yet read by a native speaker. */
export const pl: CardWords = {
  name: "Polski",
  title: "Pompa: po kolei według obrazków",
  stop: "Zatrzymanie",
  noWater: "Brak wody po minucie",
  kit: "Zestaw",
  channel: "Kanał radiowy",
  notRead: "Jeszcze nieczytane przez rodzimego użytkownika języka",
  first: "Pierwszeństwo mają instrukcja urządzenia i dowodzący.",
  noWords: "Jeszcze nie w tym języku: według obrazka.",
  signals: { DANGER: "NIEBEZPIECZEŃSTWO", WARNING: "OSTRZEŻENIE", CAUTION: "PRZESTROGA", NOTICE: "INFORMACJA" },
  cautions: {
    "carbon-monoxide":
      "Spaliny nie pachną i zabijają w kilka minut. Tylko na wolnym powietrzu. Ból głowy: zatrzymać, pod wiatr.",
    "petrol-vapour": "Opary benzyny płoną i wybuchają. Bez ognia, palenia i przełączników.",
    "never-pump-fuel": "Pompowanie paliwa to pożar. Paliwo lub zapach: nie uruchamiać; pracuje: zatrzymać.",
    "electric-shock": "Woda może być pod napięciem i zabić. Wyjąć wtyczkę, zanim ktoś dotknie pompy.",
    "refuel-stopped-and-cool":
      "Paliwo na gorącym silniku zapala się. Tankować tylko przy zatrzymanym i zimnym silniku.",
    "opened-wrapping": "Opary w worku: nie pochylać się przez dwie minuty.",
    "load-overhead": "Nikt pod ładunkiem ani między nim a kadłubem: miażdży.",
    "hydraulic-injection": "Olej z cienkiego węża przebija skórę. Nie dotykać wycieku. Trafiony: zaraz lekarz.",
    "pressurised-hose": "Wąż bije. Przywiązać przed startem. Zatrzymać, zanim dotknie się złączki.",
    "hot-exhaust": "Wydech parzy ręce i węże jeszcze długo po zatrzymaniu.",
    "recoil-kick": "Linka może szarpnąć z powrotem. Nie owijać wokół ręki. Nikogo z tyłu.",
    "heavy-lift": "Ciężkie: dwie osoby lub więcej, ugięte kolana.",
  },
};
