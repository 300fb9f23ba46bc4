/** A workbook with every kind of part that a save must keep and a hand-over must judge, made by code (invented: Fernhill Hall). */
import { fullSheets } from "./fullSheets";
import { HEAD, MAIN, R, contentTypes, rels, type PartTexts } from "./zipParts";

const SHEETML = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const DRAWINGML = "application/vnd.openxmlformats-officedocument.drawingml";

/** A mark in the part that `key` names: a copy that dropped the part may hold it nowhere. */
export const canary = (key: string): string => `CANARY ${key} of Fernhill`;

/** One transparent pixel. */
const PNG = Uint8Array.from(
  atob("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mNkYAAAAAYAAjCB0C8AAAAASUVORK5CYII="),
  (letter) => letter.charCodeAt(0),
);

const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);

const workbook = `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${R}" xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006" mc:Ignorable="x15" xmlns:x15="http://schemas.microsoft.com/office/spreadsheetml/2010/11/main">
<fileVersion appName="xl" lastEdited="7" lowestEdited="7" rupBuild="1"/><fileSharing userName="${canary("fileSharing")}"/>
<workbookPr codeName="${canary("codeName")}" defaultThemeVersion="166925"/>
<mc:AlternateContent><mc:Choice Requires="x15"><x15ac:absPath url="C:\\Jobs\\${canary("path")}\\" xmlns:x15ac="http://schemas.microsoft.com/office/spreadsheetml/2010/11/ac"/></mc:Choice></mc:AlternateContent>
<bookViews><workbookView xWindow="0" yWindow="0" windowWidth="20000" windowHeight="10000" firstSheet="1" activeTab="1"/></bookViews>
<sheets><sheet name="Prices" sheetId="4" r:id="rId1"/><sheet name="Loop" sheetId="2" r:id="rId2"/><sheet name="cfg" sheetId="7" state="veryHidden" r:id="rId3"/><sheet name="Pivot" sheetId="9" r:id="rId4"/><sheet name="Other book" sheetId="11" state="hidden" r:id="rId5"/></sheets>
<externalReferences><externalReference r:id="rId20"/></externalReferences>
<definedNames><definedName name="_xlnm._FilterDatabase" localSheetId="1" hidden="1">Loop!$A$1:$D$4</definedName><definedName name="_xlnm.Print_Area" localSheetId="1">Loop!$A$1:$F$30</definedName><definedName name="_xlnm.Print_Titles" localSheetId="1">Loop!$1:$1</definedName><definedName name="Flow">Loop!$B$2</definedName><definedName name="Gpm">Loop!$B$2/60</definedName><definedName name="Local" localSheetId="0">Prices!$B$2</definedName><definedName name="MarginName" hidden="1">${canary("hiddenName").length}+N("${canary("hiddenName")}")</definedName><definedName name="PriceList">Prices!$B$2:$B$3</definedName><definedName name="Secret">cfg!$A$1</definedName></definedNames>
<calcPr calcId="191029" iterate="1" iterateCount="50"/>
<customWorkbookViews><customWorkbookView name="${canary("customView")}" guid="{11111111-1111-1111-1111-111111111111}" windowWidth="100" windowHeight="100" activeSheetId="2"/></customWorkbookViews>
<pivotCaches><pivotCache cacheId="5" r:id="rId21"/></pivotCaches></workbook>`;

const styles = `${HEAD}<styleSheet xmlns="${MAIN}"><numFmts count="2"><numFmt numFmtId="164" formatCode="0.0&quot; gpm&quot;"/><numFmt numFmtId="165" formatCode="0&quot; ${canary("numberFormat")}&quot;"/></numFmts>
<fonts count="2"><font><sz val="11"/><color theme="1"/><name val="Calibri"/><family val="2"/><scheme val="minor"/></font><font><b/><sz val="14"/><color theme="4"/><name val="Calibri"/></font></fonts>
<fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders>
<cellStyleXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0"/></cellStyleXfs>
<cellXfs count="4"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1" applyProtection="1"><protection locked="0"/></xf><xf numFmtId="165" fontId="1" fillId="0" borderId="0" xfId="1"/></cellXfs>
<cellStyles count="2"><cellStyle name="Normal" xfId="0" builtinId="0"/><cellStyle name="${canary("cellStyle")}" xfId="1"/></cellStyles>
<dxfs count="2"><dxf><font><color rgb="FFFF0000"/></font></dxf><dxf><numFmt numFmtId="166" formatCode="0&quot; ${canary("difference")}&quot;"/></dxf></dxfs></styleSheet>`;

