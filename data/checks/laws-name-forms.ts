import { fieldOf } from "../reading/fields";
import type { Check } from "./check";

export const lawsNameForms: Check = {
  name: "A form that a law names is one of a record",
  async find({ records, files }) {
    return files.legal.flatMap(({ path: file, json }) =>
      listed(fieldOf(json, "listings")).flatMap((listing, index) => {
        const taxa = listed(fieldOf(listing, "taxa"));
        const known = records.flatMap(({ record: { taxonomy, forms = {} } }) => {
          const { name, family } = taxonomy;
          const isNamed = [name, name.split(" ")[0], family].some((taxon) => taxa.includes(taxon));
          return isNamed ? Object.keys(forms) : [];
        });
        return listed(fieldOf(listing, "forms")).flatMap((form, place) =>
          known.some((id) => id === form)
            ? []
            : [
                {
                  file,
                  at: ["listings", index, "forms", place],
                  found: `${form}, which is no form of whom the law names`,
                  expected: "the id of a form of a species that the law names",
                  mend: "Correct it, or add the form to the record.",
                },
              ],
        );
      }),
    );
  },
};

const listed = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);
