"""Text and sheet, the landing and its repairs."""

import os
import subprocess
import time

from checks import report

from .page import CONTROL, ENTER, Page, enter, show, write
from .program import Program
from .scores import MISSING
from .work import WORK


# The rows as they stand, without what lights a cell.
ROWS = """
const rows = document.getElementById('rows').cloneNode(true);
rows.querySelectorAll('.here, .now, .stretch').forEach((each) => each.classList.remove('here', 'now', 'stretch'));
return rows.innerHTML;
"""

BACKSPACE = "\ue003"
LONGER = "title Short Spout\ntala adi\ntempo 60\n\nSong = takadimi takajunu , ta tadiginatom takadimi takajunu\n\nperform\n  Song x15 nadai 4\n  Song x4 nadai 5\n"


def sheet_as_new(page):
    """Text after text is drawn over the rows of the one before; what stands there at last is what is drawn when the score is opened."""
    texts = [LONGER, LONGER.replace("takadimi tak", "takadimi, tak", 1), MISSING, LONGER.replace("x15", "x25"), LONGER.replace("nadai 5", "nadai 7"), LONGER]
    for text in texts:
        before = page.script("return document.getElementById('sheet').dataset.drawn")
        write(page, text)
        page.until("document.getElementById('sheet').dataset.drawn !== arguments[0]", before)
    page.until("document.getElementById('state').dataset.state === 'saved'")
    time.sleep(0.5)
    stands = page.script(ROWS)
    page.call("POST", "/refresh", {})
    page.until("document.querySelector('#sheet')?.dataset.drawn && document.querySelector('#landing').textContent")
    drawn = page.script(ROWS)
    report(stands == drawn and drawn.count("<section") > 5, f"after {len(texts)} texts the sheet is the one that is drawn anew, {drawn.count('<section')} rows")
    write(page, MISSING)
    page.until("document.getElementById('state').dataset.state === 'saved'")


def typed_line_by_line(page):
    """Each line is typed key by key and ended with enter, whatever is offered meanwhile; what stands there is what was typed."""
    page.click(".cm-content")
    page.keys([CONTROL, "a"], BACKSPACE)
    lines = ["title Short Spout", "tala adi", "tempo 60", "Fall = takita 7 tadiginatom", "Song = Fall x2 5(1)5", "perform", "Song nadai 4", "Song x2 nadai 5"]
    for line in lines:
        for key in line:
            page.keys(key)
            time.sleep(0.03)
        time.sleep(0.3)
        page.keys(ENTER)
    stands = [line.strip() for line in page.script("return document.querySelector('.cm-content').innerText").splitlines() if line.strip()]
    report(stands == lines, f"{len(lines)} lines typed key by key stand there as they were typed" + ("" if stands == lines else f": {stands}"))
    write(page, MISSING)
    page.until("document.getElementById('state').dataset.state === 'saved'")


def check_write():
    with Program(os.path.join(WORK, "write")) as program, Page() as page:
        with open(program.path("spout.loom"), "w", encoding="utf-8") as file:
            file.write(MISSING)
        enter(page, program)
        show(page, "spout.loom")
        report("It misses" in page.text("#landing"), "the landing is told: " + page.text("#landing"))
        told = subprocess.run(["./matraloom", "check", program.path("spout.loom")], capture_output=True, text=True).stdout
        verdict = page.text("#landing").split(". ")[0]
        report(verdict in " ".join(told.split()), "with the words of check")
        page.click("#ask-repairs")
        page.until("document.querySelector('#repairs button')")
        first = page.text("#repairs button")
        page.click("#repairs button")
        landed = page.until("document.getElementById('landing').textContent.startsWith('It lands')")
        page.until("document.getElementById('state').dataset.state === 'saved'")
        report(landed and program.text("spout.loom") != MISSING, f"a repair is applied with one click: {first}")
        page.keys([CONTROL, "z"])
        page.until("document.getElementById('landing').textContent.startsWith('It misses')")
        page.until("document.getElementById('state').dataset.state === 'saved'")
        report(program.text("spout.loom") == MISSING, "and undone with one key")
        write(page, MISSING.replace("takajunu takadimi", "takajunu blub"))
        page.until("document.querySelector('#landing').textContent.startsWith('Line 5')")
        wrong = page.text("#landing")
        kept = page.script("return document.querySelectorAll('#rows .row').length")
        report("column 26" in wrong and kept > 0 and page.script("return document.getElementById('sheet').classList.contains('stale')"),
               f"a mistake is told at its column and the last sheet stays, greyed: {wrong}")
        report(page.until("document.querySelector('.cm-lintRange-error')?.textContent") == "blub", "it is marked in the text")
        write(page, MISSING)
        page.until("!document.getElementById('sheet').classList.contains('stale')")
        page.cell(5)
        chosen = page.script("return window.matraloom.chosen()")
        shown = page.script("return window.matraloom.sheet.marks()[5].sign")
        report(chosen == shown.strip() and page.script("return document.querySelectorAll('#rows .here').length") == 1,
               f"a click on the cell of {shown} chooses {chosen} in the text, and the cursor lights its cell")
        lit = page.script("return [document.querySelector('#rows .here').textContent.trim(), window.matraloom.sheet.marks()[5].element.classList.contains('here')]")
        report(lit[1], f"the cell that is lit is the one that was clicked: {lit[0]}")
        page.until("document.getElementById('state').dataset.state === 'saved'")
        before, high = program.text("spout.loom"), page.script("return scrollY")
        page.cell(2)
        page.cell(9, longer=True)
        report(page.script("return scrollY") == high, "a click on a cell moves nothing")
        page.keys(" ")
        plays = page.until("window.matraloom.hear.playing()")
        page.keys(" ")
        page.until("!window.matraloom.hear.playing()")
        report(plays and page.script("return document.querySelector('.cm-content').innerText.includes('Song nadai 5')") and program.text("spout.loom") == before,
               "with cells chosen, space plays, and the text stays as it is")
        written = page.script("return document.querySelector('.cm-content').innerText")
        page.keys([CONTROL, "z"])
        undone = page.until("document.querySelector('.cm-content').innerText !== arguments[0]", written)
        page.keys([CONTROL, "y"])
        redone = page.until("document.querySelector('.cm-content').innerText === arguments[0]", written)
        report(undone and redone, "with cells chosen, Ctrl-Z takes back what was written last, and Ctrl-Y brings it again")
        page.until("document.getElementById('state').dataset.state === 'saved'")
        page.script("document.getElementById('tempo').value = 90")
        write(page, MISSING.replace("tempo 60", "tempo 72"))
        report(page.until("document.getElementById('tempo').value === '72'"), "the tempo that is played follows the score")
        write(page, MISSING)
        page.until("document.getElementById('tempo').value === '60'")
        sheet_as_new(page)
        typed_line_by_line(page)
        page.click(".cm-content")
        page.keys([CONTROL, "\ue010"])
        page.keys(ENTER, *"tadig")
        report(page.until("document.querySelector('.cm-tooltip-autocomplete')?.innerText.length > 0"),
               "words are offered: " + page.text(".cm-tooltip-autocomplete").replace("\n", " ")[:60])
        page.until("document.getElementById('state').dataset.state === 'saved'")
        faults = page.faults()
        report(not faults, f"the browser had no complaint {faults}")
