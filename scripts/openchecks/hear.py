"""What is played, and where it is shown."""

import base64
import os
import re
import shutil

import numpy

from checks import SAMPLES, report

from .page import Page, enter, show
from .program import Program
from .sounds import rendered
from .work import MEASUREMENTS, WORK, slack

SOUND_MS = 600

PULL = """
const [text, done] = [arguments[0], arguments[arguments.length - 1]];
(async () => {
  const ask = (path, body) => fetch(path, { method: 'POST', body: JSON.stringify(body) });
  const begun = await (await ask('/api/play', { text })).json();
  const all = [];
  for (let turn = 0; ; turn++) {
    const block = new Uint8Array(await (await ask('/api/play/next', { id: begun.id, frames: 3000 + 7 * turn })).arrayBuffer());
    if (!block.length) break;
    all.push(block);
  }
  let text64 = '';
  for (const block of all) for (let i = 0; i < block.length; i += 3000) text64 += String.fromCharCode(...block.subarray(i, i + 3000));
  done(btoa(text64));
})();
"""


def check_hear():
    score = f"{SAMPLES}/gutter-song.loom"
    with Program(os.path.join(WORK, "hear")) as program, Page() as page:
        shutil.copy(score, program.path("gutter-song.loom"))
        enter(page, program)
        show(page, "gutter-song.loom")
        pulled = numpy.frombuffer(base64.b64decode(page.wait_script(PULL, program.text("gutter-song.loom"))), dtype="<i2")
        made = numpy.array(rendered(score))
        same = len(pulled) >= len(made) and numpy.array_equal(pulled[:len(made)], made)
        differ = 0 if same else int(numpy.abs(pulled[:len(made)].astype(int) - made[:len(pulled)]).max())
        report(same, f"the page is given the {len(made) // 2} frames that render writes, differing by at most {differ}")
        began = []
        while not began or min(began) > SOUND_MS and len(began) < 2 * MEASUREMENTS:
            page.click("#play")
            page.until("window.matraloom.hear.playing()?.measured().startedMs > 0")
            began.append(page.script("return window.matraloom.hear.playing().measured().startedMs"))
            page.keys(" ")
            page.script("document.activeElement.blur(); window.matraloom.hear.stop()")
        report(min(began) <= SOUND_MS * slack(), f"from Play to sound {', '.join(f'{ms:.0f}' for ms in began)} ms")
        # From the last avartana before the change of nadai on, over the change.
        first, last = page.script("""const { sheet, piece } = window.matraloom;
          const start = piece().rounds.find((round) => round.nadai === 5).start;
          const marks = sheet.marks();
          const from = marks.findIndex((mark) => mark.beat >= start - 6);
          const to = marks.findIndex((mark) => mark.beat >= start + 6) - 1;
          return [from, to];""")
        page.cell(first)
        page.cell(last, longer=True)
        page.click("#loop")
        page.until("window.matraloom.hear.playing()?.measured().startedMs > 0")
        announced = page.until("document.querySelector('.coming')?.textContent")
        report("5" in (announced or ""), f"the change of nadai is announced: {announced}")
        lit = page.until("document.querySelector('.paper .now')?.textContent")
        report(bool(lit), f"the cell that is said is lit: {lit}; the hand: {page.text('.count')}")
        page.fill("#tempo", "80\n")
        report(page.until("Math.abs(window.matraloom.hear.playing().place().tempo - 80) < 0.1"), "a new tempo begins on a beat")
        wrapped = page.until("(window.last = window.last ?? 0, window.before = window.last, "
                             "window.last = window.matraloom.hear.playing().place().beat, window.last < window.before)", seconds=40)
        report(wrapped, "a stretch that was chosen comes again")
        measured = page.script("return window.matraloom.hear.playing().measured()")
        told = int((re.findall(r"Gaps in the sound so far: (\d+)", page.text("#told")) or ["0"])[0])
        report(measured["dry"] == 0, f"no block was late, {measured['dry']} frames were missing")
        report((told > 0) == (measured["dry"] > 0) and told <= measured["gaps"],
               f"{measured['dry']} frames came too late for the sound, and {told} gaps are told")
        page.script("window.matraloom.hear.stop()")
        report(not page.faults(), "the browser had no complaint")
