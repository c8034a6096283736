// Long work beside the page: several engines in workers, made out of the page's own memory, since a page from a disk may not start
// one from a file. Where there are no workers, the page's own engine does the work piece by piece between frames.

function serveQuestions() {
  let ask;
  self.onmessage = async ({ data }) => {
    try {
      if (data.bytes) {
        ask = await openEngine(data.bytes, data.shelf);
        self.postMessage({ ready: true });
      } else {
        self.postMessage({ answer: ask(data.what, data.question) });
      }
    } catch (error) {
      self.postMessage({ why: String(error.message ?? error), field: error.field });
    }
  };
}

class Pool {
  // `here` asks the page's own engine.
  constructor(bytes, shelf, here) {
    this.here = here;
    this.waiting = [];
    this.ready = [];
    const size = Math.min(4, Math.max(2, navigator.hardwareConcurrency ?? 2));
    this.failed = false;
    try {
      const source = `"use strict";\n${openEngine}\n(${serveQuestions})();\n`;
      const address = URL.createObjectURL(new Blob([source], { type: "text/javascript" }));
      for (let i = 0; i < size; i += 1) this.start(new Worker(address), bytes, shelf);
    } catch {
      this.failed = true;
    }
  }

  start(worker, bytes, shelf) {
    worker.job = null;
    worker.onmessage = ({ data }) => {
      const { job } = worker;
      worker.job = null;
      if (data.ready) this.ready.push(worker);
      else if (!job) this.failed = true;
      else if (data.why !== undefined) job.refuse(Object.assign(new Error(data.why), { field: data.field }));
      else job.fulfil(data.answer);
      this.next();
    };
    worker.onerror = () => {
      this.failed = true;
      this.ready = this.ready.filter((other) => other !== worker);
      worker.job?.refuse(new Error(message("bench-worker-failed")));
      worker.job = null;
      this.next();
    };
    worker.postMessage({ bytes, shelf });
  }

  // Asks; questions wait their turn.
  ask(what, question) {
    return new Promise((fulfil, refuse) => {
      this.waiting.push({ what, question, fulfil, refuse });
      this.next();
    });
  }

  // Forgets every question that no worker has begun.
  clear() {
    for (const job of this.waiting.splice(0)) job.refuse(new Superseded());
  }

  next() {
    while (this.waiting.length > 0) {
      const worker = this.ready.find(({ job }) => job === null);
      if (!worker) break;
      const job = this.waiting.shift();
      worker.job = job;
      worker.postMessage({ what: job.what, question: job.question });
    }
    if (this.failed && this.ready.length === 0 && this.waiting.length > 0 && !this.slicing) {
      this.slicing = setTimeout(() => {
        this.slicing = null;
        const job = this.waiting.shift();
        try {
          job?.fulfil(this.here(job.what, job.question));
        } catch (error) {
          job.refuse(error);
        }
        this.next();
      }, 4);
    }
  }
}

// A question that was overtaken by another.
class Superseded extends Error {}
