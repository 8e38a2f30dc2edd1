// Where pages stand within the folder of their language.

export const listPath = "species/index.html";

/** The page of a species or of a form of it. */
export const speciesPath = (id: string, form?: string): string =>
  form === undefined ? `species/${id}.html` : `species/${id}/${form}.html`;

export const familyPath = (family: string): string => `families/${family.toLowerCase()}.html`;
