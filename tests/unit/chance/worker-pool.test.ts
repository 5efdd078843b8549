import {
  type Executor,
  type MemberOutcome,
  oneThread,
  outcomeOf,
  type PortEvents,
  workerPool,
} from "rootledger/chance";
import { describe, expect, test } from "vitest";

const run = (member: number): Float64Array => {
  if (member % 7 === 3) throw new RangeError(`no ${member}`);
  return Float64Array.of(member * member);
};

async function gathered(executor: Executor, to: number, cancel = { aborted: false }): Promise<MemberOutcome[]> {
  const outcomes: MemberOutcome[] = [];
  await executor({ from: 0, to, cancel, deliver: (outcome) => outcomes.push(outcome) });
  return outcomes.sort((a, b) => a.member - b.member);
}

/** Ports that answer later, one member a turn; `dies` says before which member the port with that number ends. */
function ports(dies: (port: number, member: number) => boolean = () => false) {
  let opened = 0;
  let closed = 0;
  const open = ({ outcome, ended }: PortEvents) => {
    const port = opened++;
    const queue: number[] = [];
    let alive = true;
    const turn = () => {
      const member = queue.shift();
      if (!alive || member === undefined) return;
      if (dies(port, member)) {
        alive = false;
        ended("killed");
        return;
      }
      outcome(outcomeOf(run, member));
      setTimeout(turn, port);
    };
    return {
      send: (members: readonly number[]) => {
        const idle = queue.length === 0;
        queue.push(...members);
        if (idle) setTimeout(turn, 0);
      },
      close: () => {
        alive = false;
        closed++;
      },
    };
  };
  return { open, opened: () => opened, closed: () => closed };
}

describe("a pool of workers", () => {
  test("gives what one thread gives, for 1, 2, 4 and more workers than members", async () => {
    const alone = await gathered(oneThread(run), 30);
    expect(alone).toHaveLength(30);
    expect(alone[3]).toEqual({ member: 3, failure: "no 3" });
    for (const workers of [1, 2, 4, 64]) {
      const { open, opened, closed } = ports();
      expect(await gathered(workerPool(workers, open), 30)).toEqual(alone);
      expect(closed()).toBe(opened());
    }
  });

  test("gives a killed worker's members to others: nothing is lost", async () => {
    const alone = await gathered(oneThread(run), 30);
    const { open, opened } = ports((port, member) => port < 2 && member > 8);
    expect(await gathered(workerPool(2, open), 30)).toEqual(alone);
    expect(opened()).toBe(4);
  });

  test("reports a member on which two workers ended, and finishes the others", async () => {
    const alone = await gathered(oneThread(run), 30);
    const { open } = ports((_, member) => member === 12);
    const outcomes = await gathered(workerPool(2, open), 30);
    expect(outcomes[12]).toEqual({ member: 12, failure: "its worker ended 2 times: killed" });
    expect(outcomes.filter(({ member }) => member !== 12)).toEqual(alone.filter(({ member }) => member !== 12));
  });

  test("says so when no worker ever answers", async () => {
    const { open } = ports(() => true);
    await expect(gathered(workerPool(2, open), 30)).rejects.toThrow(/before any had answered: killed/);
  });

  test("stops when cancelled, with what it has", async () => {
    const cancel = { aborted: false };
    const seen: number[] = [];
    const { open } = ports();
    await workerPool(
      2,
      open,
    )({
      from: 0,
      to: 1000,
      cancel,
      deliver: ({ member }) => {
        seen.push(member);
        if (seen.length === 10) cancel.aborted = true;
      },
    });
    expect(seen).toHaveLength(10);
  });

  test("has nothing to do for no members, and refuses half a worker", async () => {
    expect(await gathered(workerPool(2, ports().open), 0)).toEqual([]);
    expect(() => workerPool(0.5, ports().open)).toThrow(RangeError);
  });
});
