/** Terms of Darwin Core. */
export const dwc = (name: string) => `http://rs.tdwg.org/dwc/terms/${name}`;

/** Terms of Dublin Core. */
export const dct = (name: string) => `http://purl.org/dc/terms/${name}`;

/** Terms of the Ecological Trait-data Standard, version 0.10. */
export const ets = (name: string) => `http://terminologies.gfbio.org/terms/ETS/${name}`;
