/**
 * One run at a time, and only the newest waits. A waiting call that is overtaken never starts and answers null. The one that is
 * running ends and answers: on a slow device a drag would otherwise show nothing until the hand stops.
 */
export const latestOnly = <A, R>(run: (argument: A) => Promise<R>): ((argument: A) => Promise<R | null>) => {
  interface Waiting {
    readonly argument: A;
    readonly settle: (result: R | null | Promise<R>) => void;
  }
  let running = false;
  let waiting: Waiting | null = null;

  const start = (next: Waiting): void => {
    running = true;
    const result = Promise.resolve().then(() => run(next.argument));
    next.settle(result);
    const goOn = (): void => {
      running = false;
      const after = waiting;
      waiting = null;
      if (after !== null) start(after);
    };
    result.then(goOn, goOn);
  };

  return (argument) =>
    new Promise((settle) => {
      const call: Waiting = { argument, settle };
      if (!running) return start(call);
      waiting?.settle(null);
      waiting = call;
    });
};
