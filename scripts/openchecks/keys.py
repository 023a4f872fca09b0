"""The keys of play."""

import fractions
import os
import re
import shutil

from checks import SAMPLES, events, report

from .page import ENTER, LEFT, Page, RIGHT, enter, show
from .program import Program
from .work import WORK


def check_keys():
    """The keys that play has in a terminal do the same on the page."""
    with Program(os.path.join(WORK, "keys")) as program, Page() as page:
        shutil.copy(f"{SAMPLES}/gutter-song.loom", program.path("gutter-song.loom"))
        enter(page, program)
        show(page, "gutter-song.loom")
        page.script("document.activeElement.blur(); document.getElementById('count-in').value = 0")
        beat = "window.matraloom.hear.playing()?.place().beat"
        page.keys("?")
        listed = page.script("return document.querySelectorAll('#keys dt').length")
        words = page.text("#keys")
        java = open("src/main/java/org/matraloom/session/KeyAction.java", encoding="utf-8").read()
        named = set(re.findall(r'^  [A-Z_]+\("[^"]*", "([^"]*)"\)', java, re.M))
        same = [one for one in named if one in words]
        report(listed == len(named) and len(same) >= len(named) - 3, f"? lists {listed} keys, {len(same)} in the words of play")
        page.keys("?")
        report(page.script("return document.getElementById('keys').hidden"), "and hides them")
        page.keys(" ")
        page.until("window.matraloom.hear.playing()?.place().frame > 9600")
        # Where what was gone to begins is known to the beat, however long a busy page took to go there.
        start = "window.matraloom.hear.playing()?.place().start"
        begins = {(row["kind"], row["round"], row["text"]): float(fractions.Fraction(row["beat"]))
                  for row in events(program.path("gutter-song.loom"), "--count-in", "0") if row["kind"] in ("round", "section")}
        rounds = sorted(beat for (kind, *_), beat in begins.items() if kind == "round")
        sections = sorted(set(begins.values()))
        before, after = (sections[sections.index(rounds[2]) + step] for step in (-3, 2))
        # What is gone to is told from what was drawn last: a key is pressed when that has been drawn.
        drawn = "requestAnimationFrame(() => requestAnimationFrame(arguments[0]))"
        for key, words, low, high in (("3", "3 goes to the third round", rounds[2], rounds[2]),
                                      (LEFT, "left to the section before", before, rounds[2] - 0.1),
                                      (RIGHT, "right to the next section", before + 0.1, after),
                                      ("0", "0 to the beginning", rounds[0], rounds[0]), ("2", "2 to the second round", rounds[1], rounds[1])):
            page.wait_script(drawn)
            from_here = page.script("return " + start)
            page.keys(key)
            went = page.until(f"{start} !== {from_here} && {start} > {low - 0.01} && {start} < {high + 0.01}", seconds=12)
            report(went, f"{words}: from beat {from_here:.2f} to {page.script('return ' + start) or 0:.2f}")
        report(page.until(f"{beat} >= {rounds[1]}"), f"and it is heard: beat {page.script('return ' + beat) or 0:.1f}")
        page.keys("r")
        pressed = page.script("return document.getElementById('loop').getAttribute('aria-pressed')")
        page.script("window.most = 0; window.least = 99; window.look = setInterval(() => { const b = " + beat + "; window.most = Math.max(b, window.most); "
                    "if (window.most > 29 && b < window.most - 5) window.came = b; }, 50)")
        page.keys("+", "+", "+", "+", "d", "d")
        report(pressed == "true" and page.until("window.came !== undefined", seconds=30), "r loops this round: it comes back from beat "
               f"{page.script('return window.most'):.1f} to {page.script('return window.came ?? -1'):.1f}")
        page.keys("r", "h", "h")
        report(page.script("return document.getElementById('loop').getAttribute('aria-pressed')") == "false", "and lets it go")
        page.keys(" ")
        page.until("!window.matraloom.hear.playing()")
        page.script("""const now = performance.now();
          for (let turn = 0; turn < 6; turn++) {
            const tap = new KeyboardEvent('keydown', { key: 't', bubbles: true });
            Object.defineProperty(tap, 'timeStamp', { value: now - 3000 + 500 * turn + (turn % 2 ? 7 : -7) });
            document.body.dispatchEvent(tap);
          }""")
        page.until("Math.abs(document.getElementById('tempo').value - 120) <= 6")
        tapped = float(page.script("return document.getElementById('tempo').value"))
        report(abs(tapped - 120) <= 6, f"t taps the tempo: six taps half a second apart, 7 ms off, are {tapped:.0f}")
        page.keys("s")
        report("sruti" in page.text("#told"), "s without a sruti tells what is missing: " + page.text("#told"))
        page.script("""const drone = document.getElementById('drone');
          drone.value = 'C3';
          drone.dispatchEvent(new Event('input'));""")
        page.keys("s")
        report(page.script("return document.querySelector('[data-part=drone]').getAttribute('aria-pressed')") == "false", "s switches the drone")
        page.keys(ENTER)
        report(page.until("window.matraloom.hear.playing()?.place().frame > 0"), "enter begins again from this section")
        page.keys(" ")
        report(not page.faults(), "the browser had no complaint")
