// Exercises are made beside the page, in a worker out of the page's own memory, since a page from a disk may not start one from a
// file: the next is made while the last is read. Where there are no workers, the page does it between frames.

function serveMaker() {
  let ask;
  self.onmessage = async ({ data }) => {
    try {
      if (data.bytes) {
        ask = await openEngine(data.bytes, data.course, "course");
        self.postMessage({ ready: true });
      } else {
        self.postMessage({ answer: ask(data.what, data.question) });
      }
    } catch (error) {
      self.postMessage({ why: String(error.message ?? error) });
    }
  };
}

class Maker {
  // Opens the engine with the course; fails where it cannot be opened at all.
  static async open(bytes, course) {
    const maker = new Maker();
    try {
      const source = `"use strict";\n${openEngine}\n(${serveMaker})();\n`;
      maker.worker = new Worker(URL.createObjectURL(new Blob([source], { type: "text/javascript" })));
      await maker.post({ bytes, course });
    } catch {
      maker.worker?.terminate();
      maker.worker = null;
      maker.here = await openEngine(bytes, course, "course");
    }
    return maker;
  }

  constructor() {
    this.last = Promise.resolve();
  }

  post(message) {
    return new Promise((fulfil, refuse) => {
      this.worker.onmessage = ({ data }) => (data.why === undefined ? fulfil(data.answer) : refuse(new Error(data.why)));
      this.worker.onerror = () => refuse(new Error(message("practice-worker-failed")));
      this.worker.postMessage(message);
    });
  }

  // Questions are answered in the order in which they are asked.
  ask(what, question) {
    const work = () => (this.worker ? this.post({ what, question }) : new Promise((fulfil) => setTimeout(fulfil, 4)).then(() => this.here(what, question)));
    const answer = this.last.then(work, work);
    this.last = answer.catch(() => {});
    return answer;
  }
}
