"""Files that are handed on."""

import os
import shutil
import subprocess

from checks import SAMPLES, report

from .page import Page, enter, show
from .program import Program
from .work import WORK


def check_handon():
    with Program(os.path.join(WORK, "handon")) as program:
        with Page() as page:
            shutil.copy(f"{SAMPLES}/gutter-song.loom", program.path("gutter-song.loom"))
            enter(page, program)
            show(page, "gutter-song.loom")
            page.choose("#script", "tamil")
            tamil = page.until("/[\u0b80-\u0bff]/.test(document.getElementById('rows').textContent)")
            report(tamil, "the sheet is written in Tamil letters")
            page.click("#hand-on")
            for kind in ("sheet-pdf", "read-aloud", "midi", "page", "slow-track"):
                page.click(f"[data-kind={kind}]")
            done = page.until("document.querySelectorAll('[data-state=done]').length === 5", seconds=60)
            files = sorted(os.listdir(program.path("gutter-song-files")))
            report(done and len(files) == 5, f"files are made: {files}")
            told = subprocess.run(["pdffonts", program.path("gutter-song-files/gutter-song.pdf")], capture_output=True, text=True)
            report(told.returncode == 0, "poppler reads the sheet")
            page.click("[data-kind=pack]")
            page.until("document.querySelector('[data-state=running]')")
            page.click("[data-state=running] button")
            report(page.until("document.querySelector('[data-state=cancelled]')"), "a set of tracks is cancelled")
            left = [name for _, _, names in os.walk(program.path("gutter-song-files")) for name in names if name.endswith(".part")]
            report(not left, f"and nothing half written is left {left}")
            page.click("[data-kind=pack]")
            page.until("document.querySelector('[data-state=running]')")
        with Page() as second:
            second.open(program.next_address())
            second.until("document.getElementById('main')?.dataset.ready !== undefined")
            show(second, "gutter-song.loom")
            second.click("#hand-on")
            report(second.until("document.querySelector('[data-state=running], [data-state=done]:last-child')?.textContent.startsWith('pack')"),
                   "the page is closed, and a second one sees the work go on: " + second.text("#jobs li:last-child"))
