const reasons: Readonly<Record<string, string>> = {
  ENOENT: "no such file",
  EISDIR: "a folder",
  ENOTDIR: "not a folder",
  EACCES: "no right to it",
  EROFS: "a disk that cannot be written",
  ENOSPC: "a full disk",
  EDQUOT: "a full disk",
  EFBIG: "a file grown beyond what is allowed",
};

/** Why a file could not be read or written, in words where the reason is a common one. */
export function unreadableReason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : String(error);
  return reasons[code] ?? code;
}