const strings = [
  "gpm",
  "Size",
  "Head",
  "Note",
  '</t></si><si><r><t xml:space="preserve">Rich </t></r><r><rPr><b/></rPr><t>text</t></r><rPh sb="0" eb="1"><t>reading</t></rPh>',
  canary("dropped string"),
  "Item",
  "Price",
  "Pump",
  "Valve",
  "scratch",
].map((text) => (text.startsWith("</t>") ? text.slice("</t></si><si>".length) : `<t>${text}</t>`));

const sharedStrings = `${HEAD}<sst xmlns="${MAIN}" count="20" uniqueCount="${strings.length}">${strings.map((text) => `<si>${text}</si>`).join("")}</sst>`;

const metadata = `${HEAD}<metadata xmlns="${MAIN}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;

const chart = `${HEAD}<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" xmlns:r="${R}"><c:chart><c:autoTitleDeleted val="1"/><c:plotArea><c:layout/><c:lineChart><c:grouping val="standard"/><c:ser><c:idx val="0"/><c:order val="0"/><c:tx><c:strRef><c:f>Loop!$A$1</c:f><c:strCache><c:ptCount val="1"/><c:pt idx="0"><c:v>${canary("chartCache")}</c:v></c:pt></c:strCache></c:strRef></c:tx><c:val><c:numRef><c:f>Loop!$A$2:$A$4</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val="3"/><c:pt idx="0"><c:v>40</c:v></c:pt></c:numCache></c:numRef></c:val></c:ser><c:marker val="1"/><c:axId val="1"/><c:axId val="2"/></c:lineChart><c:catAx><c:axId val="1"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="b"/><c:crossAx val="2"/></c:catAx><c:valAx><c:axId val="2"/><c:scaling><c:orientation val="minMax"/></c:scaling><c:delete val="0"/><c:axPos val="l"/><c:crossAx val="1"/></c:valAx></c:plotArea><c:plotVisOnly val="1"/></c:chart><c:externalData r:id="rId9"/></c:chartSpace>`;

const drawing = `${HEAD}<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing" xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" xmlns:r="${R}"><xdr:twoCellAnchor><xdr:from><xdr:col>6</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>1</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>12</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>12</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to><xdr:graphicFrame macro=""><xdr:nvGraphicFramePr><xdr:cNvPr id="2" name="Chart 1"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x="0" y="0"/><a:ext cx="0" cy="0"/></xdr:xfrm><a:graphic><a:graphicData uri="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:chart xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart" r:id="rId1"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor><xdr:oneCellAnchor><xdr:from><xdr:col>6</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>14</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:ext cx="95250" cy="95250"/><xdr:pic><xdr:nvPicPr><xdr:cNvPr id="3" name="Picture 2" descr="C:\\Users\\${canary("picturePath")}\\pool.png"/><xdr:cNvPicPr/></xdr:nvPicPr><xdr:blipFill><a:blip r:embed="rId2"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm><a:off x="0" y="0"/><a:ext cx="95250" cy="95250"/></a:xfrm><a:prstGeom prst="rect"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/></xdr:oneCellAnchor></xdr:wsDr>`;

const comments = `${HEAD}<comments xmlns="${MAIN}"><authors><author>${canary("commentAuthor")}</author></authors><commentList><comment ref="B2" authorId="0"><text><t>${canary("comment")}</t></text></comment></commentList></comments>`;
const vml = `<xml xmlns:v="urn:schemas-microsoft-com:vml" xmlns:o="urn:schemas-microsoft-com:office:office" xmlns:x="urn:schemas-microsoft-com:office:excel"><v:shape id="_x0000_s1025" type="#_x0000_t202" style="visibility:hidden" o:insetmode="auto"><x:ClientData ObjectType="Note"><x:Anchor>2,15,0,2,4,15,4,1</x:Anchor><x:Row>1</x:Row><x:Column>1</x:Column></x:ClientData></v:shape></xml>`;

const table = `${HEAD}<table xmlns="${MAIN}" id="1" name="Price_list" displayName="Price_list" ref="A1:B3"><autoFilter ref="A1:B3"/><tableColumns count="2"><tableColumn id="1" name="Item"/><tableColumn id="2" name="Price"/></tableColumns><tableStyleInfo name="TableStyleMedium2" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>`;

