"""A practice session in the page."""

import glob
import os
import statistics

from checks import report

from .axe import AUDIT, AXE
from .page import Page, enter, show
from .program import Program
from .work import WORK, slack

SHORT = """title Short Rill
tala adi
tempo 150
Song = (takadimi takajunu) x4
perform
  Song nadai 4
"""

# A microphone that hears the program's own voice, right in time, in as many passes as are asked for, and then nothing.
MOUTH = """
const [passes, done] = arguments;
(async () => {
  const context = await window.matraloom.audio();
  const heard = context.createMediaStreamDestination();
  navigator.mediaDevices.getUserMedia = async () => heard.stream;
  const ask = (path, body) => fetch(path, { method: 'POST', body: JSON.stringify(body) });
  let pass = 0;
  document.addEventListener('pass', async ({ detail }) => {
    if (++pass > passes) return;
    const begun = await (await ask('/api/play', { text: detail.state.text, parts: 'voice', countIn: 1 })).json();
    const all = [];
    for (;;) {
      const block = new Int16Array(await (await ask('/api/play/next', { id: begun.id, frames: 48000 })).arrayBuffer());
      if (!block.length) break;
      all.push(...block);
    }
    const buffer = context.createBuffer(1, all.length / 2, 48000);
    buffer.getChannelData(0).forEach((_, i, to) => { to[i] = all[2 * i] / 32768; });
    const source = new AudioBufferSourceNode(context, { buffer });
    source.connect(heard);
    const frame = detail.playing.place().frame + 2400;
    source.start(context.currentTime + 0.05, Math.max(0, frame) / 48000);
  });
  done(true);
})();
"""


# What was heard in the passes, and how old it was when it was drawn, by the clock of the audio.
SAID = """
window.said = [];
document.addEventListener('said', ({ detail }) => detail.marks.forEach((mark, i) => window.said.push([mark.place, mark.lateMs, detail.ages[i]])));
"""
MARKED_MS = 120
SOLLUS = 32


def marked_in_time(page):
    """How soon a sollu has its mark; a busy machine may be late with some."""
    said = page.script("return window.said")
    ages = sorted(each[2] for each in said)
    places = {each[0] for each in said}
    off = statistics.median(abs(each[1]) for each in said) if said else 999
    if not ages:
        return report(False, "nothing was marked")
    report(len(places) >= 0.9 * SOLLUS and off < 20, f"{len(places)} of {SOLLUS} sollus are marked, {off:.0f} ms off in the median")
    return report(statistics.median(ages) <= MARKED_MS * slack(), f"a mark stands there {statistics.median(ages):.0f} ms after its sound in the median, "
                  f"95 of 100 within {ages[int(0.95 * len(ages))]:.0f} ms, the latest {ages[-1]:.0f} ms")


# A machine with a voice of its own, which says at once what it is given; this browser has none.
VOICE = """
window.spoken = [];
Object.defineProperty(window, 'speechSynthesis', { value: {
  getVoices: () => [{ localService: true, lang: 'en-GB', name: 'rain' }], addEventListener() {}, cancel() {},
  speak(words) { window.spoken.push(words.text); words.onend(); } } });
window.SpeechSynthesisUtterance = class { constructor(text) { this.text = text; } };
"""


def check_session():
    """A session in the page: a clean pass leads on, silence is told, a key ends it, and each pass is in the log."""
    folder = os.path.join(WORK, "session")
    with Program(folder) as program, Page() as page:
        with open(program.path("short-rill.loom"), "w", encoding="utf-8") as file:
            file.write(SHORT)
        page.call("POST", "/goog/cdp/execute", {"cmd": "Page.setBypassCSP", "params": {"enabled": True}})
        enter(page, program)
        show(page, "short-rill.loom")
        page.wait_script(MOUTH, 2)
        page.script(VOICE)
        page.click("#session")
        page.until("document.getElementById('session-begin')")
        page.until("document.querySelector('#aloud')?.checkVisibility()")
        page.click("#aloud")
        page.fill("#goal", "150")
        page.fill("#session-from", "150")
        page.click("#only-whole")
        found = page.wait_script(AUDIT, AXE.rules)
        report(not found, f"axe-core finds nothing on the view of a session {found or ''}")
        page.script(SAID)
        page.click("#session-begin")
        page.until("document.getElementById('pass').textContent")
        report("The whole, 150 beats a minute, with voice" in page.text("#pass"), "a session begins: " + page.text("#pass"))
        page.until("document.querySelector('.paper .now')", seconds=60)
        hidden = page.script("return document.querySelector('.desk').offsetParent === null")
        report(hidden, "the cell is lit, and the text is put away meanwhile")
        page.until("document.querySelectorAll('#rows .said').length > 20", seconds=60)
        marks = page.script("return [...document.querySelectorAll('#rows .said')].map((each) => [each.textContent, each.classList.contains('early')])")
        report(len(marks) > 20, f"{len(marks)} sollus bear a mark while it is said, {sum(each[1] for each in marks)} above, early, "
               f"the others below: {''.join(each[0] for each in marks)}")
        page.until("document.querySelectorAll('#passes li').length === 1", seconds=60)
        marked_in_time(page)
        report("held" in page.text("#session-sentence"), "a clean pass is told: " + page.text("#session-sentence") + " "
               + page.text("#session-decision"))
        page.until("document.querySelectorAll('#passes li').length === 3", seconds=120)
        spoken = page.script("return window.spoken")
        report(len(spoken) == 3 and "held" in spoken[0] and "silent" in spoken[2], f"each sentence is handed to the machine's voice: {spoken}")
        report("silent" in page.text("#session-sentence"), "silence is told: " + page.text("#session-sentence"))
        page.until("document.getElementById('pass').textContent && document.querySelector('.paper .now')", seconds=60)
        page.keys("q")
        page.until("document.getElementById('session-sentence').textContent.includes('Ended as you asked')", seconds=30)
        told = page.text("#session-decision")
        report("2 passes judged, 2 clean" in told, f"q ends it, with a summary: {told}")
        takes = sorted(glob.glob(program.path("short-rill-files/session-*/pass-*.wav")))
        log = os.environ.get("MATRALOOM_LOG", os.path.join(WORK, "data", "matraloom", "practice.jsonl"))
        with open(log, encoding="utf-8") as file:
            entries = [line for line in file if '"Short Rill"' in line]
        report(len(takes) == 3 and len(entries) == 3, f"{len(takes)} takes are kept, {len(entries)} passes are in the log")
        report(page.script("return document.querySelector('.desk').offsetParent !== null"), "the text is there again")
        report(not page.faults(), "the browser had no complaint")
