import type { Executor, MemberOutcome, Work } from "./executor.js";

/** One worker, however it is made. Members are run in the order sent, each answered by one outcome. */
export interface MemberPort {
  /** Asks for members, in this order. */
  readonly send: (members: readonly number[]) => void;
  /** Ends the worker. */
  readonly close: () => void;
}

/** What a worker reports back. `ended`: it is gone, with what it had not delivered. */
export interface PortEvents {
  /** A member is done. */
  readonly outcome: (outcome: MemberOutcome) => void;
  /** The worker is gone. */
  readonly ended: (reason: string) => void;
}

/** Opens a worker that knows the plan. */
export type OpenPort = (events: PortEvents) => MemberPort;

/** Members sent at a time: enough to hide the way there and back. Fewer where workers would not end together. Our choice. */
const mostAtATime = 4;
/** A member on which this many workers have ended is reported as failed. */
const mostEndings = 2;
/** Workers that may end before any has answered; with more, none of them can work. */
const mostMuteEndings = 3;

/**
 * Shares members out among workers. A worker that ends before its time loses nothing: what it had not delivered goes to the
 * others and a new one takes its place; a member on which two workers ended is reported as failed. The answer is the same
 * for any number of workers, since each member is a function of its number.
 *
 * @throws RangeError unless workers is a whole number above 0; the executor rejects if workers end before any has answered.
 * @example workerPool(2, openPort)
 */
export function workerPool(workers: number, open: OpenPort): Executor {
  if (!(Number.isInteger(workers) && workers > 0)) {
    throw new RangeError(`workerPool requires a whole number of workers above 0: got ${workers}`);
  }
  return (work) => new Promise((resolve, reject) => runPool(workers, open, work, resolve, reject));
}

interface Seat {
  port: MemberPort;
  readonly outstanding: number[];
}

function runPool(
  workers: number,
  open: OpenPort,
  { from, to, deliver, cancel }: Work,
  resolve: () => void,
  reject: (reason: Error) => void,
): void {
  const returned: number[] = [];
  const endings = new Map<number, number>();
  const seats = new Set<Seat>();
  let next = from;
  let mute = 0;
  let answered = false;
  let over = false;
  const chunk = Math.max(1, Math.min(mostAtATime, Math.floor((to - from) / (2 * workers))));

  const finish = (settle: () => void): void => {
    if (over) return;
    over = true;
    for (const seat of seats) seat.port.close();
    settle();
  };
  const take = (): number[] => {
    const members = returned.splice(0, chunk);
    while (members.length < chunk && next < to) members.push(next++);
    return members;
  };
  const feed = (seat: Seat): void => {
    if (over) return;
    if (cancel.aborted) {
      finish(resolve);
      return;
    }
    if (seat.outstanding.length <= chunk / 2) {
      const members = take();
      if (members.length > 0) {
        seat.outstanding.push(...members);
        seat.port.send(members);
      }
    }
    if (next >= to && returned.length === 0 && [...seats].every(({ outstanding }) => outstanding.length === 0))
      finish(resolve);
  };
  const seatOne = (): void => {
    const seat: Seat = { port: { send: () => undefined, close: () => undefined }, outstanding: [] };
    seat.port = open({
      outcome: (outcome) => {
        const place = seat.outstanding.indexOf(outcome.member);
        if (over || place < 0) return;
        seat.outstanding.splice(place, 1);
        answered = true;
        deliver(outcome);
        feed(seat);
      },
      ended: (reason) => {
        if (over || !seats.delete(seat)) return;
        lost(seat.outstanding, reason);
        if (!answered && ++mute > mostMuteEndings) {
          finish(() => reject(new Error(`${mute} workers ended before any had answered: ${reason}`)));
          return;
        }
        seatOne();
        for (const other of seats) feed(other);
      },
    });
    seats.add(seat);
    feed(seat);
  };
  const lost = (members: number[], reason: string): void => {
    const [running] = members;
    if (running === undefined) return;
    const times = (endings.get(running) ?? 0) + 1;
    endings.set(running, times);
    if (times < mostEndings) {
      returned.push(...members);
      return;
    }
    returned.push(...members.slice(1));
    deliver({ member: running, failure: `its worker ended ${times} times: ${reason}` });
  };
  const useful = Math.min(workers, Math.ceil((to - from) / chunk));
  if (useful <= 0) resolve();
  for (let i = 0; i < useful && !over; i++) seatOne();
}
