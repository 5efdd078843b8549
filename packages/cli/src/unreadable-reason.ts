const reasons: Readonly<Record<string, string>> = {
  ENOENT: "no such file",
  EISDIR: "a folder",
  EACCES: "no right to read it",
};

/** Why a file could not be read, in words where the reason is a common one. */
export function unreadableReason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
  return reasons[code] ?? code;
}
