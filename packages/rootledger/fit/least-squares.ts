/** Coefficients that make rows x coefficients come closest to the values, by the normal equations. */
export function leastSquares(rows: readonly (readonly number[])[], values: readonly number[]): number[] {
  const size = rows[0].length;
  const matrix: number[][] = [];
  for (let i = 0; i < size; i++) {
    const line: number[] = [];
    for (let j = 0; j < size; j++) line.push(rows.reduce((sum, row) => sum + row[i] * row[j], 0));
    line.push(rows.reduce((sum, row, k) => sum + row[i] * values[k], 0));
    matrix.push(line);
  }
  for (let i = 0; i < size; i++) {
    let pivot = i;
    for (let k = i + 1; k < size; k++) if (Math.abs(matrix[k][i]) > Math.abs(matrix[pivot][i])) pivot = k;
    [matrix[i], matrix[pivot]] = [matrix[pivot], matrix[i]];
    for (let k = 0; k < size; k++) {
      if (k === i) continue;
      const factor = matrix[k][i] / matrix[i][i];
      for (let j = i; j <= size; j++) matrix[k][j] -= factor * matrix[i][j];
    }
  }
  return matrix.map((line, i) => line[size] / line[i]);
}
