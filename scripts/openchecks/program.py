"""Matraloom open on a folder."""

import os
import signal
import subprocess
import time

from .work import WORK, slack


class Program:
    """Matraloom open on a folder, with its files of the user in the work folder."""

    def __init__(self, folder):
        self.folder = folder
        os.makedirs(folder, exist_ok=True)
        self.start()

    def start(self):
        begun = time.monotonic()
        self.process = subprocess.Popen(
            ["./matraloom", "open", self.folder, "--no-browser"], stdout=subprocess.PIPE, text=True,
            env={**os.environ, "XDG_DATA_HOME": os.path.join(WORK, "data"), "XDG_STATE_HOME": os.path.join(WORK, "state")})
        self.process.stdout.readline()
        self.address = self.process.stdout.readline().strip()
        self.seconds = time.monotonic() - begun

    def next_address(self):
        """The address for one more page, which is printed when the one before was used."""
        for line in self.process.stdout:
            if line.startswith("For one more page: "):
                return line.split(": ")[1].strip()
        return ""

    def kill(self):
        self.process.send_signal(signal.SIGKILL)
        self.process.wait()

    def end(self):
        self.process.send_signal(signal.SIGINT)
        return self.process.wait(timeout=15 * slack())

    def processor_seconds(self):
        """What the program has used of the processors since it was begun (proc(5): utime to cstime)."""
        with open(f"/proc/{self.process.pid}/stat", encoding="ascii") as stat:
            return sum(map(int, stat.read().rsplit(")", 1)[1].split()[11:15])) / os.sysconf("SC_CLK_TCK")

    def path(self, name):
        return os.path.join(self.folder, name)

    def text(self, name):
        with open(self.path(name), encoding="utf-8") as file:
            return file.read()

    def __enter__(self):
        return self

    def __exit__(self, *_):
        if self.process.poll() is None:
            self.process.terminate()
            self.process.wait(timeout=60)
