import type { Section } from "../../species";

/** What each section of a record is about. */
export const sectionWords: Readonly<Record<Section, string>> = {
  origin: "Where it comes from, and how those that are sold came to be.",
  size: "How large and how old it grows, and how it is built.",
  water: "The water that it is kept in, and how it breathes.",
  space: "The tank that it needs: room, furnishing and ground.",
  temperament: "What it does to others.",
  social: "How it lives with its own kind.",
  appearance: "What other animals take it for.",
  diet: "What it eats, where and when.",
  predation: "Which tank mates it eats.",
  reproduction: "How it breeds, and with whom.",
  effects: "What it does to plants and ground.",
  care: "What a keeper must know beside that.",
};
