"""A page in Chromium, used as a person would, with the mouse or by keys alone."""

import base64
import json
import os
import subprocess
import time
import urllib.error
import urllib.request

from .work import slack

ELEMENT = "element-6066-11e4-a52e-4f735466cecf"
CONTROL, SHIFT, ENTER, TAB, ESCAPE = "\ue009", "\ue008", "\ue007", "\ue004", "\ue00c"
LEFT, UP, RIGHT, DOWN = "\ue012", "\ue013", "\ue014", "\ue015"
LIMIT_SECONDS = 30

# How many times the tabulator is pressed to come to an element, back if negative.
STEPS_TO = """
const all = [...document.querySelectorAll('a[href], button, input, select, textarea, summary, audio[controls], [tabindex="0"], .cm-content')]
  .filter((each) => !each.disabled && each.checkVisibility() && (each.tabIndex >= 0 || each.isContentEditable));
const wanted = all.findIndex((each) => each.matches(arguments[0]));
if (wanted < 0) return 1;
if (document.activeElement === all[wanted]) return 0;
const now = document.activeElement ?? document.body;
const at = all.indexOf(now);
if (at >= 0) return wanted - at;
const passed = all.filter((each) => now.compareDocumentPosition(each) & Node.DOCUMENT_POSITION_PRECEDING).length;
return now === document.body ? 1 : Math.max(1, wanted - passed + 1);
"""


