"""Play on a busy machine while somebody types."""

import hashlib
import math
import os
import signal
import subprocess
import sys
import time

import numpy

from checks import report

from .page import CONTROL, Page, enter, show
from .program import Program
from .sounds import rendered
from .work import WORK

BUSY_SECONDS = 30

TAPPED = """
const done = arguments[0];
const connect = AudioNode.prototype.connect;
window.taken = [[], []];
window.takenFrom = [];
AudioNode.prototype.connect = function (to, ...rest) {
  if (to instanceof AudioDestinationNode && this instanceof AudioWorkletNode) {
    this.port.addEventListener('message', ({ data }) => { if (data.gaps > (window.gaps ?? []).length) (window.gaps ??= []).push(data.frame / 48000); });
    const sides = new ChannelSplitterNode(this.context, { numberOfOutputs: 2 });
    connect.call(this, sides);
    for (const side of [0, 1]) {
      const tap = new AudioWorkletNode(this.context, 'recorder', { numberOfOutputs: 0, channelCount: 1, channelCountMode: 'explicit' });
      connect.call(sides, tap, side);
      tap.port.onmessage = (event) => {
        if (event.data.first !== undefined) window.takenFrom[side] = event.data.first;
        else window.taken[side].push(Int16Array.from(event.data, (one) => one * 32768));
      };
    }
  }
  return connect.call(this, to, ...rest);
};
window.matraloom.audio().then((context) => context.audioWorklet.addModule('/page/recorder.js')).then(() => done(true));
"""

TAKEN = """
const [side, from, frames, done] = arguments;
const all = new Int16Array(frames);
let at = -from;
for (const block of window.taken[side]) {
  if (at + block.length > 0 && at < frames) {
    const part = block.subarray(Math.max(0, -at), Math.min(block.length, frames - at));
    all.set(part, Math.max(0, at));
  }
  at += block.length;
}
crypto.subtle.digest('SHA-256', all).then((sum) => done(
  [at, Array.from(new Uint8Array(sum), (one) => one.toString(16).padStart(2, '0')).join('')]));
"""


def piece_of(seconds):
    """A piece of two nadais that takes so long, or a little more."""
    beats = 27 / 4 + 27 / 5
    times = math.ceil(seconds * 70 / 60 / beats)
    return ("title Long Rain\ntala adi\ntempo 70\nBank = takadimi takajunu takita , ta tadiginatom tadiginatom takadimi\n"
            f"Song = (Bank) x{times}\nperform\n Song nadai 4\n Song nadai 5\n")


def play_busily(page, program, seconds):
    """Plays a piece to its end while somebody types and all processors are busy, and compares all samples."""
    name = "long-rain.loom"
    with open(program.path(name), "w", encoding="utf-8") as file:
        file.write(piece_of(seconds))
    made = numpy.array(rendered(program.path(name)), dtype="<i2").reshape(-1, 2)
    show(page, name)
    page.wait_script(TAPPED)
    page.click(".cm-content")
    page.keys([CONTROL, "\ue010"])
    busy = [subprocess.Popen([sys.executable, "-c", "while True: pass"]) for _ in range(os.cpu_count())]
    typed, place, load = 0, None, []
    try:
        page.script("document.getElementById('play').click(); document.querySelector('.cm-content').focus()")
        limit = time.monotonic() + 2 * len(made) / 48_000 + 60
        while time.monotonic() < limit:
            words = "\n# rain" if typed % 5 == 0 else " drops"
            page.keys(*words)
            typed += len(words)
            load.append(os.getloadavg()[0])
            now = page.script("const { hear } = window.matraloom; const on = hear.playing(); "
                              "return [Boolean(on), hear.latest()?.straight(), hear.latest()?.measured()]")
            place = now[1] or place
            if not now[0] and now[2] and now[2]["sent"]:
                break
            time.sleep(0.2)
    finally:
        for each in busy:
            each.kill()
            each.wait()
    measured = page.script("return window.matraloom.hear.latest().measured()")
    late = page.script("return window.gaps ?? []")
    if late:
        print(f"# late at {late} s")
    words = (f"{len(made) / 48_000:.0f} s of play, {typed} letters typed meanwhile, load {numpy.mean(load):.1f}: {measured['gaps']} blocks late, "
             f"at most {measured['ahead'] / 48_000:.1f} s read ahead")
    report(measured["gaps"] == 0 and measured["dry"] == 0 and measured["sent"] >= len(made) and typed > 30, words)
    sums = []
    for side in (0, 1):
        first = page.script("return window.takenFrom[arguments[0]]", side)
        got, digest = page.wait_script(TAKEN, side, (place or {"frame": 0})["frame"] - first, len(made))
        wanted = hashlib.sha256(numpy.ascontiguousarray(made[:, side]).tobytes()).hexdigest()
        sums.append(digest == wanted and got > 0)
    report(all(sums) and numpy.abs(made).max() > 1000,
           f"each of the {len(made)} frames that left the page's last node, left and right, is that of render (SHA-256)")
    text = program.text(name)
    page.until("document.getElementById('state').dataset.state === 'saved'")
    report(text.count("rain") > 1, "what was typed is on the disk")


def check_busy():
    """A short form of what bench-open does for ten minutes."""
    with Program(os.path.join(WORK, "busy")) as program, Page() as page:
        enter(page, program)
        play_busily(page, program, BUSY_SECONDS)
        # A gap is told: the audio thread is asked for more than there is.
        page.script("window.matraloom.hear.stop()")
        page.script("document.activeElement.blur(); document.getElementById('play').click()")
        page.until("window.matraloom.hear.playing()?.place().frame > 9600")
        # The program stands still for longer than is read ahead at most, with a block of 2 s.
        program.process.send_signal(signal.SIGSTOP)
        time.sleep(8)
        program.process.send_signal(signal.SIGCONT)
        told = page.until("/gap/.test(document.getElementById('told').textContent) && document.getElementById('told').textContent")
        ahead = page.script("return window.matraloom.hear.latest().measured().ahead")
        report(bool(told) and ahead > 38_400, f"a program that stands still for 8 s is told of, and {ahead / 48_000:.1f} s are read ahead: {told}")