const pivotTable = `${HEAD}<pivotTableDefinition xmlns="${MAIN}" name="Prices by item" cacheId="5" dataCaption="Values" updatedVersion="6" minRefreshableVersion="3" createdVersion="6"><location ref="A3:B5" firstHeaderRow="1" firstDataRow="1" firstDataCol="1"/><pivotFields count="2"><pivotField axis="axisRow" showAll="0"><items count="2"><item x="0"/><item t="default"/></items></pivotField><pivotField dataField="1" showAll="0"/></pivotFields><rowFields count="1"><field x="0"/></rowFields><rowItems count="2"><i><x/></i><i t="grand"><x/></i></rowItems><colItems count="1"><i/></colItems><dataFields count="1"><dataField name="Sum of Price" fld="1" baseField="0" baseItem="0"/></dataFields></pivotTableDefinition>`;
const pivotCache = `${HEAD}<pivotCacheDefinition xmlns="${MAIN}" xmlns:r="${R}" r:id="rId1" refreshedBy="${canary("refreshedBy")}" refreshedDate="40000" createdVersion="6" refreshedVersion="6" recordCount="1"><cacheSource type="worksheet"><worksheetSource ref="A1:B3" sheet="Prices"/></cacheSource><cacheFields count="2"><cacheField name="Item" numFmtId="0"><sharedItems count="1"><s v="${canary("pivotItem")}"/></sharedItems></cacheField><cacheField name="Price" numFmtId="0"><sharedItems containsSemiMixedTypes="0" containsString="0" containsNumber="1" minValue="1" maxValue="2"/></cacheField></cacheFields></pivotCacheDefinition>`;
const pivotRecords = `${HEAD}<pivotCacheRecords xmlns="${MAIN}" count="1"><r><x v="0"/><n v="12"/></r><r><s v="${canary("pivotRecord")}"/><n v="1"/></r></pivotCacheRecords>`;

const externalLink = `${HEAD}<externalLink xmlns="${MAIN}"><externalBook xmlns:r="${R}" r:id="rId1"><sheetNames><sheetName val="${canary("externalSheet")}"/></sheetNames><sheetDataSet><sheetData sheetId="0"><row r="1"><cell r="A1" t="str"><v>${canary("externalValue")}</v></cell></row></sheetData></sheetDataSet></externalBook></externalLink>`;

const core = `${HEAD}<cp:coreProperties xmlns:cp="http://schemas.openxmlformats.org/package/2006/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:dcterms="http://purl.org/dc/terms/" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance"><dc:title>${canary("title")}</dc:title><dc:creator>${canary("author")}</dc:creator><cp:lastModifiedBy>${canary("lastModifiedBy")}</cp:lastModifiedBy><dcterms:created xsi:type="dcterms:W3CDTF">2024-05-06T07:08:09Z</dcterms:created></cp:coreProperties>`;
const app = `${HEAD}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"><Application>Microsoft Excel</Application><Manager>${canary("manager")}</Manager><TitlesOfParts><vt:vector size="1" baseType="lpstr"><vt:lpstr>cfg ${canary("titlesOfParts")}</vt:lpstr></vt:vector></TitlesOfParts><Company>${canary("company")}</Company></Properties>`;
const custom = `${HEAD}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/custom-properties" xmlns:vt="http://schemas.openxmlformats.org/officeDocument/2006/docPropsVTypes"><property fmtid="{D5CDD505-2E9C-101B-9397-08002B2CF9AE}" pid="2" name="Job"><vt:lpwstr>${canary("customProperty")}</vt:lpwstr></property></Properties>`;

