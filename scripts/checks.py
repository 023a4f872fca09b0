"""What the checks in this folder share: lines of "ok" and "not ok", the program, sound files."""
import array
import csv
import io
import os
import shutil
import subprocess
import sys
import tempfile
import wave

HERE = os.path.dirname(os.path.dirname(os.path.abspath(__file__)))
PROGRAM = os.environ.get("MATRALOOM_PROGRAM") or os.path.join(HERE, "matraloom")
JAR = os.path.join(HERE, "target", "matraloom.jar")
SAMPLES = os.path.join(HERE, "samples-synth")

failures = 0


def report(good, text):
    """Prints one line of the result, with what was measured."""
    global failures
    failures += not good
    print(("ok - " if good else "not ok - ") + text, flush=True)


def complaints(text):
    """What the program complained of, a line each; a long one goes on in lines that begin with two spaces."""
    return text.strip().replace("\n  ", " ").splitlines()


def exit_code():
    """1 if anything was not ok."""
    return 1 if failures else 0


def work_folder():
    """Where files of a run go: the folder of scripts/crosscheck, or one of its own."""
    return os.environ.get("CROSSCHECK_WORK") or tempfile.mkdtemp()


def tried(*command, **options):
    """A command that was run in the root of the project: its code and what it printed."""
    return subprocess.run(command, capture_output=True, text=True, cwd=HERE, **options)


def run(*command, **options):
    """What a command prints; RuntimeError with what it said where it fails."""
    done = tried(*command, **options)
    if done.returncode != 0:
        raise RuntimeError(f"{' '.join(command)}: {done.stderr.strip()}")
    return done.stdout


def need(*tools):
    """Ends the script where a tool is missing."""
    for tool in tools:
        if not shutil.which(tool):
            sys.exit(f"not ok - {tool} is not installed")


def end_with(work):
    """Does the work and ends the script; a command that fails in it is one more line that is not ok."""
    try:
        work()
    except RuntimeError as problem:
        report(False, str(problem))
    sys.exit(exit_code())


def matraloom(*arguments):
    return run(PROGRAM, *arguments)


def events(score, *options):
    """The rows of "events" as dictionaries."""
    return list(csv.DictReader(io.StringIO(matraloom("events", score, "--csv", *options))))


def read_wav(path):
    """Frames a second, and samples of 16 bits."""
    with wave.open(path, "rb") as sound:
        samples = array.array("h")
        samples.frombytes(sound.readframes(sound.getnframes()))
        return sound.getframerate(), samples


def write_wav(path, rate, samples):
    """Writes one channel of 16 bits; what is too loud is cut off."""
    whole = array.array("h", (max(-32768, min(32767, round(sample))) for sample in samples))
    with wave.open(path, "wb") as sound:
        sound.setnchannels(1)
        sound.setsampwidth(2)
        sound.setframerate(rate)
        sound.writeframes(whole.tobytes())
