import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** The add-in that a workbook names. */
export interface AddInFacts {
  /** Id in the manifest that the admin center has. */
  id: string;
  /** Version of package.json: three numbers. */
  version: string;
}

const RELATIONSHIPS = "http://schemas.openxmlformats.org/package/2006/relationships";
const MICROSOFT = "http://schemas.microsoft.com/office/2011/relationships";
const R = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"';
const XML = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const FOLDER = "xl/webextensions";
const CONTENT_TYPES = "[Content_Types].xml";
const ROOT = "_rels/.rels";

/**
 * Adds the two parts by which Excel offers an add-in's pane when it opens a workbook: a web extension and a task pane
 * (Microsoft, "Automatically open a task pane with a document"; [MS-OWEXML] 2.2.5, 2.2.7; packaging by ISO/IEC 29500-2).
 * The catalog is that of the admin center, "EXCatalog". Visible from the start, for without that nothing is offered to a
 * person who does not have the add-in yet; Excel asks for trust first.
 */
export function offerPane(file: Uint8Array, { id, version }: AddInFacts): Uint8Array {
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id))
    throw new Error(`the add-in's id is no GUID; got ${id}.`);
  if (!/^\d+\.\d+\.\d+$/.test(version)) throw new Error(`the add-in's version is no three numbers; got ${version}.`);
  const parts = unzipSync(file);
  const put = (path: string, xml: string) => void (parts[path] = strToU8(XML + xml));
  const insert = (path: string, before: string, xml: string) => {
    const text = strFromU8(parts[path]!);
    if (!text.includes(before)) throw new Error(`The written workbook's ${path} has no ${before}.`);
    parts[path] = strToU8(text.replace(before, `${xml}${before}`));
  };
  put(
    `${FOLDER}/webextension1.xml`,
    `<we:webextension xmlns:we="http://schemas.microsoft.com/office/webextensions/webextension/2010/11" id="{${id.toUpperCase()}}">` +
      `<we:reference id="${id}" version="${version}.0" store="EXCatalog" storeType="EXCatalog"/><we:alternateReferences/>` +
      `<we:properties><we:property name="Office.AutoShowTaskpaneWithDocument" value="true"/></we:properties>` +
      `<we:bindings/><we:snapshot ${R}/></we:webextension>`,
  );
  put(
    `${FOLDER}/taskpanes.xml`,
    `<wetp:taskpanes xmlns:wetp="http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11">` +
      `<wetp:taskpane dockstate="right" visibility="1" width="380" row="1"><wetp:webextensionref ${R} r:id="rId1"/>` +
      `</wetp:taskpane></wetp:taskpanes>`,
  );
  put(
    `${FOLDER}/_rels/taskpanes.xml.rels`,
    `<Relationships xmlns="${RELATIONSHIPS}"><Relationship Id="rId1" Type="${MICROSOFT}/webextension" Target="webextension1.xml"/></Relationships>`,
  );
  insert(
    ROOT,
    "</Relationships>",
    `<Relationship Id="rIdPane" Type="${MICROSOFT}/webextensiontaskpanes" Target="${FOLDER}/taskpanes.xml"/>`,
  );
  const type = (name: string, kind: string) =>
    `<Override PartName="/${FOLDER}/${name}.xml" ContentType="application/vnd.ms-office.${kind}+xml"/>`;
  insert(CONTENT_TYPES, "</Types>", type("webextension1", "webextension") + type("taskpanes", "webextensiontaskpanes"));
  return zipSync(parts, { level: 6 });
}
