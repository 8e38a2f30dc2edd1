import type { Cases } from "./cases";

/** Pairs that keepers furnish one tank for. */
const keptInOneTank = `
paracheirodon-innesi, hoplisoma-panda
symphysodon-aequifasciatus, paracheirodon-axelrodi
carassius-auratus, misgurnus-anguillicaudatus
poecilia-reticulata, xiphophorus-maculatus
astronotus-ocellatus, metynnis-argenteus
labidochromis-caeruleus, maylandia-estherae
danio-rerio, tanichthys-albonubes
trichogaster-lalius, trigonostigma-heteromorpha
ancistrus-cirrhosus, pterophyllum-scalare
chromobotia-macracanthus, puntigrus-tetrazona`;

/**
 * Common practice, no source: of each rule about two, ten pairs that keepers put together without it, and some that it
 * parts.
 */
export const pairs: Cases = {
  temperature: {
    silent: `
paracheirodon-innesi, hoplisoma-panda
poecilia-reticulata, osteogaster-aenea
puntigrus-tetrazona, ancistrus-cirrhosus
paracheirodon-axelrodi, symphysodon-aequifasciatus
danio-rerio, tanichthys-albonubes
trichogaster-lalius, trigonostigma-heteromorpha
carassius-auratus, misgurnus-anguillicaudatus
carassius-auratus, tanichthys-albonubes
mikrogeophagus-ramirezi, paracheirodon-axelrodi
labidochromis-caeruleus, maylandia-estherae`,
    speaks: `
tanichthys-albonubes, symphysodon-aequifasciatus
carassius-auratus, mikrogeophagus-ramirezi
misgurnus-anguillicaudatus, symphysodon-aequifasciatus`,
  },
  ph: {
    silent: `
poecilia-reticulata, xiphophorus-maculatus
paracheirodon-innesi, paracheirodon-axelrodi
labidochromis-caeruleus, maylandia-estherae
trigonostigma-heteromorpha, pangio-kuhlii
pterophyllum-scalare, hoplisoma-sterbai
trichogaster-lalius, rohanella-titteya
danio-rerio, xiphophorus-maculatus
ancistrus-cirrhosus, poecilia-reticulata
neocaridina-davidi, poecilia-reticulata
symphysodon-aequifasciatus, paracheirodon-axelrodi`,
    speaks: `
paracheirodon-innesi, labidochromis-caeruleus
tropheus-duboisi, symphysodon-aequifasciatus
sphaerichthys-osphromenoides, xiphophorus-hellerii`,
  },
  "general-hardness": {
    silent: `
poecilia-reticulata, xiphophorus-hellerii
paracheirodon-innesi, trigonostigma-heteromorpha
puntigrus-tetrazona, ancistrus-cirrhosus
labidochromis-caeruleus, synodontis-petricola
pangio-kuhlii, trigonostigma-heteromorpha
danio-rerio, xiphophorus-maculatus
rohanella-titteya, osteogaster-aenea
pterophyllum-scalare, ancistrus-cirrhosus
paracheirodon-axelrodi, symphysodon-aequifasciatus
carassius-auratus, misgurnus-anguillicaudatus`,
    speaks: `
paracheirodon-axelrodi, poecilia-velifera
sundadanio-axelrodi, tropheus-duboisi`,
  },
  salinity: {
    silent: `
poecilia-reticulata, xiphophorus-maculatus
paracheirodon-innesi, osteogaster-aenea
monodactylus-argenteus, toxotes-jaculatrix
carassius-auratus, misgurnus-anguillicaudatus
poecilia-reticulata, poecilia-sphenops
betta-splendens, pangio-kuhlii
labidochromis-caeruleus, maylandia-estherae
neocaridina-davidi, vittina-natalensis
pterophyllum-scalare, symphysodon-aequifasciatus
danio-rerio, tanichthys-albonubes`,
    speaks: `
monodactylus-argenteus, pterophyllum-scalare
toxotes-jaculatrix, trichogaster-lalius
brachygobius-doriae, paracheirodon-innesi`,
  },
  season: {
    silent: `
carassius-auratus, misgurnus-anguillicaudatus
carassius-auratus, cyprinus-rubrofuscus
tanichthys-albonubes, misgurnus-anguillicaudatus
tanichthys-albonubes, danio-rerio
tanichthys-albonubes, pethia-conchonius
tanichthys-albonubes, neocaridina-davidi
hoplisoma-paleatum, danio-rerio
hoplisoma-paleatum, macropodus-opercularis
pethia-conchonius, danio-rerio
paracheirodon-innesi, hoplisoma-panda`,
    speaks: `
carassius-auratus, poecilia-latipinna
misgurnus-anguillicaudatus, danio-rerio
pethia-conchonius, pterophyllum-scalare`,
  },
  flow: {
    silent: `
paracheirodon-innesi, hoplisoma-panda
danio-rerio, tanichthys-albonubes
sewellia-lineolata, danio-rerio
poecilia-reticulata, xiphophorus-maculatus
symphysodon-aequifasciatus, paracheirodon-axelrodi
melanotaenia-boesemani, sahyadria-denisonii
betta-splendens, pangio-kuhlii
trichogaster-chuna, hyphessobrycon-amandae
puntigrus-tetrazona, chromobotia-macracanthus
labidochromis-caeruleus, maylandia-estherae`,
    speaks: `
betta-splendens, sewellia-lineolata
trichogaster-chuna, sewellia-lineolata`,
  },
  predation: {
    silent: `
paracheirodon-innesi, hoplisoma-panda
poecilia-reticulata, trigonostigma-heteromorpha
symphysodon-aequifasciatus, petitella-bleheri
ancistrus-cirrhosus, paracheirodon-innesi
trichopodus-leerii, paracheirodon-axelrodi
caridina-multidentata, paracheirodon-innesi
hyphessobrycon-amandae, neocaridina-davidi
heros-severus, metynnis-argenteus
astronotus-ocellatus, metynnis-argenteus
pterophyllum-scalare, gymnocorymbus-ternetzi`,
    speaks: `
astronotus-ocellatus, paracheirodon-innesi
pterophyllum-scalare, paracheirodon-innesi
polypterus-senegalus, poecilia-reticulata
200x60x60: 4 pterophyllum-scalare, 6 young hoplisoma-sterbai
phractocephalus-hemioliopterus, astronotus-ocellatus
carassius-auratus, neocaridina-davidi`,
  },
  "acts-own-kind": {
    silent: `
tanichthys-albonubes, tanichthys-albonubes
hoplisoma-panda, hoplisoma-panda
otocinclus-vittatus, otocinclus-vittatus
neocaridina-davidi, neocaridina-davidi
pangio-kuhlii, pangio-kuhlii
caridina-multidentata, caridina-multidentata
vittina-natalensis, vittina-natalensis
kryptopterus-vitreolus, kryptopterus-vitreolus
petitella-bleheri, petitella-bleheri
female trichogaster-lalius, female trichogaster-lalius`,
    speaks: `
male betta-splendens, male betta-splendens
epalzeorhynchos-bicolor, epalzeorhynchos-bicolor
gyrinocheilus-aymonieri, gyrinocheilus-aymonieri
male trichogaster-lalius, male trichogaster-lalius`,
  },
  "acts-look-alike": {
    silent: `
paracheirodon-innesi, paracheirodon-axelrodi
trichogaster-chuna, trigonostigma-heteromorpha
male betta-splendens, osteogaster-aenea
trichogaster-lalius, paracheirodon-innesi
pelvicachromis-pulcher, rohanella-titteya
ancistrus-cirrhosus, hoplisoma-sterbai
poecilia-reticulata, xiphophorus-maculatus
mikrogeophagus-ramirezi, paracheirodon-axelrodi
epalzeorhynchos-bicolor, trichopodus-leerii
female betta-splendens, trigonostigma-heteromorpha`,
    speaks: `
male betta-splendens, male macropodus-opercularis
epalzeorhynchos-bicolor, crossocheilus-oblongus
male trichogaster-lalius, male trichogaster-chuna`,
  },
  "acts-others": {
    silent: `
paracheirodon-innesi, hoplisoma-panda
poecilia-reticulata, xiphophorus-maculatus
trigonostigma-heteromorpha, pangio-kuhlii
rohanella-titteya, osteogaster-aenea
trichopodus-leerii, hoplisoma-sterbai
symphysodon-aequifasciatus, paracheirodon-axelrodi
hyphessobrycon-amandae, neocaridina-davidi
otocinclus-vittatus, planorbella-duryi
danio-rerio, hoplisoma-panda
pterophyllum-scalare, hoplisoma-sterbai`,
    speaks: `
pygocentrus-nattereri, metynnis-argenteus
melanochromis-auratus, poecilia-reticulata
parachromis-managuensis, metynnis-argenteus`,
  },
  "fin-nipping": {
    silent: `
paracheirodon-innesi, poecilia-reticulata
trigonostigma-heteromorpha, male betta-splendens
hoplisoma-sterbai, pterophyllum-scalare
rohanella-titteya, poecilia-reticulata
puntigrus-tetrazona, chromobotia-macracanthus
puntigrus-tetrazona, ancistrus-cirrhosus
danio-rerio, xiphophorus-maculatus
hyphessobrycon-amandae, trichogaster-chuna
petitella-bleheri, pterophyllum-scalare
megalamphodus-eques, puntigrus-tetrazona`,
    speaks: `
puntigrus-tetrazona, male betta-splendens
puntigrus-tetrazona, pterophyllum-scalare
megalamphodus-eques, male betta-splendens
carinotetraodon-travancoricus, male betta-splendens`,
  },
  "mucus-grazing": {
    silent: `
ancistrus-cirrhosus, pterophyllum-scalare
otocinclus-vittatus, symphysodon-aequifasciatus
crossocheilus-oblongus, paracheirodon-innesi
ancistrus-cirrhosus, carassius-auratus
hoplisoma-sterbai, symphysodon-aequifasciatus
pterygoplichthys-pardalis, paracheirodon-innesi
gyrinocheilus-aymonieri, danio-rerio
vittina-natalensis, symphysodon-aequifasciatus
pangio-kuhlii, pterophyllum-scalare
farlowella-vittata, pterophyllum-scalare`,
    speaks: `
pterygoplichthys-pardalis, symphysodon-aequifasciatus
gyrinocheilus-aymonieri, carassius-auratus
gyrinocheilus-aymonieri, pterophyllum-scalare`,
  },
  "territory-contest": {
    silent: `
paracheirodon-innesi, mikrogeophagus-ramirezi
pelvicachromis-pulcher, trigonostigma-heteromorpha
mikrogeophagus-ramirezi, hoplisoma-sterbai
male betta-splendens, pangio-kuhlii
pterophyllum-scalare, hoplisoma-sterbai
trichogaster-lalius, ancistrus-cirrhosus
apistogramma-cacatuoides, carnegiella-strigata
amatitlania-nigrofasciata, puntigrus-tetrazona
ancistrus-cirrhosus, trigonostigma-heteromorpha
epalzeorhynchos-bicolor, trichopodus-leerii`,
    speaks: `
pelvicachromis-pulcher, mikrogeophagus-ramirezi
apistogramma-cacatuoides, pelvicachromis-pulcher
male maylandia-estherae, male labidochromis-caeruleus`,
  },
  "size-and-pace": {
    silent: `
paracheirodon-innesi, hoplisoma-panda
pterophyllum-scalare, puntigrus-tetrazona
poecilia-reticulata, ancistrus-cirrhosus
symphysodon-aequifasciatus, paracheirodon-axelrodi
trichopodus-leerii, paracheirodon-innesi
astronotus-ocellatus, metynnis-argenteus
pelvicachromis-pulcher, paracheirodon-axelrodi
melanotaenia-boesemani, rohanella-titteya
carassius-auratus, misgurnus-anguillicaudatus
labidochromis-caeruleus, synodontis-petricola`,
    speaks: `
chromobotia-macracanthus, boraras-brigittae
balantiocheilos-melanopterus, paracheirodon-innesi
cyprinus-rubrofuscus, tanichthys-albonubes`,
  },
  "feeding-competition": {
    silent: `
paracheirodon-innesi, hoplisoma-panda
poecilia-reticulata, xiphophorus-maculatus
trigonostigma-heteromorpha, pangio-kuhlii
symphysodon-aequifasciatus, paracheirodon-axelrodi
betta-splendens, pangio-kuhlii
trichogaster-chuna, hyphessobrycon-amandae
ancistrus-cirrhosus, danio-rerio
otocinclus-vittatus, paracheirodon-innesi
puntigrus-tetrazona, chromobotia-macracanthus
danio-rerio, tanichthys-albonubes`,
    speaks: `
trichogaster-chuna, danio-rerio
puntigrus-tetrazona, betta-splendens
trichogaster-chuna, puntigrus-tetrazona`,
  },
  shyness: {
    silent: `
trichogaster-chuna, hyphessobrycon-amandae
trichogaster-lalius, trigonostigma-heteromorpha
symphysodon-aequifasciatus, paracheirodon-axelrodi
paracheirodon-innesi, hoplisoma-panda
pangio-kuhlii, puntigrus-tetrazona
boraras-brigittae, trichopsis-pumila
pterophyllum-scalare, petitella-bleheri
apistogramma-cacatuoides, carnegiella-strigata
pterophyllum-scalare, hoplisoma-sterbai
poecilia-reticulata, xiphophorus-maculatus`,
    speaks: `
trichogaster-chuna, puntigrus-tetrazona
celestichthys-margaritatus, devario-aequipinnatus
symphysodon-aequifasciatus, balantiocheilos-melanopterus`,
  },
  interbreeding: {
    silent: `
xiphophorus-hellerii, xiphophorus-maculatus
200x60x60: 4 poecilia-reticulata raises, 4 xiphophorus-maculatus raises
200x60x60: 6 paracheirodon-innesi raises, 6 paracheirodon-axelrodi
200x60x60: 4 xiphophorus-maculatus raises, 6 hoplisoma-panda
200x60x60: 2 male xiphophorus-maculatus, 3 female xiphophorus-hellerii
200x60x60: 3 female xiphophorus-maculatus raises, 3 female xiphophorus-hellerii
200x60x60: 6 neocaridina-davidi raises, 6 caridina-multidentata
200x60x60: 2 pelvicachromis-pulcher raises, 8 trigonostigma-heteromorpha
200x60x60: 2 mikrogeophagus-ramirezi raises, 2 apistogramma-cacatuoides
maylandia-estherae, labidochromis-caeruleus`,
    speaks: `
200x60x60: 1 male xiphophorus-maculatus raises, 3 female xiphophorus-maculatus, 2 xiphophorus-hellerii
200x60x60: 2 male poecilia-reticulata raises, 4 female poecilia-reticulata, 2 male poecilia-wingei
200x60x60: 1 male betta-splendens raises, 1 female betta-splendens, 1 male betta-imbellis, 1 female betta-imbellis`,
  },
  furnishing: {
    silent: keptInOneTank,
    speaks: `
balantiocheilos-melanopterus, hypancistrus-zebra
cyprinus-rubrofuscus, danio-margaritatus`,
  },
  planting: {
    silent: keptInOneTank,
    speaks: `
amatitlania-nigrofasciata, dario-dario
dario-dario, phractocephalus-hemioliopterus`,
  },
};
