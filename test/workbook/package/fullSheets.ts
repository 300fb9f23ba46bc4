/** The sheets of the full workbook. Loop calculates; Prices is a table; cfg is very hidden; Pivot sums up; Other book links. */
import { HEAD, MAIN, R } from "./zipParts";

const OPEN = `${HEAD}<worksheet xmlns="${MAIN}" xmlns:r="${R}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main" xmlns:xr="http://schemas.microsoft.com/office/spreadsheetml/2014/revision" xmlns:mc="http://schemas.openxmlformats.org/markup-compatibility/2006" mc:Ignorable="xr" xr:uid="{66666666-6666-6666-6666-666666666666}">`;

export function fullSheets(canary: (key: string) => string): Record<string, string> {
  const loop = `${OPEN}<sheetPr codeName="${canary("sheetCode")}"><tabColor rgb="FF00B0F0"/><outlinePr summaryBelow="0"/></sheetPr><dimension ref="A1:H24"/>
<sheetViews><sheetView showGridLines="0" tabSelected="1" zoomScale="85" workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>
<sheetFormatPr defaultRowHeight="15" outlineLevelRow="1"/><cols><col min="1" max="1" width="18" customWidth="1"/><col min="8" max="8" width="9" hidden="1" customWidth="1"/></cols>
<sheetData><row r="1" spans="1:8" ht="22" customHeight="1"><c r="A1" s="2" t="s"><v>0</v></c><c r="B1" s="2" t="s"><v>1</v></c><c r="C1" t="s"><v>2</v></c><c r="D1" t="s"><v>3</v></c><c r="E1" t="s"><v>4</v></c></row>
<row r="2"><c r="A2" s="1"><v>40</v></c><c r="B2"><v>240</v></c><c r="C2"><f t="shared" ref="C2:C4" si="0">A2*2+$B$2</f><v>320</v></c><c r="D2"><f>Gpm*15</f><v>60</v></c><c r="E2"><f>SUM(A2:A4)</f><v>150</v></c><c r="F2"><f>Flow/2</f><v>120</v></c><c r="H2" t="s"><v>10</v></c></row>
<row r="3"><c r="A3" s="1"><v>50</v></c><c r="C3"><f t="shared" si="0"/><v>340</v></c><c r="D3"><f>cfg!A1*2</f><v>14</v></c><c r="E3"><f>Secret+1</f><v>8</v></c><c r="F3"><f>SUM(PriceList)</f><v>20</v></c></row>
<row r="4"><c r="A4" s="1"><v>60</v></c><c r="C4"><f t="shared" si="0"/><v>360</v></c><c r="D4"><f>A4*1</f><v>60</v></c><c r="E4"><f>INDIRECT("A"&amp;2)</f><v>40</v></c><c r="F4" t="str"><f>A4&amp;" gpm"</f><v>60 gpm</v></c></row>
<row r="6"><c r="A6" cm="1"><f t="array" ref="A6:A8">A2:A4*2</f><v>80</v></c></row><row r="7"><c r="A7"><v>100</v></c></row><row r="8"><c r="A8"><v>120</v></c></row>
<row r="10" outlineLevel="1"><c r="A10"><f>[1]Sheet1!A1</f><v>33</v></c><c r="B10" t="b"><v>1</v></c><c r="C10" t="e"><v>#N/A</v></c></row>
<row r="24" hidden="1"><c r="A24" t="inlineStr"><is><t>${canary("hiddenRow")}</t></is></c></row></sheetData>
<sheetProtection sheet="1" objects="1" scenarios="1"/><autoFilter ref="A1:D4"/>
<scenarios><scenario name="${canary("scenario")}" locked="1" count="1" user="${canary("scenarioUser")}"><inputCells r="A2" val="1"/></scenario></scenarios>
<mergeCells count="1"><mergeCell ref="A20:B20"/></mergeCells>
<conditionalFormatting sqref="A2:A4"><cfRule type="cellIs" dxfId="0" priority="1" operator="greaterThan"><formula>55</formula></cfRule></conditionalFormatting>
<conditionalFormatting sqref="B2"><cfRule type="expression" dxfId="0" priority="2"><formula>B2&gt;SUM($A$2:$A$4)</formula></cfRule></conditionalFormatting>
<dataValidations count="1"><dataValidation type="list" allowBlank="1" showInputMessage="1" sqref="B3"><formula1>Prices!$A$2:$A$3</formula1></dataValidation></dataValidations>
<hyperlinks><hyperlink ref="E1" r:id="rId6"/><hyperlink ref="D1" r:id="rId7"/><hyperlink ref="C1" location="cfg!A1" display="settings"/></hyperlinks>
<printOptions horizontalCentered="1"/><pageMargins left="0.4" right="0.4" top="0.9" bottom="0.9" header="0.2" footer="0.2"/><pageSetup paperSize="9" scale="82" orientation="landscape" r:id="rId5"/>
<headerFooter><oddHeader>&amp;CFernhill Hall</oddHeader><oddFooter>&amp;P of &amp;N</oddFooter></headerFooter>
<drawing r:id="rId1"/><legacyDrawing r:id="rId2"/>
<extLst><ext uri="{05C60535-1F16-4fd2-B633-F4F36F0B64E0}"><x14:sparklineGroups xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"><x14:sparklineGroup><x14:sparklines><x14:sparkline><xm:f>Loop!A2:A4</xm:f><xm:sqref>F1</xm:sqref></x14:sparkline></x14:sparklines></x14:sparklineGroup></x14:sparklineGroups></ext></extLst></worksheet>`;
  const prices = `${OPEN}<sheetData><row r="1"><c r="A1" t="s"><v>6</v></c><c r="B1" t="s"><v>7</v></c></row><row r="2"><c r="A2" t="s"><v>8</v></c><c r="B2"><v>12</v></c></row><row r="3"><c r="A3" t="s"><v>9</v></c><c r="B3"><v>8</v></c></row></sheetData><tableParts count="1"><tablePart r:id="rId1"/></tableParts></worksheet>`;
  const cfg = `${OPEN}<sheetData><row r="1"><c r="A1"><v>7</v></c><c r="B1" t="s"><v>5</v></c><c r="C1" s="3"><v>1</v></c></row></sheetData><conditionalFormatting sqref="A1"><cfRule type="cellIs" dxfId="1" priority="1" operator="equal"><formula>"${canary("droppedRule")}"</formula></cfRule></conditionalFormatting></worksheet>`;
  const pivot = `${OPEN}<sheetData><row r="3"><c r="A3" t="inlineStr"><is><t>Row Labels</t></is></c><c r="B3" t="inlineStr"><is><t>Sum of Price</t></is></c></row><row r="4"><c r="A4" t="s"><v>8</v></c><c r="B4"><v>12</v></c></row><row r="5"><c r="A5" t="inlineStr"><is><t>Grand Total</t></is></c><c r="B5"><v>20</v></c></row></sheetData></worksheet>`;
  const other = `${OPEN}<sheetData><row r="1"><c r="A1"><f>[1]Sheet1!A1*2</f><v>66</v></c><c r="B1" t="inlineStr"><is><t>${canary("droppedInline")}</t></is></c></row></sheetData></worksheet>`;
  return {
    "xl/worksheets/sheet1.xml": prices,
    "xl/worksheets/sheet2.xml": loop,
    "xl/worksheets/sheet3.xml": cfg,
    "xl/worksheets/sheet4.xml": pivot,
    "xl/worksheets/sheet5.xml": other,
  };
}
