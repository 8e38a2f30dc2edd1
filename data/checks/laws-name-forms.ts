import { namesInLaw } from "../modules/modules";
import { fieldOf } from "../reading/fields";
import type { Check } from "./check";

export const lawsNameForms: Check = {
  name: "A form that a law names is one of a record",
  async find({ records, files }) {
    /** The ids of forms of whom a taxon names; undefined where no record is of it. */
    const formsOf = (taxon: unknown): readonly string[] | undefined => {
      const named = records.filter(({ record }) => namesInLaw(record).includes(taxon));
      return named.length > 0 ? named.flatMap(({ record: { forms = {} } }) => Object.keys(forms)) : undefined;
    };
    return files.legal.flatMap(({ path: file, json }) =>
      listed(fieldOf(json, "listings")).flatMap((listing, index) => {
        const known = listed(fieldOf(listing, "taxa")).map(formsOf);
        if (known.includes(undefined)) return []; // It may be a form of one that is in no record.
        return listed(fieldOf(listing, "forms")).flatMap((form, place) =>
          known.flat().some((id) => id === form)
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