/** Parts that nothing needs to be sound: no program reads them in these tests. */
const attached: PartTexts = {
  "docProps/thumbnail.jpeg": bytesOf(canary("thumbnail")),
  "xl/vbaProject.bin": bytesOf(canary("macros")),
  "xl/printerSettings/printerSettings1.bin": bytesOf(canary("printer")),
  "_xmlsignatures/origin.sigs": new Uint8Array(),
  "_xmlsignatures/sig1.xml": `<Signature xmlns="http://www.w3.org/2000/09/xmldsig#"><SignatureValue>${canary("signature")}</SignatureValue></Signature>`,
  "xl/persons/person.xml": `${HEAD}<personList xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><person displayName="${canary("person")}" id="{22222222-2222-2222-2222-222222222222}" userId="x" providerId="None"/></personList>`,
  "xl/threadedComments/threadedComment1.xml": `${HEAD}<ThreadedComments xmlns="http://schemas.microsoft.com/office/spreadsheetml/2018/threadedcomments"><threadedComment ref="B2" dT="2024-01-01T00:00:00.00" personId="{22222222-2222-2222-2222-222222222222}" id="{33333333-3333-3333-3333-333333333333}"><text>${canary("threadedComment")}</text></threadedComment></ThreadedComments>`,
  "xl/connections.xml": `${HEAD}<connections xmlns="${MAIN}"><connection id="1" name="q" type="1" refreshedVersion="6"><dbPr connection="${canary("connection")}" command="x"/></connection></connections>`,
  "customXml/item1.xml": `<data>${canary("customXml")}</data>`,
  "customXml/itemProps1.xml":
    '<ds:datastoreItem ds:itemID="{44444444-4444-4444-4444-444444444444}" xmlns:ds="http://schemas.openxmlformats.org/officeDocument/2006/customXml"/>',
  "xl/webextensions/taskpanes.xml": `<wetp:taskpanes xmlns:wetp="http://schemas.microsoft.com/office/webextensions/taskpanes/2010/11"><wetp:taskpane dockstate="right" visibility="0" width="350" row="1"><wetp:webextensionref xmlns:r="${R}" r:id="rId1"/></wetp:taskpane></wetp:taskpanes>`,
  "xl/webextensions/webextension1.xml": `<we:webextension xmlns:we="http://schemas.microsoft.com/office/webextensions/webextension/2010/11" id="{55555555-5555-5555-5555-555555555555}"><we:reference id="${canary("webExtension")}" version="1.0.0.0" store="x" storeType="OMEX"/></we:webextension>`,
};

const theme = `${HEAD}<a:theme xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" name="Office"><a:themeElements><a:clrScheme name="Office"><a:dk1><a:srgbClr val="000000"/></a:dk1><a:lt1><a:srgbClr val="FFFFFF"/></a:lt1><a:dk2><a:srgbClr val="44546A"/></a:dk2><a:lt2><a:srgbClr val="E7E6E6"/></a:lt2><a:accent1><a:srgbClr val="12AB34"/></a:accent1><a:accent2><a:srgbClr val="ED7D31"/></a:accent2><a:accent3><a:srgbClr val="A5A5A5"/></a:accent3><a:accent4><a:srgbClr val="FFC000"/></a:accent4><a:accent5><a:srgbClr val="5B9BD5"/></a:accent5><a:accent6><a:srgbClr val="70AD47"/></a:accent6><a:hlink><a:srgbClr val="0563C1"/></a:hlink><a:folHlink><a:srgbClr val="954F72"/></a:folHlink></a:clrScheme><a:fontScheme name="Office"><a:majorFont><a:latin typeface="Calibri Light"/><a:ea typeface=""/><a:cs typeface=""/></a:majorFont><a:minorFont><a:latin typeface="Calibri"/><a:ea typeface=""/><a:cs typeface=""/></a:minorFont></a:fontScheme><a:fmtScheme name="Office"><a:fillStyleLst><a:solidFill><a:schemeClr val="phClr"/></a:solidFill><a:solidFill><a:schemeClr val="phClr"/></a:solidFill><a:solidFill><a:schemeClr val="phClr"/></a:solidFill></a:fillStyleLst><a:lnStyleLst><a:ln><a:solidFill><a:schemeClr val="phClr"/></a:solidFill></a:ln><a:ln><a:solidFill><a:schemeClr val="phClr"/></a:solidFill></a:ln><a:ln><a:solidFill><a:schemeClr val="phClr"/></a:solidFill></a:ln></a:lnStyleLst><a:effectStyleLst><a:effectStyle><a:effectLst/></a:effectStyle><a:effectStyle><a:effectLst/></a:effectStyle><a:effectStyle><a:effectLst/></a:effectStyle></a:effectStyleLst><a:bgFillStyleLst><a:solidFill><a:schemeClr val="phClr"/></a:solidFill><a:solidFill><a:schemeClr val="phClr"/></a:solidFill><a:solidFill><a:schemeClr val="phClr"/></a:solidFill></a:bgFillStyleLst></a:fmtScheme></a:themeElements></a:theme>`;

