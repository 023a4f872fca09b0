"""What the scripts that sit at a rig of scripts/live-rig share: an ear at a sink, and a mouth that speaks in time."""
import array
import fcntl
import math
import subprocess
import threading
import time

RATE = 48000
LOUD = 300
QUIET = RATE // 4
F_SETPIPE_SZ = 1031


class Monitor(threading.Thread):
    """Listens to a sink: which frame was heard when, and where sound begins after quiet."""

    def __init__(self, sink):
        super().__init__(daemon=True)
        self.process = subprocess.Popen(
            ["parec", "--raw", "--format=s16le", f"--rate={RATE}", "--channels=1", "--latency-msec=10",
             f"--device={sink}.monitor"], stdout=subprocess.PIPE, bufsize=0)
        self.frames, self.zero, self.quiet, self.begins = 0, math.inf, 0, []
        self.start()

    def run(self):
        while True:
            data = self.process.stdout.read(960)
            if not data:
                return
            samples = array.array("h", data[:len(data) // 2 * 2])
            arrived = time.monotonic()
            if max(samples) < LOUD and min(samples) > -LOUD:
                self.quiet += len(samples)
            else:
                if self.quiet >= QUIET:
                    at = next(at for at, sample in enumerate(samples) if not -LOUD < sample < LOUD)
                    self.begins.append(self.frames + at)
                self.quiet = 0
            self.frames += len(samples)
            self.zero = min(self.zero, arrived - self.frames / RATE)

    def begin_after(self, frame, seconds):
        """The first sound that begins after a frame; waits so long for it."""
        end = time.monotonic() + seconds
        while time.monotonic() < end:
            later = [begin for begin in self.begins if begin > frame]
            if later:
                return later[0]
            time.sleep(0.02)
        return None


class Mouth(threading.Thread):
    """Plays silence to the sink of the microphone, and what is to be said where it is to be said."""

    def __init__(self):
        super().__init__(daemon=True)
        self.process = subprocess.Popen(
            ["pacat", "--playback", "--raw", "--format=s16le", f"--rate={RATE}", "--channels=1",
             "--latency-msec=40", "--device=mouth"], stdin=subprocess.PIPE, bufsize=0)
        fcntl.fcntl(self.process.stdin.fileno(), F_SETPIPE_SZ, 4096)
        self.written, self.speech, self.lock = 0, [], threading.Lock()
        self.start()

    def say(self, frame, samples):
        with self.lock:
            self.speech = [(frame, samples)]
            return frame > self.written

    def run(self):
        block = RATE // 100
        try:
            while True:
                out = array.array("h", bytes(2 * block))
                with self.lock:
                    for frame, samples in self.speech:
                        begin = max(0, frame - self.written)
                        end = min(block, frame + len(samples) - self.written)
                        if begin < end:
                            out[begin:end] = samples[begin + self.written - frame:end + self.written - frame]
                    self.written += block
                self.process.stdin.write(out.tobytes())
        except (BrokenPipeError, ValueError):
            return


def find_offset(ear, mouth):
    """Frames written to the mouth against frames heard from it, by a click; none if it is not heard."""
    time.sleep(1.5)
    before = ear.frames
    click = mouth.written + RATE
    mouth.say(click, array.array("h", [20000] * 20))
    heard = ear.begin_after(before, 5)
    return None if heard is None else click - heard
