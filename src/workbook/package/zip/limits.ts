/** What a file may hold at most. Sizes are counted while a part is unpacked: a header may say anything. */
import { refusal } from "../refusal";

const MB = 1_048_576;

export interface PackageLimits {
  readonly packedBytes: number;
  readonly unpackedBytes: number;
  readonly parts: number;
  /** Unpacked over packed bytes of one part, checked above `ratioFrom` unpacked bytes. */
  readonly ratio: number;
  readonly ratioFrom: number;
}

export const PACKAGE_LIMITS: PackageLimits = {
  packedBytes: 50 * MB,
  unpackedBytes: 400 * MB,
  parts: 10_000,
  ratio: 200,
  ratioFrom: MB,
};

const megabytes = (bytes: number): string => (bytes / MB).toFixed(1).replace(/\.0$/, "");

export function checkPacked(bytes: number, { packedBytes }: PackageLimits): void {
  if (bytes > packedBytes)
    throw refusal(
      "too-large",
      `This file is too large: ${megabytes(bytes)} MB, at most ${megabytes(packedBytes)} MB can be opened.`,
    );
}

export function checkParts(parts: number, limits: PackageLimits): void {
  if (parts > limits.parts)
    throw refusal("too-large", `This file holds ${parts} parts, at most ${limits.parts} can be opened.`);
}

/** @param part unpacked bytes of the part so far, @param total of all parts so far */
export function checkUnpacked(part: number, packed: number, total: number, limits: PackageLimits): void {
  if (total > limits.unpackedBytes)
    throw refusal(
      "too-large",
      `This file is too large once unpacked: more than the ${megabytes(limits.unpackedBytes)} MB that can be opened.`,
    );
  if (part > limits.ratioFrom && part > limits.ratio * packed)
    throw refusal(
      "too-large",
      `A part of this file unpacks to more than ${limits.ratio} times its size, which no ordinary workbook does.`,
    );
}
