"""The round trip, measured in the page."""

import base64
import json
import os
import re
import shutil
import time

import numpy

from checks import SAMPLES, read_wav, report

from .page import ENTER, Page, enter, show, tab_to
from .program import Program
from .sounds import write_wav
from .work import MEASUREMENTS, WORK

CLICKS = """
const done = arguments[0];
fetch('/api/clicks').then((reply) => reply.arrayBuffer()).then((bytes) => done([...new Int16Array(bytes)]));
"""

# What the page hands to the program to be measured is kept, to be measured here too.
KEEP_POSTED = """
const send = window.fetch;
window.fetch = (path, how) => {
  if (String(path).includes('/api/round-trip') && how?.body) window.posted = [String(path), how.body];
  return send(path, how);
};
"""

POSTED = """
const done = arguments[0];
const reader = new FileReader();
reader.onload = () => done([window.posted[0], reader.result.split(',')[1]]);
reader.readAsDataURL(new Blob([window.posted[1]]));
"""

# A recording that was made elsewhere, as if a microphone of that name had heard it.
HEARD_BY = """
const [input, samples64, done] = arguments;
const body = Uint8Array.from(atob(samples64), (letter) => letter.charCodeAt(0));
fetch(`/api/round-trip?input=${encodeURIComponent(input)}&offset=0`, { method: 'POST', body })
  .then((reply) => reply.text()).then(done);
"""
KNOWN = "const [input, done] = arguments; fetch(`/api/round-trip?input=${encodeURIComponent(input)}`).then((reply) => reply.json()).then(done);"

MICROPHONE = """
const done = arguments[0];
navigator.mediaDevices.getUserMedia({ audio: true }).then((stream) => {
  const [track] = stream.getAudioTracks();
  track.stop();
  done(track.label);
});
"""
# What docs/live.md says of the clicks, their delays, and when these are trusted.
EARLIEST, LONGEST, CLICK = -50 * 48, 500 * 48, 4 * 48
LEAST_LIKE, FEWEST_CLICKS, WIDEST_MS = 0.6, 18, 5


def delays_of(clicks, recording, late):
    """The delay of each click that is heard, in frames, by correlation: what the program has to find."""
    starts = [at for at in numpy.flatnonzero(clicks) if not clicks[max(0, at - 4800):at].any()]
    click = clicks[starts[0]:starts[0] + CLICK].astype(float)
    found = []
    for start in starts:
        first = max(0, start + late + EARLIEST)
        near = recording[first:start + late + LONGEST + CLICK].astype(float)
        if len(near) < CLICK:
            continue
        energy = numpy.convolve(near ** 2, numpy.ones(CLICK), "valid")
        like = numpy.correlate(near, click, "valid") / numpy.sqrt(numpy.maximum(energy * (click ** 2).sum(), 1e-9))
        if like.max() > LEAST_LIKE:
            found.append(first + int(like.argmax()) - start - late)
    return sorted(found)


def note_of(path):
    """Where a take tells that its guide was: origin beat, start frame, round trip; nothing if it does not."""
    with open(path, "rb") as file:
        return re.findall(rb"origin beat: (\S+); start frame: +(\S+); round trip frames: +(\S+);", file.read(8192))


def take_with_guide(page, program, number):
    """Records four beats with the guide by keys alone: what the take tells of its guide, whether the guide went straight on,
    and the longest that the guide may have begun after the recording, in frames."""
    reached = tab_to(page, "#record")
    page.script("document.getElementById('count-in').value = 0; document.querySelector('#result').replaceChildren()")
    begun = time.monotonic()
    page.keys(ENTER)
    page.until("window.matraloom.hear.playing()?.place().beat > 4")
    longest = (time.monotonic() - begun) * 48_000
    page.keys(ENTER)
    # Until then it tells how long it has been recording, and that it measures.
    page.until("document.querySelector('#result details, #result .wrong')", seconds=60)
    straight = page.script("return Boolean(window.matraloom.hear.latest().straight())")
    page.script("document.activeElement.blur()")
    path = program.path(f"gutter-song-files/take-{number}.wav")
    frames = len(read_wav(path)[1]) if os.path.exists(path) else 0
    return reached and frames > 48_000, note_of(path) if frames else [], straight, longest


def measured_by_ear(page, clicks):
    """Measures the round trip through the microphone: the words of the page, and the delays in what it recorded."""
    page.script("document.getElementById('told').textContent = ''; window.posted = null")
    page.keys(ENTER)
    page.until("/ms|not stored/.test(document.getElementById('told').textContent)", seconds=40)
    path, samples = page.wait_script(POSTED)
    late = int(re.search(r"offset=(-?\d+)", path)[1])
    return page.text("#told"), delays_of(clicks, numpy.frombuffer(base64.b64decode(samples), dtype="<i2"), late)


def spread_ms(delays):
    return (delays[-1] - delays[0]) / 48 if delays else 0.0


