/**
 * Lowest point of a function near a start, by the simplex of Nelder & Mead (1965), Computer J. 7:308-313, with their
 * coefficients (reflect 1, expand 2, contract 1/2, shrink 1/2), restarted from the best point until a restart gains nothing.
 */
export function lowestNear(
  f: (x: readonly number[]) => number,
  start: readonly number[],
  spread: number,
): { readonly at: readonly number[]; readonly value: number } {
  let best = { at: [...start], value: f(start) };
  for (let restart = 0; restart < 20; restart++) {
    const found = simplex(f, best.at, spread);
    const gain = best.value - found.value;
    if (gain > 0) best = found;
    if (gain < 1e-13 * (1 + best.value)) break;
  }
  return best;
}

interface Vertex {
  readonly at: number[];
  readonly value: number;
}

function simplex(f: (x: readonly number[]) => number, start: readonly number[], spread: number): Vertex {
  const size = start.length;
  const vertex = (at: number[]): Vertex => ({ at, value: f(at) });
  const vertices = [vertex([...start])];
  for (let i = 0; i < size; i++) vertices.push(vertex(start.map((x, j) => (i === j ? x + spread : x))));
  for (let round = 0; round < 4000; round++) {
    vertices.sort((a, b) => a.value - b.value);
    const worst = vertices[size];
    if (worst.value - vertices[0].value < 1e-15) break;
    const centre = start.map((_, j) => vertices.slice(0, size).reduce((sum, v) => sum + v.at[j], 0) / size);
    const along = (reach: number): Vertex => vertex(centre.map((c, j) => c + reach * (worst.at[j] - c)));
    const reflected = along(-1);
    if (reflected.value < vertices[0].value) {
      const expanded = along(-2);
      vertices[size] = expanded.value < reflected.value ? expanded : reflected;
      continue;
    }
    if (reflected.value < vertices[size - 1].value) {
      vertices[size] = reflected;
      continue;
    }
    const contracted = along(reflected.value < worst.value ? -0.5 : 0.5);
    if (contracted.value < Math.min(reflected.value, worst.value)) {
      vertices[size] = contracted;
      continue;
    }
    for (let i = 1; i <= size; i++) {
      vertices[i] = vertex(vertices[i].at.map((x, j) => (x + vertices[0].at[j]) / 2));
    }
  }
  vertices.sort((a, b) => a.value - b.value);
  return vertices[0];
}
