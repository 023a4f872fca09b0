"""A disk that is full: what was there stays, nothing is left behind, and it is said in a sentence."""
import os
import subprocess

from placetrials.commands import TRACE, Tally, go, tree


def trials(stage, random, count):
    """Needs a mount namespace of its own (unshare -m), in which a small tmpfs is mounted."""
    tally = Tally("full disk")
    disk = stage.at("disk")
    os.makedirs(disk, exist_ok=True)
    for _ in range(count):
        for name, command in {**stage.files(), **stage.folders()}.items():
            subprocess.run(["mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", disk], check=True)
            try:
                one(tally, random, disk, name, command, name in stage.folders())
            finally:
                subprocess.run(["umount", "-l", disk], check=True)
    logs(tally, random, stage, disk, count)
    tally.told()


def one(tally, random, disk, name, command, is_folder):
    target = os.path.join(disk, name)
    if not is_folder:
        with open(target, "w") as old:
            old.write("what was there")
    free = fill(disk, random.choice([0, 4096, random.randrange(65536), random.randrange(1 << 20)]))
    before = tree(disk)
    code, _, err = go(command, target)
    after = tree(disk)
    told = "%s, %d bytes free: exit %d, %s" % (name, free, code, err.strip()[:300])
    tally.note("written" if code == 0 else "refused")
    tally.held(not TRACE.search(err), told)
    if code == 0:
        tally.held(after.get(name) != before.get(name) or is_folder, told + "; nothing was written")
    else:
        left = [each for each in after if each not in before and (each.endswith(".part") or not is_folder)]
        tally.held(code in (2, 3) and err.startswith("matraloom: ") and "pace" in err, told)
        tally.held(not left and all(after.get(each) == before[each] for each in before), told + "; left: %s" % left)


def logs(tally, random, stage, disk, count):
    """A record that does not fit: the log is what it was."""
    for _ in range(3 * count):
        subprocess.run(["mount", "-t", "tmpfs", "-o", "size=2m", "tmpfs", disk], check=True)
        try:
            log = os.path.join(disk, "practice.jsonl")
            with open(stage.log, "rb") as first, open(log, "wb") as copy:
                # To the last byte of a page, so that one more needs another.
                record = first.read()
                copy.write(record * (4096 // len(record)))
            fill(disk, 0)
            before = tree(disk)["practice.jsonl"]
            added = 0
            code = 0
            while code == 0 and added < 40:
                code, _, err = go(("log", "add", "Tin Roof", "--tempo", "60", "--log-file", "{}"), log)
                added += code == 0
            after = tree(disk)["practice.jsonl"]
            told = "log: %d added, then exit %d, %s" % (added, code, err.strip()[:300])
            tally.held(code in (2, 3) and not TRACE.search(err), told)
            tally.held(after.startswith(before) and after.endswith(b"\n")
                       and after.count(b"\n") == before.count(b"\n") + added, told + "; the log is torn")
            shown, _, err = go(("log", "--log-file", "{}", "--json"), log)
            tally.held(shown == 0 and "cannot be read" not in err, "log after a full disk: " + err)
        finally:
            subprocess.run(["umount", "-l", disk], check=True)


def fill(disk, leave):
    """Fills the disk but for some bytes, and gives how many are free."""
    filler = os.open(os.path.join(disk, "filler"), os.O_CREAT | os.O_WRONLY)
    try:
        while os.write(filler, b"\0" * 4096):
            pass
    except OSError:
        os.close(filler)
    size = os.path.getsize(os.path.join(disk, "filler"))
    os.truncate(os.path.join(disk, "filler"), max(0, size - leave) // 4096 * 4096)
    space = os.statvfs(disk)
    return space.f_bavail * space.f_frsize