def check_roundtrip():
    """The round trip is measured, kept for the microphone, and used in a take; all without the mouse."""
    with Program(os.path.join(WORK, "roundtrip")) as program:
        shutil.copy(f"{SAMPLES}/gutter-song.loom", program.path("gutter-song.loom"))
        with Page() as page:
            enter(page, program)
            clicks = numpy.array(page.wait_script(CLICKS), dtype="<i2")
            made_round_trips(page, clicks)
        # A microphone that hears the clicks 0.4 s after it was opened.
        heard = os.path.join(WORK, "clicks.wav")
        write_wav(heard, numpy.concatenate([numpy.zeros(19_200, dtype=int), clicks, numpy.zeros(48_000, dtype=int)]))
        with Page(take=heard) as page:
            page.open(program.next_address())
            page.until("document.getElementById('main')?.dataset.ready !== undefined")
            show(page, "gutter-song.loom")
            microphone = page.wait_script(MICROPHONE)
            page.script(KEEP_POSTED)
            report(tab_to(page, "#round-trip"), "the tabulator comes to the round trip")
            for _ in range(MEASUREMENTS):  # a busy machine makes it uneven; the page says to measure again
                told, delays = measured_by_ear(page, clicks)
                if "not stored" not in told:
                    break
                print("# " + told)
                tab_to(page, "#round-trip")
            known = page.wait_script(KNOWN, microphone)
            taken = 1
            if "not stored" in told:
                right = len(delays) < FEWEST_CLICKS and f"only {len(delays)} of" in told or re.search(
                    rf"changed by {spread_ms(delays):.1f} ms", told) and spread_ms(delays) > WIDEST_MS
                report(right and not known, f"what the microphone heard was uneven {MEASUREMENTS} times running (here by {spread_ms(delays):.1f} ms over "
                       f"{len(delays)} clicks), which is told, and nothing is stored: {told}")
                made, note, _, _ = take_with_guide(page, program, taken)
                report(made and not note, f"a take without a round trip is written without the mouse and tells no place of its guide {note}")
                taken += 1
                kept = page.wait_script(HEARD_BY, microphone, base64.b64encode(numpy.concatenate([numpy.zeros(9600, dtype="<i2"), clicks]).tobytes()).decode())
                known = json.loads(kept)
            else:
                ms, spread = (float(found) for found in re.search(r"microphone: ([\d.-]+) ms.*varied by ([\d.]+) ms", told, re.S).groups())
                middle = delays[len(delays) // 2]
                report(len(delays) >= FEWEST_CLICKS and known["frames"] == middle and abs(ms - middle / 48) <= 0.06
                       and abs(spread - spread_ms(delays)) <= 0.06 and spread <= WIDEST_MS, f"a microphone that hears {middle / 48:.1f} ms late: {told}")
            for _ in range(MEASUREMENTS):  # a guide with gaps did not go straight on, and has no place
                made, note, straight, longest = take_with_guide(page, program, taken)
                taken += 1
                if note or straight:
                    break
            trip = known["frames"]
            placed = len(note) == 1 and int(note[0][2]) == trip and trip < int(note[0][1]) < trip + longest
            report(made and (placed or not straight and not note),
                   f"a take is written without the mouse and tells where its guide was {note}" + ("" if straight else ", which had gaps"))
            report(tab_to(page, "#hand-on"), "the tabulator comes to what is handed on")
            page.keys(ENTER)
            page.until("document.querySelector('[data-kind=midi]')")
            report(tab_to(page, "[data-kind=midi]"), "and to a kind of file")
            page.keys(ENTER)
            page.until("document.querySelector('[data-state=done]')", seconds=30)
            report(os.path.exists(program.path("gutter-song-files/gutter-song.mid")), "a file is made without the mouse")
            faults = [fault for fault in page.faults() if "round-trip" not in fault]
            report(not faults, f"the browser had no complaint but of uneven round trips {faults}")


def made_round_trips(page, clicks):
    """Recordings whose delays are known to the frame, sent as the page sends them, by no clock."""
    def sent(name, samples):
        told = page.wait_script(HEARD_BY, name, base64.b64encode(samples.astype("<i2").tobytes()).decode())
        return told, page.wait_script(KNOWN, name)

    late = numpy.concatenate([numpy.zeros(9600, dtype="<i2"), clicks])
    told, known = sent("an even one", late)
    report(known == {"frames": 9600, "ms": 200, "spreadMs": 0}, f"what is heard 9600 frames late is measured so and kept: {told}")
    half = len(late) // 2
    told, known = sent("one that slips", numpy.concatenate([late[:half], numpy.zeros(480, dtype="<i2"), late[half:]]))
    report("not stored: the delay changed by 10.0 ms" in told and not known, f"a slip of 10 ms in the middle is refused, and nothing is kept: {told[:80]}")
