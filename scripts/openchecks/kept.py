"""Nothing that was typed is lost."""

import os
import statistics
import time

from checks import report

from .page import Page, enter, show, write
from .program import Program
from .scores import MISSING
from .work import WORK, slack

KILLS = 30
FEW_KILLS = 3


def check_kept():
    kills = KILLS if Page.mouse else FEW_KILLS
    with Program(os.path.join(WORK, "kept")) as program, Page() as page, Page() as other:
        with open(program.path("spout.loom"), "w", encoding="utf-8") as file:
            file.write(MISSING)
        enter(page, program)
        show(page, "spout.loom")
        with open(program.path("spout.loom"), "w", encoding="utf-8") as file:
            file.write(MISSING.replace("Spout", "Eaves"))
        report(page.until("document.getElementById('theirs')?.textContent.includes('Short Eaves')")
               and "Short Spout" in page.text("#mine"), "what another program wrote is noticed, both texts are shown")
        page.click("#keep-mine")
        page.until("document.getElementById('state').dataset.state === 'saved'")
        report("Short Spout" in program.text("spout.loom"), "the choice is saved")
        page.click("#versions")
        page.until("document.querySelector('.versions button')")
        count = page.script("return document.querySelectorAll('.versions button').length")
        found = False
        for number in range(1, count + 1):
            page.click(f".versions li:nth-child({number}) button")
            page.until("document.querySelector('.old')?.textContent.startsWith('title')")
            found = found or bool(page.until("document.querySelector('.old').textContent.includes('Eaves')", seconds=0.3))
        report(found, f"the other text is among the {count} versions")
        # Two pages on one score: the second one's change is not written over the first one's.
        with Program(os.path.join(WORK, "kept")) as second:
            enter(other, second)
            show(other, "spout.loom")
            write(page, MISSING + "# from the first page\n")
            write(other, MISSING + "# from the second page\n")
            seen = other.until("document.getElementById('theirs')?.textContent") or page.until(
                "document.getElementById('theirs')?.textContent")
            report("page" in (seen or ""), "two pages on one score: the later one is shown the other's text")
        # Killed in the middle of typing.
        if page.script("return document.getElementById('keep-mine') !== null"):
            page.click("#keep-mine")
        halves, lost = 0, []
        for turn in range(kills):
            page.until("document.getElementById('state').dataset.state === 'saved'")
            before, begun = program.text("spout.loom"), time.monotonic()
            head = MISSING + f"# turn {turn}, written on and on "
            write(page, head)
            typed = []
            for _ in range(5 + 37 * turn % 30):
                page.keys("a")
                typed.append(time.monotonic())
            program.kill()
            killed = time.monotonic()
            text = program.text("spout.loom")
            on_disk = len(text) - len(head)
            halves += not (text == before or text.startswith(head) and set(text[len(head):]) <= {"a"} and on_disk <= len(typed))
            first_lost = begun if on_disk < 0 else typed[on_disk] if on_disk < len(typed) else killed
            lost.append(killed - first_lost)
            if turn == 0:
                report(page.until("document.body.classList.contains('away')"), "the page says that the program has ended: "
                       + page.text("#told"))
            program.start()
        back = page.until("document.getElementById('state').dataset.state === 'saved'")
        report(halves == 0 and back and f"turn {kills - 1}," in program.text("spout.loom"),
               f"killed {kills} times while typing: {halves} half files, and the last text is on the disk in the end")
        report(max(lost) <= 1.0 * slack(), f"what was on the disk when it was killed lacked the last {statistics.median(lost):.2f} s "
               f"in the median, {max(lost):.2f} s at most")
