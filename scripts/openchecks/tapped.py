"""A rhythm that is tapped."""

import os

from checks import report

from .page import CONTROL, DOWN, ENTER, Page, enter, show
from .program import Program
from .scores import MISSING
from .work import WORK


def tap_at(page, beats):
    """Taps where beats are heard, by the page's own clock of what leaves the loudspeaker: with the pointer, or a key.

    Each tap is given after its beat and bears the moment of it, as keys and pointers bear the moment they were
    pressed at however late a busy page comes to them.
    """
    page.wait_script("""const [beats, key, done] = arguments;
      const playing = window.matraloom.hear.playing();
      const pad = document.activeElement;
      const first = Math.ceil(playing.place().beat + 0.3);
      let next = 0;
      const timer = setInterval(() => {
        const now = performance.now();
        const { beat, tempo } = playing.place(now);
        const ago = (beat - first - beats[next]) * 60_000 / tempo;
        if (ago >= 0) {
          const tap = key ? new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true })
            : new PointerEvent('pointerdown', { bubbles: true, cancelable: true });
          Object.defineProperty(tap, 'timeStamp', { value: now - ago });
          pad.dispatchEvent(tap);
          if (++next === beats.length) { clearInterval(timer); done(); }
        }
      }, 2);""", beats, "" if Page.mouse else "j")


def check_tapped():
    """A rhythm that is tapped is written in matras."""
    with Program(os.path.join(WORK, "tapped")) as program, Page() as page:
        with open(program.path("spout.loom"), "w", encoding="utf-8") as file:
            file.write(MISSING.replace("nadai 5", "nadai 4"))
        enter(page, program)
        show(page, "spout.loom")
        page.click(".cm-content")
        page.keys([CONTROL, "\ue011"], DOWN, DOWN, DOWN, DOWN, "\ue010")
        page.click("#tap-rhythm")
        page.until("window.matraloom.hear.playing()?.place().frame > 0 && document.activeElement.id === 'tap-pad'")
        tap_at(page, [0, 0.25, 0.5, 0.75, 1, 1.25, 1.5, 1.75, 2.5])
        page.keys(ENTER)
        page.until("document.getElementById('tap-write')")
        told = page.text("#tap-found")
        report("takadimi takita tom ; ta" in told, "seven quick and a long one: " + told.replace("\n", " / "))
        report(page.script("return document.activeElement.id") == "tap-write", "what is next is to write it")
        page.click("#tap-write")
        page.until("document.getElementById('state').dataset.state === 'saved'")
        report("takajunu takadimi takita tom ; ta" in program.text("spout.loom"), "it is written at the cursor: " +
               program.text("spout.loom").splitlines()[4])
        page.until("document.activeElement.matches('.cm-content')")
        page.keys([CONTROL, "z"])
        page.until("document.getElementById('state').dataset.state === 'saved' && !document.querySelector('.cm-content').textContent.includes('tom')")
        report("tom" not in program.text("spout.loom"), "one key takes it back")
        page.click("#tap-rhythm")
        page.until("window.matraloom.hear.playing()?.place().frame > 0 && document.activeElement.id === 'tap-pad'")
        tap_at(page, [0, 0.2, 0.4, 0.6, 0.8, 1, 1.2, 1.4, 1.6, 1.8])
        page.keys(ENTER)
        page.until("document.getElementById('tap-write')")
        told = page.text("#tap-found")
        report("{5: tadiginatom tadiginatom}" in told, "fives in a piece of fours: " + told.replace("\n", " / "))
        report(not page.faults(), "the browser had no complaint")