class Page:
    """A page in Chromium, through its WebDriver, without a library."""

    count = 0
    # Without the mouse all is done by keys.
    mouse = True

    def __init__(self, width=1280, height=900, dark=False, take=None, zoom=1):
        Page.count += 1
        self.port = 19515 + (os.getpid() * 7 + Page.count) % 9000
        self.driver = subprocess.Popen(["chromedriver", f"--port={self.port}"], stdout=subprocess.DEVNULL,
                                       stderr=subprocess.DEVNULL)
        arguments = ["--headless=new", "--no-sandbox", "--disable-gpu", "--hide-scrollbars", "--disable-dev-shm-usage",
                     f"--window-size={width},{height}", "--autoplay-policy=no-user-gesture-required"]
        if dark:
            arguments.append("--blink-settings=preferredColorScheme=0")
        if take:
            arguments += ["--use-fake-device-for-media-stream", "--use-fake-ui-for-media-stream",
                          f"--use-file-for-fake-audio-capture={take}%noloop"]
        wanted = {"browserName": "chrome", "goog:loggingPrefs": {"browser": "ALL"},
                  "goog:chromeOptions": {"args": arguments, "binary": "/usr/bin/chromium",
                                         "mobileEmulation": {"deviceMetrics": {
                                             "width": width // zoom, "height": height // zoom, "pixelRatio": zoom, "touch": False}}}}
        self.base = ""
        for _ in range(150):
            try:
                session = self.call("POST", "/session", {"capabilities": {"alwaysMatch": wanted}})["sessionId"]
                self.base = f"/session/{session}"
                break
            except (urllib.error.URLError, ConnectionError):
                time.sleep(0.1)
        self.call("POST", "/timeouts", {"script": 120_000})

    def call(self, method, path, body=None):
        data = None if body is None else json.dumps(body).encode()
        request = urllib.request.Request(f"http://127.0.0.1:{self.port}{self.base}{path}", data=data, method=method,
                                         headers={"Content-Type": "application/json"})
        try:
            with urllib.request.urlopen(request, timeout=180) as answer:
                return json.load(answer)["value"]
        except urllib.error.HTTPError as error:
            raise RuntimeError(error.read().decode()[:600]) from error

    def open(self, url):
        self.call("POST", "/url", {"url": url})

    def script(self, text, *arguments):
        return self.call("POST", "/execute/sync", {"script": text, "args": list(arguments)})

    def wait_script(self, text, *arguments):
        return self.call("POST", "/execute/async", {"script": text, "args": list(arguments)})

    def until(self, condition, *arguments, seconds=LIMIT_SECONDS):
        """Waits until a condition holds; gives what it was."""
        limit = time.monotonic() + seconds * slack()
        while True:
            found = self.script("return " + condition, *arguments)
            if found or time.monotonic() > limit:
                return found
            time.sleep(0.05)

    def click(self, css):
        """Presses what can be pressed: with the mouse, or by going there with the tabulator and pressing a key."""
        self.until("document.querySelector(arguments[0])", css)
        if not Page.mouse:
            self.reach(css)
            if not self.script("return document.activeElement.matches('.cm-content')"):
                self.keys(" " if self.script("return document.activeElement.matches('[type=checkbox]')") else ENTER)
            return
        self.script("document.querySelector(arguments[0]).scrollIntoView({block: 'center'})", css)
        self.call("POST", f"/element/{self.element(css)}/click", {})

    def element(self, css):
        return self.call("POST", "/element", {"using": "css selector", "value": css})[ELEMENT]

    def reach(self, css):
        """Goes to what can be pressed by the tabulator alone."""
        if self.script("return document.activeElement?.matches('.cm-content')") and css != ".cm-content":
            self.keys(ESCAPE)  # closes what is offered
        for _ in range(12):
            steps = self.script(STEPS_TO, css)
            if steps == 0:
                return
            self.keys(*([TAB] * steps if steps > 0 else [[SHIFT, TAB]] * -steps))
        raise RuntimeError(f"the tabulator does not come to {css}, but to "
                           + self.script("return document.activeElement?.outerHTML.slice(0, 200)"))

    def fill(self, css, text):
        """Writes into a field."""
        self.click(css) if Page.mouse else self.reach(css)
        self.keys([CONTROL, "a"])
        for line in text.splitlines(keepends=True):
            self.keys(*line.replace("\n", ENTER))

    def choose(self, css, value):
        """Chooses from a list, by its arrow keys."""
        if Page.mouse:
            self.click(css)
            self.script("document.querySelector(arguments[0]).focus()", css)
            self.keys(ESCAPE)
        else:
            self.reach(css)
        steps = self.script("""const [list, value] = [document.querySelector(arguments[0]), arguments[1]];
          return [...list.options].findIndex((each) => each.value === value) - list.selectedIndex""", css, value)
        self.keys(*[DOWN if steps > 0 else UP] * abs(steps))

    def cell(self, number, longer=False):
        """Chooses a mark of the sheet; with "longer" a stretch up to it."""
        if Page.mouse:
            self.script("window.matraloom.sheet.marks()[arguments[0]].element.scrollIntoView({block: 'center'})", number)
            origin = self.wait_script("arguments[1](window.matraloom.sheet.marks()[arguments[0]].element)", number)
            press = [{"type": "pointerMove", "origin": origin, "x": 0, "y": 0}, {"type": "pointerDown", "button": 0},
                     {"type": "pointerUp", "button": 0}]
            shift = [{"type": "keyDown" if longer else "pause", **({"value": SHIFT} if longer else {"duration": 0})}]
            release = [{"type": "keyUp", "value": SHIFT}] if longer else []
            self.call("POST", "/actions", {"actions": [
                {"type": "key", "id": "k", "actions": shift + [{"type": "pause", "duration": 0}] * 3 + release},
                {"type": "pointer", "id": "p", "actions": [{"type": "pause", "duration": 0}] + press}]})
            return
        self.reach("#rows")
        at = (self.script("return window.matraloom.sheet.chosen()") or [-1, -1])[1 if longer else 0]
        if at < 0:
            self.keys(RIGHT)
            at = 0
        step = [[SHIFT, RIGHT]] if longer else [RIGHT] if number > at else [LEFT]
        self.keys(*step * abs(number - at))
        if not longer:
            self.keys(ENTER)

    def file(self, css, path):
        """Gives a file; the browser's own window for it cannot be shown without a screen."""
        if not Page.mouse:
            self.reach(css)
        self.call("POST", f"/element/{self.element(css)}/value", {"text": path})

    def text(self, css):
        return self.script("return document.querySelector(arguments[0])?.innerText ?? ''", css)

    def keys(self, *keys):
        """Presses keys one after another; a list is pressed together."""
        actions = []
        for key in keys:
            chord = key if isinstance(key, list) else [key]
            actions += [{"type": "keyDown", "value": one} for one in chord]
            actions += [{"type": "keyUp", "value": one} for one in reversed(chord)]
        self.call("POST", "/actions", {"actions": [{"type": "key", "id": "k", "actions": actions}]})

    def picture(self, path):
        with open(path, "wb") as file:
            file.write(base64.b64decode(self.call("GET", "/screenshot")))

    def faults(self):
        return [each["message"] for each in self.call("POST", "/se/log", {"type": "browser"})
                if each["level"] == "SEVERE"]

    def close(self):
        try:
            self.call("DELETE", "")
        finally:
            self.driver.terminate()
            self.driver.wait()

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.close()


def enter(page, program):
    page.open(program.address)
    page.until("document.getElementById('main')?.dataset.ready !== undefined")


def show(page, name):
    page.script("location.hash = '#score/' + arguments[0]", name)
    page.until("document.querySelector('#sheet')?.dataset.drawn && document.querySelector('#landing').textContent")


def write(page, text):
    """Puts a text into the editor: all is selected, and this is pasted over it."""
    page.click(".cm-content .cm-line" if Page.mouse else ".cm-content")
    page.keys([CONTROL, "a"])
    page.script("""const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', arguments[0]);
      document.querySelector('.cm-content').dispatchEvent(
        new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }))""", text)


def tab_to(page, css):
    """Goes to an element by the tabulator alone; whether it came there."""
    try:
        page.reach(css)
    except RuntimeError as lost:
        print(f"# {lost}")
        return False
    return True
