export { refusal, isPackageRefusal, type PackageRefusal, type RefusalCode } from "./refusal";
export type { PackageWork } from "./work";
export { openParts as openPackage, packageBytes, type Package } from "./parts/package";
export { readBook } from "./book/read";
export type * from "./book/facts";
export type * from "./sheet/facts";
export { cellContext, readSheet, type CellContext } from "./sheet/read";
export { patchCells, type Patched } from "./patch/patch";
export type * from "./patch/changes";
