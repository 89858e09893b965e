/**
 * Lower triangular root of a covariance, row by row (Cholesky 1910). A state that is known for certain, or that is a
 * mixture of earlier ones, has no pivot of its own: its column stays zero, so that a semidefinite matrix has a root too.
 */
export function triangularRoot(covariance: Float64Array, size: number): Float64Array {
  const root = new Float64Array(size * size);
  const at = (row: number, column: number) => root[row * size + column] ?? 0;
  for (let j = 0; j < size; j++) {
    const own = covariance[j * size + j] ?? 0;
    let pivot = own;
    for (let k = 0; k < j; k++) pivot -= at(j, k) ** 2;
    if (!(pivot > 1e-12 * Math.max(own, 1e-12))) continue;
    const diagonal = Math.sqrt(pivot);
    root[j * size + j] = diagonal;
    for (let i = j + 1; i < size; i++) {
      let sum = covariance[i * size + j] ?? 0;
      for (let k = 0; k < j; k++) sum -= at(i, k) * at(j, k);
      root[i * size + j] = sum / diagonal;
    }
  }
  return root;
}
