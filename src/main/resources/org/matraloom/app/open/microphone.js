/**
 * The microphone: its level, and a recording as a WAVE file.
 * @module
 */
import { audio } from '/page/sound.js';

const OPEN_MS = 3000;

/**
 * Opens the microphone as it is, without what browsers do to speech.
 * @param {(level: number) => void} heard is told the peak of each block, in dB
 * @param {number} [blockFrames] how long a block is, a tenth of a second if it is not told
 */
export async function openMicrophone(heard, blockFrames = 4800) {
  const context = await audio();
  await context.audioWorklet.addModule('/page/recorder.js');
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 },
  });
  const source = context.createMediaStreamSource(stream);
  const node = new AudioWorkletNode(context, 'recorder', {
    numberOfOutputs: 0, channelCount: 1, channelCountMode: 'explicit', processorOptions: { blockFrames },
  });
  source.connect(node);
  /** @type {Int16Array[] | null} */
  let kept = null;
  let listener = (/** @type {Int16Array} */ _) => {};
  let heardFrames = 0;
  let firstFrame = NaN;
  let beganAt = NaN;
  let open = (/** @type {any} */ _) => {};
  const opened = new Promise((done) => {
    open = done;
    setTimeout(done, OPEN_MS);
  });
  node.port.onmessage = (event) => {
    if (event.data.first !== undefined) {
      firstFrame = event.data.first;
      return open(true);
    }
    heardFrames += event.data.length;
    let peak = 0;
    for (const sample of event.data) peak = Math.max(peak, Math.abs(sample));
    heard(20 * Math.log10(Math.max(peak, 1e-4)));
    if (!kept) return;
    const samples = Int16Array.from(event.data, (sample) => Math.max(-32768, Math.min(32767, Math.round(sample * 32767))));
    kept.push(samples);
    listener(samples);
  };
  return {
    context,
    /** Fulfilled when the first frame has come, or none came for a while. */
    opened,
    /** What the microphone is called. */
    name: stream.getAudioTracks()[0].label || 'microphone',
    /** @param {(samples: Int16Array) => void} [also] is told each block as it comes, 16 bits a sample */
    record(also = () => {}) {
      kept = [];
      listener = also;
      beganAt = firstFrame + heardFrames;
    },
    /** The frame of the audio clock at which the recording begins; no number if no frame had come. */
    beganAt: () => beganAt,
    /** What was recorded, as samples without a head. */
    samples: async () => (await waveFile(kept ?? [], context.sampleRate).arrayBuffer()).slice(44),
    /**
     * Ends the recording.
     * @returns {Blob}
     */
    take() {
      const wave = waveFile(kept ?? [], context.sampleRate);
      kept = null;
      return wave;
    },
    close() {
      node.port.postMessage('end');
      source.disconnect();
      stream.getTracks().forEach((track) => track.stop());
    },
  };
}

/**
 * 16 bits, one channel; the layout of the head is that of RIFF WAVE.
 * @param {Int16Array[]} blocks
 * @param {number} rate
 */
function waveFile(blocks, rate) {
  const frames = blocks.reduce((sum, block) => sum + block.length, 0);
  const bytes = new DataView(new ArrayBuffer(44 + 2 * frames));
  const letters = (/** @type {number} */ at, /** @type {string} */ text) => [...text].forEach((letter, i) => bytes.setUint8(at + i, letter.charCodeAt(0)));
  letters(0, 'RIFF');
  bytes.setUint32(4, 36 + 2 * frames, true);
  letters(8, 'WAVEfmt ');
  bytes.setUint32(16, 16, true);
  bytes.setUint16(20, 1, true);
  bytes.setUint16(22, 1, true);
  bytes.setUint32(24, rate, true);
  bytes.setUint32(28, 2 * rate, true);
  bytes.setUint16(32, 2, true);
  bytes.setUint16(34, 16, true);
  letters(36, 'data');
  bytes.setUint32(40, 2 * frames, true);
  let at = 44;
  for (const block of blocks) {
    for (const sample of block) {
      bytes.setInt16(at, sample, true);
      at += 2;
    }
  }
  return new Blob([bytes.buffer], { type: 'audio/wav' });
}
