/** Hands what the microphone hears to the page, in blocks: of a tenth of a second, or as it is told. */
class Recorder extends AudioWorkletProcessor {
  /** @param {{ processorOptions?: { blockFrames?: number } }} [given] */
  constructor(given) {
    super();
    this.block = new Float32Array(given?.processorOptions?.blockFrames ?? 4800);
    this.filled = 0;
    this.over = false;
    this.told = false;
    this.port.onmessage = () => { this.over = true; };
  }

  /**
   * @param {Float32Array[][]} inputs
   * @returns {boolean} whether it goes on
   */
  process(inputs) {
    const [heard] = inputs[0];
    if (heard) {
      if (!this.told) {
        // Where the clock of the audio stood at the first frame.
        this.told = true;
        this.port.postMessage({ first: currentFrame });
      }
      for (let i = 0; i < heard.length; i++) {
        this.block[this.filled++] = heard[i];
        if (this.filled === this.block.length) {
          this.port.postMessage(this.block);
          this.filled = 0;
        }
      }
    }
    if (this.over) this.port.postMessage(this.block.subarray(0, this.filled));
    return !this.over;
  }
}

registerProcessor('recorder', Recorder);
