// What says how the files of a Darwin Core Archive are to be read.
import { XMLBuilder } from "fast-xml-parser";
import type { Row } from "vivary/tables";

/** A file of an archive. */
export interface ArchiveFile {
  readonly path: string;
  /** What a row is, as a URI. */
  readonly rowType: string;
  /** The term of each column but the first, which holds the id of the taxon. */
  readonly terms: Readonly<Record<string, string>>;
  readonly rows: readonly Row[];
}

const builder = new XMLBuilder({
  ignoreAttributes: false,
  attributeNamePrefix: "@",
  format: true,
  suppressEmptyNode: true,
});

/** The meta.xml of a core with its extensions, whose files are CSV by RFC 4180 with a header. */
export function metaXml(core: ArchiveFile, extensions: readonly ArchiveFile[]): string {
  return builder.build({
    "?xml": { "@version": "1.0", "@encoding": "UTF-8" },
    archive: {
      "@xmlns": "http://rs.tdwg.org/dwc/text/",
      core: { ...told(core), id: { "@index": "0" }, field: fields(core) },
      extension: extensions.map((file) => ({
        ...told(file),
        coreid: { "@index": "0" },
        field: fields(file),
      })),
    },
  });
}

const told = ({ path, rowType }: ArchiveFile) => ({
  "@encoding": "UTF-8",
  "@fieldsTerminatedBy": ",",
  "@linesTerminatedBy": "\\r\\n",
  "@fieldsEnclosedBy": '"',
  "@ignoreHeaderLines": "1",
  "@rowType": rowType,
  files: { location: path },
});

const fields = ({ terms }: ArchiveFile) =>
  Object.values(terms).map((term, index) => ({ "@index": `${index + 1}`, "@term": term }));
