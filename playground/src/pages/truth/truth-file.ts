/** A published check as the build ran it. */
export interface TruthCheck {
  readonly id: string;
  readonly topic: string;
  readonly title: string;
  readonly source: string;
  readonly printed: Readonly<Record<string, unknown>>;
  readonly ours: Readonly<Record<string, unknown>>;
  readonly tolerance: Readonly<Record<string, unknown>>;
  readonly verified: string;
  readonly pass: boolean;
}

/** The file of checks beside the page. @throws Error if it cannot be fetched or is not one */
export async function truthChecks(): Promise<readonly TruthCheck[]> {
  const response = await fetch("./truth.json");
  if (!response.ok) throw new Error(`truth.json: ${response.status}`);
  const file: { checks?: readonly TruthCheck[] } = await response.json();
  if (!Array.isArray(file.checks)) throw new Error("truth.json has no checks");
  return file.checks;
}