const RELATIONS: PartTexts = {
  "_rels/.rels": rels([
    ["rId1", "officeDocument", "xl/workbook.xml"],
    ["rId2", "core-properties", "docProps/core.xml"],
    ["rId3", "extended-properties", "docProps/app.xml"],
    ["rId4", "custom-properties", "docProps/custom.xml"],
    ["rId5", "thumbnail", "docProps/thumbnail.jpeg"],
    ["rId6", "origin", "_xmlsignatures/origin.sigs"],
    ["rId7", "webextensiontaskpanes", "xl/webextensions/taskpanes.xml"],
  ]),
  "_xmlsignatures/_rels/origin.sigs.rels": rels([["rId1", "signature", "sig1.xml"]]),
  "xl/_rels/workbook.xml.rels": rels([
    ["rId1", "worksheet", "worksheets/sheet1.xml"],
    ["rId2", "worksheet", "worksheets/sheet2.xml"],
    ["rId3", "worksheet", "worksheets/sheet3.xml"],
    ["rId4", "worksheet", "worksheets/sheet4.xml"],
    ["rId5", "worksheet", "worksheets/sheet5.xml"],
    ["rId10", "styles", "styles.xml"],
    ["rId11", "theme", "theme/theme1.xml"],
    ["rId12", "sharedStrings", "sharedStrings.xml"],
    ["rId13", "sheetMetadata", "metadata.xml"],
    ["rId14", "calcChain", "calcChain.xml"],
    ["rId15", "connections", "connections.xml"],
    ["rId16", "vbaProject", "vbaProject.bin"],
    ["rId17", "person", "persons/person.xml"],
    ["rId18", "customXml", "../customXml/item1.xml"],
    ["rId20", "externalLink", "externalLinks/externalLink1.xml"],
    ["rId21", "pivotCacheDefinition", "pivotCache/pivotCacheDefinition1.xml"],
  ]),
  "xl/worksheets/_rels/sheet1.xml.rels": rels([["rId1", "table", "../tables/table1.xml"]]),
  "xl/worksheets/_rels/sheet2.xml.rels": rels([
    ["rId1", "drawing", "../drawings/drawing1.xml"],
    ["rId2", "vmlDrawing", "../drawings/vmlDrawing1.vml"],
    ["rId3", "comments", "../comments1.xml"],
    ["rId4", "threadedComment", "../threadedComments/threadedComment1.xml"],
    ["rId5", "printerSettings", "../printerSettings/printerSettings1.bin"],
    ["rId6", "hyperlink", "https://example.org/pool", true],
    ["rId7", "hyperlink", `file:///C:/Jobs/${canary("fileLink").replaceAll(" ", "%20")}.pdf`, true],
  ]),
  "xl/worksheets/_rels/sheet4.xml.rels": rels([["rId1", "pivotTable", "../pivotTables/pivotTable1.xml"]]),
  "xl/drawings/_rels/drawing1.xml.rels": rels([
    ["rId1", "chart", "../charts/chart1.xml"],
    ["rId2", "image", "../media/image1.png"],
  ]),
  "xl/charts/_rels/chart1.xml.rels": rels([
    ["rId9", "externalLinkPath", `file:///C:/${canary("chartLink").replaceAll(" ", "%20")}.xlsx`, true],
  ]),
  "xl/pivotTables/_rels/pivotTable1.xml.rels": rels([
    ["rId1", "pivotCacheDefinition", "../pivotCache/pivotCacheDefinition1.xml"],
  ]),
  "xl/pivotCache/_rels/pivotCacheDefinition1.xml.rels": rels([["rId1", "pivotCacheRecords", "pivotCacheRecords1.xml"]]),
  "xl/externalLinks/_rels/externalLink1.xml.rels": rels([
    ["rId1", "externalLinkPath", `file:///C:/${canary("externalPath").replaceAll(" ", "%20")}.xlsx`, true],
  ]),
  "customXml/_rels/item1.xml.rels": rels([["rId1", "customXmlProps", "itemProps1.xml"]]),
  "xl/webextensions/_rels/taskpanes.xml.rels": rels([["rId1", "webextension", "webextension1.xml"]]),
};

