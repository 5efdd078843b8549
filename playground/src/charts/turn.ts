const door = new MessageChannel();
const waiting: (() => void)[] = [];

door.port1.onmessage = () => {
  waiting.shift()?.();
  if (waiting.length > 0) door.port2.postMessage(null);
};

/** Resolves in a task of its own, after those who asked before: long drawing is cut so that the page stays answerable. */
export function nextTurn(): Promise<void> {
  return new Promise((resolve) => {
    waiting.push(resolve);
    if (waiting.length === 1) door.port2.postMessage(null);
  });
}
