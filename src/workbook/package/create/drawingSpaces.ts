import { RELATIONS, STRICT_RELATIONS } from "../parts/relations";

/** The vocabularies of drawings, in both editions of the format. */
export interface DrawingSpaces {
  readonly relations: string;
  readonly main: string;
  readonly chart: string;
  readonly sheet: string;
}

const SPACES: DrawingSpaces = {
  relations: RELATIONS,
  main: "http://schemas.openxmlformats.org/drawingml/2006/main",
  chart: "http://schemas.openxmlformats.org/drawingml/2006/chart",
  sheet: "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
};

const STRICT_SPACES: DrawingSpaces = {
  relations: STRICT_RELATIONS,
  main: "http://purl.oclc.org/ooxml/drawingml/main",
  chart: "http://purl.oclc.org/ooxml/drawingml/chart",
  sheet: "http://purl.oclc.org/ooxml/drawingml/spreadsheetDrawing",
};

export const drawingSpaces = (strict: boolean): DrawingSpaces => (strict ? STRICT_SPACES : SPACES);