const TYPES = contentTypes(
  {
    rels: "application/vnd.openxmlformats-package.relationships+xml",
    xml: "application/xml",
    png: "image/png",
    jpeg: "image/jpeg",
    vml: "application/vnd.openxmlformats-officedocument.vmlDrawing",
    bin: "application/vnd.openxmlformats-officedocument.spreadsheetml.printerSettings",
    sigs: "application/vnd.openxmlformats-package.digital-signature-origin",
  },
  {
    "xl/workbook.xml": "application/vnd.ms-excel.sheet.macroEnabled.main+xml",
    ...Object.fromEntries([1, 2, 3, 4, 5].map((at) => [`xl/worksheets/sheet${at}.xml`, `${SHEETML}.worksheet+xml`])),
    "xl/styles.xml": `${SHEETML}.styles+xml`,
    "xl/theme/theme1.xml": "application/vnd.openxmlformats-officedocument.theme+xml",
    "xl/sharedStrings.xml": `${SHEETML}.sharedStrings+xml`,
    "xl/metadata.xml": `${SHEETML}.sheetMetadata+xml`,
    "xl/calcChain.xml": `${SHEETML}.calcChain+xml`,
    "xl/connections.xml": `${SHEETML}.connections+xml`,
    "xl/vbaProject.bin": "application/vnd.ms-office.vbaProject",
    "xl/persons/person.xml": "application/vnd.ms-excel.person+xml",
    "xl/threadedComments/threadedComment1.xml": "application/vnd.ms-excel.threadedcomments+xml",
    "xl/comments1.xml": `${SHEETML}.comments+xml`,
    "xl/tables/table1.xml": `${SHEETML}.table+xml`,
    "xl/drawings/drawing1.xml": "application/vnd.openxmlformats-officedocument.drawing+xml",
    "xl/charts/chart1.xml": `${DRAWINGML}.chart+xml`,
    "xl/pivotTables/pivotTable1.xml": `${SHEETML}.pivotTable+xml`,
    "xl/pivotCache/pivotCacheDefinition1.xml": `${SHEETML}.pivotCacheDefinition+xml`,
    "xl/pivotCache/pivotCacheRecords1.xml": `${SHEETML}.pivotCacheRecords+xml`,
    "xl/externalLinks/externalLink1.xml": `${SHEETML}.externalLink+xml`,
    "docProps/core.xml": "application/vnd.openxmlformats-package.core-properties+xml",
    "docProps/app.xml": "application/vnd.openxmlformats-officedocument.extended-properties+xml",
    "docProps/custom.xml": "application/vnd.openxmlformats-officedocument.custom-properties+xml",
    "_xmlsignatures/sig1.xml": "application/vnd.openxmlformats-package.digital-signature-xmlsignature+xml",
    "customXml/itemProps1.xml": "application/vnd.openxmlformats-officedocument.customXmlProperties+xml",
    "xl/webextensions/taskpanes.xml": "application/vnd.ms-office.webextensiontaskpanes+xml",
    "xl/webextensions/webextension1.xml": "application/vnd.ms-office.webextension+xml",
  },
);

export function fullBook(): Record<string, string | Uint8Array> {
  return {
    "[Content_Types].xml": TYPES,
    ...RELATIONS,
    "xl/workbook.xml": workbook,
    "xl/styles.xml": styles,
    "xl/theme/theme1.xml": theme,
    "xl/sharedStrings.xml": sharedStrings,
    "xl/metadata.xml": metadata,
    "xl/calcChain.xml": `${HEAD}<calcChain xmlns="${MAIN}"><c r="C2" i="2"/><c r="C3" i="2"/></calcChain>`,
    ...fullSheets(canary),
    "xl/drawings/drawing1.xml": drawing,
    "xl/drawings/vmlDrawing1.vml": vml,
    "xl/comments1.xml": comments,
    "xl/charts/chart1.xml": chart,
    "xl/media/image1.png": PNG,
    "xl/tables/table1.xml": table,
    "xl/pivotTables/pivotTable1.xml": pivotTable,
    "xl/pivotCache/pivotCacheDefinition1.xml": pivotCache,
    "xl/pivotCache/pivotCacheRecords1.xml": pivotRecords,
    "xl/externalLinks/externalLink1.xml": externalLink,
    "docProps/core.xml": core,
    "docProps/app.xml": app,
    "docProps/custom.xml": custom,
    ...attached,
  };
}
