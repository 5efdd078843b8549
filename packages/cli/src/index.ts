export type { Io } from "./io.js";
export { main } from "./run.js";
export { type Disk, DiskFault, type NewFile } from "./shards/disk.js";
export { nodeDisk } from "./shards/node-disk.js";
export { type CheckResult, evaluatorOf, judge } from "./truth/judge.js";
export { type NotApplicable, type PublishedCheck, parseChecks, parseNotApplicable } from "./truth/published-check.js";
export { notApplicableFile, publishedFiles } from "./truth/read-published.js";
