/**
 * The audio thread of the page: plays blocks in order and tells how far it has come. It allocates
 * nothing while it plays but the messages, twenty a second.
 */
class Player extends AudioWorkletProcessor {
  constructor() {
    super();
    /** Ten seconds of left and right in turn. */
    this.ring = new Int16Array(2 * 480000);
    this.written = 0;
    this.read = 0;
    this.ended = false;
    this.stopping = false;
    /** Frames that were wanted before they had come, and in how many gaps. */
    this.dry = 0;
    this.gaps = 0;
    this.isDry = false;
    this.sinceTold = 0;
    this.gain = 1;
    /** @type {MessagePort | undefined} */
    this.feeder = undefined;
    this.port.onmessage = (event) => this.take(event.data);
  }

  /** @param {{ samples?: ArrayBuffer, end?: boolean, stop?: boolean, feeder?: MessagePort }} message */
  take(message) {
    if (message.samples) {
      const samples = new Int16Array(message.samples);
      for (let i = 0; i < samples.length; i++) this.ring[(this.written + i) % this.ring.length] = samples[i];
      this.written += samples.length;
    }
    if (message.feeder) {
      this.feeder = message.feeder;
      this.feeder.onmessage = (event) => this.take(event.data);
    }
    if (message.end) this.ended = true;
    if (message.stop) this.stopping = true;
  }

  /**
   * @param {Float32Array[][]} _
   * @param {Float32Array[][]} outputs
   * @returns {boolean} whether it goes on
   */
  process(_, outputs) {
    const [left, right] = outputs[0];
    const start = this.read / 2;
    for (let i = 0; i < left.length; i++) {
      if (this.read < this.written) {
        left[i] = this.gain * this.ring[this.read % this.ring.length] / 32768;
        (right ?? left)[i] = this.gain * this.ring[(this.read + 1) % this.ring.length] / 32768;
        this.read += 2;
        this.isDry = false;
        if (this.stopping) this.gain = Math.max(0, this.gain - 1 / 1024);
      } else if (this.read > 0 && !this.ended) {
        this.dry++;
        if (!this.isDry) this.gaps++;
        this.isDry = true;
      }
    }
    const over = (this.ended && this.read >= this.written) || this.gain === 0 || (this.stopping && this.read >= this.written);
    this.sinceTold += left.length;
    if (this.sinceTold >= 2048 || over || (start === 0 && this.read > 0)) {
      this.sinceTold = 0;
      const told = {
        frame: start, time: currentTime, left: (this.written - this.read) / 2, written: this.written / 2, dry: this.dry, gaps: this.gaps, over,
      };
      this.port.postMessage(told);
      this.feeder?.postMessage(told);
    }
    return !over;
  }
}

registerProcessor('player', Player);
