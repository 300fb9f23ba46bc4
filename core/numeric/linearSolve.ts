/**
 * Solves a small dense system A x = b by Gaussian elimination with partial pivoting, overwriting both; the answer is in b.
 *
 * @param a rows of the matrix, one after the other
 * @param b right-hand side
 * @returns false where the matrix is singular
 */
export function linearSolve(a: Float64Array, b: Float64Array): boolean {
  const n = b.length;
  for (let k = 0; k < n; k++) {
    const pivot = pivotRow(a, n, k);
    if (a[pivot * n + k] === 0) return false;
    if (pivot !== k) swapRows(a, b, n, k, pivot);
    for (let i = k + 1; i < n; i++) {
      const f = a[i * n + k]! / a[k * n + k]!;
      for (let j = k; j < n; j++) a[i * n + j]! -= f * a[k * n + j]!;
      b[i]! -= f * b[k]!;
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    let sum = b[i]!;
    for (let j = i + 1; j < n; j++) sum -= a[i * n + j]! * b[j]!;
    b[i] = sum / a[i * n + i]!;
  }
  return true;
}

function pivotRow(a: Float64Array, n: number, k: number): number {
  let best = k;
  for (let i = k + 1; i < n; i++) if (Math.abs(a[i * n + k]!) > Math.abs(a[best * n + k]!)) best = i;
  return best;
}

function swapRows(a: Float64Array, b: Float64Array, n: number, k: number, pivot: number): void {
  for (let j = 0; j < n; j++) {
    const held = a[k * n + j]!;
    a[k * n + j] = a[pivot * n + j]!;
    a[pivot * n + j] = held;
  }
  const held = b[k]!;
  b[k] = b[pivot]!;
  b[pivot] = held;
}
