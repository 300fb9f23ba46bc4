/** The custom-functions metadata that Excel reads (functions.json), as far as a host needs it. */

export interface FunctionParameter {
  readonly name: string;
  readonly description?: string;
  readonly type?: string;
  readonly dimensionality?: string;
  readonly optional?: boolean;
  readonly repeating?: boolean;
  readonly customEnumId?: string;
}

export interface FunctionEntry {
  readonly id: string;
  readonly name: string;
  readonly description?: string;
  readonly helpUrl?: string;
  readonly parameters: readonly FunctionParameter[];
}

export interface FunctionsMetadata {
  readonly functions: readonly FunctionEntry[];
}

export const isMatrixParameter = (parameter: FunctionParameter): boolean => parameter.dimensionality === "matrix";

/** How a function is written in a cell: `WARMBACK.PIPE.HEADLOSS`. */
export const cellName = (namespace: string, id: string): string => `${namespace}.${id}`.toUpperCase();
