/**
 * Solves A x = b for a symmetric, positive definite A by Cholesky's method, overwriting both; the answer is in b. What lies
 * left of a row's first entry stays zero and is skipped, so a matrix whose rows refer to near neighbours costs little.
 *
 * @param a rows of the matrix, one after the other; only the lower triangle is read
 * @param first column of each row's first entry
 * @returns false if the matrix is not positive definite
 */
export function choleskySolve(a: Float64Array, b: Float64Array, first: Int32Array): boolean {
  const n = b.length;
  for (let i = 0; i < n; i++) {
    for (let j = first[i]!; j <= i; j++) {
      let sum = a[i * n + j]!;
      for (let k = Math.max(first[i]!, first[j]!); k < j; k++) sum -= a[i * n + k]! * a[j * n + k]!;
      if (j < i) a[i * n + j] = sum / a[j * n + j]!;
      else if (sum > 0) a[i * n + i] = Math.sqrt(sum);
      else return false;
    }
    let sum = b[i]!;
    for (let k = first[i]!; k < i; k++) sum -= a[i * n + k]! * b[k]!;
    b[i] = sum / a[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i--) {
    b[i] = b[i]! / a[i * n + i]!;
    for (let k = first[i]!; k < i; k++) b[k]! -= a[i * n + k]! * b[i]!;
  }
  return true;
}
