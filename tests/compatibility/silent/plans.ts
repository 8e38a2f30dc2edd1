import type { Cases } from "./cases";

/**
 * Common practice, no source: of each rule about a tank, ten ordinary ones of which it finds nothing wrong, and some that
 * lack something.
 */
export const plans: Cases = {
  "water-temperature": {
    silent: `
60x30x30: 10 paracheirodon-innesi; temperature 24
54x28x30: 1 male betta-splendens; temperature 26
120x40x45: 2 carassius-auratus; temperature 20
80x35x40: 8 tanichthys-albonubes; temperature 21
150x60x60: 6 symphysodon-aequifasciatus; temperature 29
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea; temperature 24
45x30x30: 12 neocaridina-davidi; temperature 22
120x50x50: 8 labidochromis-caeruleus; temperature 25
100x40x40: 10 puntigrus-tetrazona, 1 ancistrus-cirrhosus; temperature 24
60x30x30: 8 danio-rerio; temperature 23, hottest 25, coolest 20`,
    speaks: `
150x60x60: 6 symphysodon-aequifasciatus; temperature 22
80x35x40: 8 tanichthys-albonubes; temperature 28
54x28x30: 1 male betta-splendens; temperature 20`,
  },
  "water-ph": {
    silent: `
60x30x30: 10 paracheirodon-innesi; pH 6.5
54x28x30: 1 male betta-splendens; pH 7
120x40x45: 2 carassius-auratus; pH 7.5
80x35x40: 8 tanichthys-albonubes; pH 7
150x60x60: 6 symphysodon-aequifasciatus; pH 6.2
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea; pH 7.3
45x30x30: 12 neocaridina-davidi; pH 7
120x50x50: 8 labidochromis-caeruleus; pH 8
100x40x40: 10 puntigrus-tetrazona, 1 ancistrus-cirrhosus; pH 6.8
60x30x30: 8 xiphophorus-maculatus; pH 7.8`,
    speaks: `
150x60x60: 6 symphysodon-aequifasciatus; pH 8
120x50x50: 8 labidochromis-caeruleus; pH 6.5`,
  },
  "water-hardness": {
    silent: `
60x30x30: 10 paracheirodon-innesi; generalHardness 6
54x28x30: 1 male betta-splendens; generalHardness 8
120x40x45: 2 carassius-auratus; generalHardness 12
80x35x40: 8 tanichthys-albonubes; generalHardness 10
150x60x60: 6 symphysodon-aequifasciatus; generalHardness 3
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea; generalHardness 12
45x30x30: 12 neocaridina-davidi; generalHardness 8
120x50x50: 8 labidochromis-caeruleus; generalHardness 14
100x40x40: 10 puntigrus-tetrazona, 1 ancistrus-cirrhosus; generalHardness 8
60x30x30: 8 xiphophorus-maculatus; generalHardness 15`,
    speaks: `
60x30x30: 6 poecilia-reticulata; generalHardness 1
60x30x30: 10 paracheirodon-axelrodi; generalHardness 25`,
  },
  "carbon-dioxide": {
    silent: `
60x30x30: 10 paracheirodon-innesi; pH 6.5, carbonateHardness 2
54x28x30: 1 male betta-splendens; pH 7, carbonateHardness 5
120x40x45: 2 carassius-auratus; pH 7.6, carbonateHardness 10
80x35x40: 8 tanichthys-albonubes; pH 7.2, carbonateHardness 8
150x60x60: 6 symphysodon-aequifasciatus; pH 6.2, carbonateHardness 1
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea; pH 7.5, carbonateHardness 12
45x30x30: 12 neocaridina-davidi; pH 7, carbonateHardness 4
120x50x50: 8 labidochromis-caeruleus; pH 8.2, carbonateHardness 15
100x40x40: 10 puntigrus-tetrazona, 1 ancistrus-cirrhosus; pH 6.8
60x30x30: 8 danio-rerio`,
    speaks: `
60x30x30: 10 paracheirodon-innesi; pH 6, carbonateHardness 8
120x50x50: 8 labidochromis-caeruleus; pH 7, carbonateHardness 15`,
  },
  "cool-season": {
    silent: `
60x30x30: 10 paracheirodon-innesi; temperature 24
54x28x30: 1 male betta-splendens; temperature 26
80x35x40: 8 tanichthys-albonubes; temperature 21, coolest 16
80x35x40: 8 tanichthys-albonubes; temperature 18
80x35x40: 8 tanichthys-albonubes
200x80x60: 4 carassius-auratus; temperature 18, coolest 10
80x35x40: 6 hoplisoma-paleatum; temperature 22, coolest 19
80x35x40: 8 tanichthys-albonubes, 1 male betta-splendens; temperature 23
80x35x40: 2 macropodus-opercularis; temperature 24, coolest 18
100x40x40: 10 danio-rerio; temperature 24`,
    speaks: `
80x35x40: 8 tanichthys-albonubes; temperature 24
200x80x60: 4 carassius-auratus; temperature 22, coolest 20
80x35x40: 6 hoplisoma-paleatum, 10 danio-rerio; temperature 24`,
  },
  "water-salinity": {
    silent: `
60x30x30: 10 paracheirodon-innesi
54x28x30: 1 male betta-splendens
120x40x45: 2 carassius-auratus; salinity 0
80x35x40: 8 tanichthys-albonubes
150x60x60: 6 symphysodon-aequifasciatus
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea
45x30x30: 12 neocaridina-davidi
120x50x50: 8 labidochromis-caeruleus
200x80x80: 5 monodactylus-argenteus; salinity 12
60x30x30: 8 xiphophorus-maculatus`,
    speaks: `
60x30x30: 10 paracheirodon-innesi; salinity 5
120x40x45: 2 carassius-auratus; salinity 20`,
  },
  oxygen: {
    silent: `
60x30x35: 10 paracheirodon-innesi; temperature 24, calmest still, strongest gentle
45x30x30: 1 male betta-splendens; temperature 26, openSurface 0.5
120x50x50: 2 carassius-auratus; temperature 20, calmest gentle, strongest moderate
80x35x40: 8 tanichthys-albonubes; temperature 21, calmest still, strongest moderate
150x60x60: 6 symphysodon-aequifasciatus; temperature 29, calmest still, strongest gentle
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea; temperature 24, calmest still, strongest gentle
45x30x30: 12 neocaridina-davidi; temperature 22, calmest still, strongest gentle
120x50x50: 8 labidochromis-caeruleus; temperature 25, calmest gentle, strongest moderate
80x35x40: 2 trichogaster-lalius; temperature 26, openSurface 0.4
80x35x40: 6 sewellia-lineolata; temperature 22, calmest moderate, strongest strong`,
    speaks: `
40x25x25: 1 male betta-splendens; openSurface 0.05
60x30x30: 30 danio-rerio; temperature 28, hottest 32, calmest still, strongest still
80x35x40: 6 sewellia-lineolata; temperature 22, calmest still, strongest still`,
  },
  "filter-nitrogen": {
    silent: `
60x30x35: 10 paracheirodon-innesi; media 2
45x30x30: 1 male betta-splendens; media 1
80x35x40: 8 tanichthys-albonubes; media 2
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea; media 4
45x30x30: 12 neocaridina-davidi; media 0.5
60x30x30: 8 boraras-brigittae; media 0.5
80x35x40: 8 trigonostigma-heteromorpha, 6 pangio-kuhlii; media 4
80x35x40: 2 trichogaster-lalius, 8 paracheirodon-innesi; media 3
120x50x50: 8 labidochromis-caeruleus; media 12
100x40x40: 8 danio-rerio, 6 hoplisoma-panda; media 4`,
    speaks: `
60x30x35: 10 paracheirodon-innesi; media 0.01
120x50x50: 4 carassius-auratus; media 0.5`,
  },
  "longest-run": {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
80x35x40: 8 danio-rerio
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea
45x30x30: 12 neocaridina-davidi
120x50x50: 8 labidochromis-caeruleus
100x40x40: 8 puntigrus-tetrazona
150x60x60: 6 symphysodon-aequifasciatus
80x35x40: 8 trigonostigma-heteromorpha, 6 pangio-kuhlii
60x30x30: 2 mikrogeophagus-ramirezi`,
    speaks: `
60x60x40: 1 astronotus-ocellatus
60x60x40: 6 devario-aequipinnatus
100x80x60: 6 balantiocheilos-melanopterus`,
  },
  footprint: {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
80x35x40: 8 danio-rerio
80x35x40: 4 poecilia-reticulata, 6 osteogaster-aenea
45x30x30: 12 neocaridina-davidi
120x50x50: 8 labidochromis-caeruleus
100x40x40: 8 puntigrus-tetrazona
150x60x60: 6 symphysodon-aequifasciatus
80x35x40: 8 trigonostigma-heteromorpha, 6 pangio-kuhlii
60x35x30: 2 mikrogeophagus-ramirezi`,
    speaks: `
30x20x20: 1 carassius-auratus
120x30x40: 1 astronotus-ocellatus
60x30x30: 6 chromobotia-macracanthus`,
  },
  height: {
    silent: `
60x30x25: 10 paracheirodon-innesi
45x30x25: 1 male betta-splendens
80x35x35: 8 danio-rerio
80x35x30: 6 osteogaster-aenea
45x30x25: 12 neocaridina-davidi
120x50x40: 8 labidochromis-caeruleus
120x50x60: 4 pterophyllum-scalare
150x60x60: 6 symphysodon-aequifasciatus
80x35x30: 6 pangio-kuhlii
60x35x25: 2 mikrogeophagus-ramirezi`,
    speaks: `
120x50x30: 4 pterophyllum-scalare
150x60x30: 6 symphysodon-aequifasciatus
600x300x12: 1 phractocephalus-hemioliopterus
200x60x10: 2 carassius-auratus`,
  },
  zones: {
    silent: `
80x35x40: 6 osteogaster-aenea, 1 ancistrus-cirrhosus
80x35x40: 6 hoplisoma-panda, 8 otocinclus-vittatus
60x30x35: 10 paracheirodon-innesi, 6 hoplisoma-habrosum
80x35x40: 8 trigonostigma-heteromorpha, 6 pangio-kuhlii
100x40x40: 6 hoplisoma-panda, 6 pangio-kuhlii
60x30x30: 12 neocaridina-davidi, 4 vittina-natalensis
80x35x40: 8 danio-rerio, 6 osteogaster-aenea
120x50x50: 4 pterophyllum-scalare, 8 hoplisoma-sterbai
80x35x40: 8 carnegiella-strigata, 10 paracheirodon-axelrodi
120x50x50: 8 puntigrus-tetrazona, 6 botia-striata`,
    speaks: `
60x30x30: 6 osteogaster-aenea, 6 pangio-kuhlii, 6 ambastaia-sidthimunki
80x35x40: 6 botia-striata, 6 osteogaster-aenea`,
  },
  territories: {
    silent: `
60x35x30: 1 male mikrogeophagus-ramirezi, 1 female mikrogeophagus-ramirezi
80x35x40: 1 male pelvicachromis-pulcher, 1 female pelvicachromis-pulcher
45x30x30: 1 male betta-splendens
80x35x40: 10 paracheirodon-innesi, 6 hoplisoma-panda
60x30x30: 12 neocaridina-davidi
80x35x40: 1 male ancistrus-cirrhosus, 2 female ancistrus-cirrhosus
100x40x40: 1 male apistogramma-cacatuoides, 2 female apistogramma-cacatuoides; sightBreaks 3
80x35x40: 1 male trichogaster-lalius, 1 female trichogaster-lalius
150x50x50: 1 epalzeorhynchos-bicolor, 10 puntigrus-tetrazona
120x40x40: 1 male ancistrus-cirrhosus, 1 male mikrogeophagus-ramirezi, 1 female mikrogeophagus-ramirezi; sightBreaks 4`,
    speaks: `
60x30x30: 3 male ancistrus-cirrhosus
80x35x40: 1 male pelvicachromis-pulcher, 1 female pelvicachromis-pulcher, 1 male mikrogeophagus-ramirezi, 1 female mikrogeophagus-ramirezi`,
  },
  "group-size": {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
80x35x40: 8 danio-rerio
80x35x40: 6 osteogaster-aenea
45x30x30: 12 neocaridina-davidi
80x35x40: 1 ancistrus-cirrhosus
80x35x40: 1 male trichogaster-lalius, 1 female trichogaster-lalius
100x40x40: 8 puntigrus-tetrazona
150x50x50: 1 epalzeorhynchos-bicolor
150x60x60: 6 symphysodon-aequifasciatus`,
    speaks: `
60x30x35: 2 paracheirodon-innesi
80x35x40: 2 osteogaster-aenea
100x40x40: 3 puntigrus-tetrazona
120x50x50: 1 chromobotia-macracanthus`,
  },
  "sex-ratio": {
    silent: `
60x30x35: 10 paracheirodon-innesi
60x30x35: 2 male poecilia-reticulata, 4 female poecilia-reticulata
60x30x35: 6 male poecilia-reticulata
60x30x35: 8 poecilia-reticulata
80x35x40: 2 male xiphophorus-maculatus, 5 female xiphophorus-maculatus
80x35x40: 1 male trichogaster-lalius, 1 female trichogaster-lalius
80x35x40: 3 male osteogaster-aenea, 3 female osteogaster-aenea
60x30x30: 1 male mikrogeophagus-ramirezi, 1 female mikrogeophagus-ramirezi
60x30x30: 4 female xiphophorus-maculatus
120x50x50: 1 male xiphophorus-hellerii, 3 female xiphophorus-hellerii`,
    speaks: `
60x30x35: 4 male poecilia-reticulata, 2 female poecilia-reticulata
120x50x50: 3 male xiphophorus-hellerii, 2 female xiphophorus-hellerii`,
  },
  "both-sexes": {
    silent: `
60x30x35: 10 paracheirodon-innesi
60x30x35: 6 male poecilia-reticulata
60x30x35: 2 male poecilia-reticulata raises, 4 female poecilia-reticulata raises
60x30x35: 8 poecilia-reticulata raises
80x35x40: 1 male trichogaster-lalius raises, 1 female trichogaster-lalius raises
80x35x40: 6 osteogaster-aenea raises
45x30x30: 12 neocaridina-davidi raises
60x30x30: 1 male mikrogeophagus-ramirezi raises, 1 female mikrogeophagus-ramirezi raises
80x35x40: 1 female procambarus-virginalis raises
100x40x40: 8 puntigrus-tetrazona`,
    speaks: `
60x30x35: 6 male poecilia-reticulata raises
54x28x30: 1 male betta-splendens raises
120x50x50: 1 female amatitlania-nigrofasciata raises`,
  },
  cover: {
    silent: `
60x30x35: 10 paracheirodon-innesi; cover 0.4
45x30x30: 1 male betta-splendens; cover 0.4
120x50x50: 2 carassius-auratus; cover 0.1
80x35x40: 8 danio-rerio; cover 0.2
80x35x40: 6 osteogaster-aenea; cover 0.3
45x30x30: 12 neocaridina-davidi; cover 0.4
80x35x40: 2 trichogaster-lalius; cover 0.5
100x40x40: 8 puntigrus-tetrazona; cover 0.3
80x35x40: 6 pangio-kuhlii; cover 0.4
60x30x30: 10 boraras-brigittae; cover 0.5`,
    speaks: `
80x35x40: 2 trichogaster-lalius; cover 0
60x30x30: 10 boraras-brigittae; cover 0.05
45x30x30: 1 male betta-splendens; cover 0`,
  },
  "open-water": {
    silent: `
60x30x35: 10 paracheirodon-innesi; openWater 0.5
45x30x30: 1 male betta-splendens; openWater 0.4
120x50x50: 2 carassius-auratus; openWater 0.8
80x35x40: 8 danio-rerio; openWater 0.6
80x35x40: 6 osteogaster-aenea; cover 0.4
45x30x30: 12 neocaridina-davidi; openWater 0.3
80x35x40: 2 trichogaster-lalius; openWater 0.4
100x40x40: 8 puntigrus-tetrazona; cover 0.4
80x35x40: 6 pangio-kuhlii; openWater 0.3
150x60x60: 8 melanotaenia-boesemani; openWater 0.6`,
    speaks: `
80x35x40: 8 danio-rerio; openWater 0.1
150x60x60: 8 melanotaenia-boesemani; cover 0.8`,
  },
  ground: {
    silent: `
60x30x35: 10 paracheirodon-innesi; substrate coarse-gravel
45x30x30: 1 male betta-splendens; substrate bare
120x50x50: 2 carassius-auratus; substrate sand
80x35x40: 8 danio-rerio; substrate pebbles
80x35x40: 6 osteogaster-aenea; substrate sand
45x30x30: 12 neocaridina-davidi; substrate fine-gravel
80x35x40: 2 trichogaster-lalius; substrate coarse-gravel
100x40x40: 8 puntigrus-tetrazona; substrate fine-gravel
80x35x40: 6 pangio-kuhlii; substrate sand
80x35x40: 4 poecilia-reticulata; substrate bare`,
    speaks: `
80x35x40: 6 osteogaster-aenea; substrate coarse-gravel
80x35x40: 6 pangio-kuhlii; substrate pebbles
200x80x60: 1 potamotrygon-motoro; substrate coarse-gravel`,
  },
  "hiding-places": {
    silent: `
80x35x40: 6 pangio-kuhlii; wood 1, leaves 2
120x50x50: 8 ambastaia-sidthimunki; wood 2, rocks 2
80x35x40: 1 male ancistrus-cirrhosus; caves 1
80x35x40: 1 male ancistrus-cirrhosus, 1 female ancistrus-cirrhosus; caves 2, wood 2
60x30x30: 6 neolamprologus-multifasciatus; shells 12
80x35x40: 1 male pelvicachromis-pulcher, 1 female pelvicachromis-pulcher; caves 1
120x50x50: 6 synodontis-nigriventris; wood 3
60x30x35: 10 paracheirodon-innesi; caves 0
120x50x60: 3 erpetoichthys-calabaricus; caves 1, wood 1
150x50x50: 1 epalzeorhynchos-bicolor, 6 hoplisoma-sterbai; wood 1`,
    speaks: `
60x30x30: 6 neolamprologus-multifasciatus; shells 2
80x35x40: 6 pangio-kuhlii; wood 0
150x50x50: 1 epalzeorhynchos-bicolor, 1 male ancistrus-cirrhosus; caves 1`,
  },
  plants: {
    silent: `
60x30x35: 10 paracheirodon-innesi; plants planted
45x30x30: 1 male betta-splendens; plants planted
120x50x50: 2 carassius-auratus; plants none
80x35x40: 8 danio-rerio; plants none
80x35x40: 6 osteogaster-aenea; plants none
80x35x40: 2 trichogaster-lalius; plants grown-in
60x30x30: 10 boraras-brigittae; plants grown-in
120x50x50: 8 labidochromis-caeruleus; plants none
80x35x40: 6 pangio-kuhlii; plants none
80x35x40: 4 poecilia-reticulata; plants none`,
    speaks: `
60x30x30: 4 dario-dario; plants none
60x30x30: 4 dario-dario; plants planted`,
  },
  "plants-at-risk": {
    silent: `
60x30x35: 10 paracheirodon-innesi; plants grown-in
45x30x30: 1 male betta-splendens; plants planted
120x50x50: 2 carassius-auratus; plants none
80x35x40: 8 danio-rerio; plants planted
80x35x40: 6 hoplisoma-panda; plants planted
45x30x30: 12 neocaridina-davidi; plants grown-in
80x35x40: 2 trichogaster-lalius; plants grown-in
60x30x30: 10 boraras-brigittae; plants grown-in
80x35x40: 6 otocinclus-vittatus; plants planted
200x80x60: 6 metynnis-argenteus; plants none`,
    speaks: `
200x80x60: 6 metynnis-argenteus; plants planted
120x50x50: 2 carassius-auratus; plants planted
200x80x60: 1 astronotus-ocellatus; plants planted`,
  },
  "settling-company": {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
80x35x40: 8 danio-rerio
80x35x40: 6 osteogaster-aenea
80x35x40: 2 trichogaster-chuna, 10 hyphessobrycon-amandae
80x35x40: 2 trichogaster-lalius, 10 trigonostigma-heteromorpha
120x50x50: 1 male apistogramma-cacatuoides, 2 female apistogramma-cacatuoides, 10 nannostomus-beckfordi
150x60x60: 6 symphysodon-aequifasciatus, 15 paracheirodon-axelrodi
80x35x40: 2 trichogaster-chuna; cover 0.8
80x35x40: 4 poecilia-reticulata`,
    speaks: `
80x35x40: 2 trichogaster-chuna; cover 0.3
80x35x40: 2 trichogaster-chuna, 6 hoplisoma-panda; cover 0.3`,
  },
  feeding: {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
120x50x50: 2 carassius-auratus
80x35x40: 8 danio-rerio; food dry surface day
80x35x40: 4 poecilia-reticulata; food dry surface day
80x35x40: 6 osteogaster-aenea; food dry bottom day
80x35x40: 2 trichogaster-lalius; food frozen surface day
80x35x40: 1 ancistrus-cirrhosus; food algae bottom night
100x40x40: 8 puntigrus-tetrazona; food dry midwater day
80x35x40: 6 pangio-kuhlii; food frozen bottom night`,
    speaks: `
80x35x40: 6 pangio-kuhlii; food dry surface day
200x60x60: 1 apteronotus-albifrons; food dry surface day`,
  },
  lid: {
    silent: `
60x30x35: 10 paracheirodon-innesi; lid false
120x50x50: 2 carassius-auratus; lid false
80x35x40: 6 osteogaster-aenea; lid false
45x30x30: 12 neocaridina-davidi; lid false
80x35x40: 2 trichogaster-lalius; lid true
60x30x30: 8 carnegiella-strigata; lid true
80x35x40: 6 pangio-kuhlii; lid true
120x50x50: 4 pterophyllum-scalare; lid false
150x60x60: 6 symphysodon-aequifasciatus; lid false
45x30x30: 1 male betta-splendens; lid true`,
    speaks: `
60x30x30: 8 carnegiella-strigata; lid false
120x50x60: 3 erpetoichthys-calabaricus; lid false
120x50x60: 1 pantodon-buchholzi; lid false`,
  },
  "flow-places": {
    silent: `
60x30x35: 10 paracheirodon-innesi; calmest still, strongest gentle
45x30x30: 1 male betta-splendens; calmest still, strongest still
120x50x50: 2 carassius-auratus; calmest gentle, strongest moderate
80x35x40: 8 danio-rerio; calmest still, strongest moderate
80x35x40: 6 osteogaster-aenea; calmest gentle, strongest moderate
45x30x30: 12 neocaridina-davidi; calmest still, strongest gentle
80x35x40: 2 trichogaster-lalius; calmest still, strongest gentle
80x35x40: 6 sewellia-lineolata; calmest moderate, strongest strong
80x35x40: 6 pangio-kuhlii; calmest still, strongest gentle
120x50x50: 8 labidochromis-caeruleus; calmest gentle, strongest moderate`,
    speaks: `
45x30x30: 1 male betta-splendens; calmest moderate, strongest strong
80x35x40: 6 sewellia-lineolata; calmest still, strongest still`,
  },
  sensitive: {
    silent: `
60x30x35: 8 danio-rerio
120x50x50: 2 carassius-auratus
80x35x40: 8 tanichthys-albonubes
80x35x40: 4 poecilia-reticulata
80x35x40: 6 xiphophorus-maculatus
100x40x40: 8 puntigrus-tetrazona
60x30x35: 8 rohanella-titteya
80x35x40: 8 trigonostigma-heteromorpha
120x50x50: 8 labidochromis-caeruleus
80x35x40: 6 xiphophorus-hellerii`,
    speaks: `
45x30x30: 12 neocaridina-davidi
120x50x50: 6 chromobotia-macracanthus
200x80x60: 1 potamotrygon-motoro`,
  },
  "caution-floor": {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
80x35x40: 8 danio-rerio
80x35x45: 6 osteogaster-aenea
54x28x30: 12 neocaridina-davidi
60x40x40: 2 trichogaster-lalius
30x30x35: 10 boraras-brigittae
100x40x40: 8 puntigrus-tetrazona
100x40x45: 4 poecilia-reticulata
90x35x40: 6 pangio-kuhlii`,
    speaks: `
200x60x60: 1 astronotus-ocellatus
150x60x60: 6 symphysodon-aequifasciatus`,
  },
  "caution-devices": {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
80x35x40: 8 danio-rerio
80x35x45: 6 osteogaster-aenea
60x40x40: 2 trichogaster-lalius
30x30x35: 10 boraras-brigittae
100x40x40: 8 puntigrus-tetrazona
100x40x45: 4 poecilia-reticulata
90x35x40: 6 pangio-kuhlii
120x50x50: 4 pterophyllum-scalare`,
    speaks: `
200x80x60: 1 potamotrygon-motoro
45x30x30: 12 neocaridina-davidi`,
  },
  "caution-hazards": {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
80x35x40: 8 danio-rerio
45x30x30: 12 neocaridina-davidi
60x40x40: 2 trichogaster-lalius
30x30x35: 10 boraras-brigittae
100x40x40: 8 puntigrus-tetrazona
100x40x45: 4 poecilia-reticulata
120x50x50: 2 carassius-auratus
120x50x50: 4 pterophyllum-scalare`,
    speaks: `
200x80x60: 1 potamotrygon-motoro
120x50x50: 4 pimelodus-pictus
80x35x45: 6 osteogaster-aenea`,
  },
  "caution-law": {
    silent: `
60x30x35: 10 paracheirodon-innesi
45x30x30: 1 male betta-splendens
80x35x40: 8 danio-rerio
45x30x30: 12 neocaridina-davidi
60x40x40: 2 trichogaster-lalius
30x30x35: 10 boraras-brigittae
100x40x40: 8 puntigrus-tetrazona
80x35x45: 6 osteogaster-aenea
120x50x50: 4 pterophyllum-scalare
80x35x40: 8 trigonostigma-heteromorpha`,
    speaks: `
120x50x50: 1 procambarus-virginalis
200x80x60: 1 potamotrygon-motoro
120x50x50: 2 pomacea-canaliculata`,
  },
};
