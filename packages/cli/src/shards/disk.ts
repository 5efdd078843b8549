/** A file being written; nothing stands under its name before `keep`. */
export interface NewFile {
  readonly write: (piece: string | Uint8Array) => Promise<void>;
  /** Forces what was written to the disk and gives the file its name; resolves to what it holds. */
  readonly keep: () => Promise<Digest>;
  /** Removes what was written. */
  readonly drop: () => Promise<void>;
}

/** Length and SHA-256 of a file. */
export interface Digest {
  readonly bytes: number;
  readonly sha256: string;
}

/** What shards do to a disk; every failure is a `DiskFault`. */
export interface Disk {
  readonly makeFolder: (folder: string) => Promise<void>;
  /** Names in a folder, sorted. */
  readonly list: (folder: string) => Promise<readonly string[]>;
  readonly read: (path: string) => Promise<string>;
  /** Lines of a text, without their ends. */
  readonly lines: (path: string) => AsyncIterable<string>;
  readonly digest: (path: string) => Promise<Digest>;
  readonly create: (path: string) => Promise<NewFile>;
  /** Removes a file or a folder with all that it holds; one that is not there is no failure. */
  readonly remove: (path: string) => Promise<void>;
}

/** A disk that did not do what was asked: where, and why in words. */
export class DiskFault extends Error {
  readonly path: string;
  readonly reason: string;
  readonly asked: "read" | "write";

  constructor(path: string, reason: string, asked: "read" | "write") {
    super(`${path}: ${reason}`);
    this.name = "DiskFault";
    this.path = path;
    this.reason = reason;
    this.asked = asked;
  }
}
