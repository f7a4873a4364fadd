#!/usr/bin/env python3
"""Disks that fail and runs that are killed: the old file is whole or the new one is, and nothing is left lying about."""

import errno
import os
import random
import resource
import shutil
import signal
import subprocess
import tempfile
import time
import unittest
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
PROGRAM = os.environ.get("DYELEAF", str(ROOT / "build" / "dyeleaf"))
FAILING_DISK = os.environ.get("FAILING_DISK", str(ROOT / "build" / "tests" / "failing_disk.so"))
STUDIO = ROOT / "examples" / "studio"
DAY = ("--date", "2026-11-20")
CALLS = ("open", "write", "fsync", "close", "rename")

TAGS = ("render", "hang-tag", "studio", "--only", "26-117", *DAY)
# Every command that writes, by the file it writes.
WRITING = {
    "tags.pdf": (*TAGS, "-o", "tags.pdf"),
    "tags-1.png": (*TAGS, "-o", "tags.png", "--dpi", "50"),
    "tags-1.svg": (*TAGS, "-o", "tags.svg"),
    "measure.pdf": ("measure", "studio", "-o", "measure.pdf"),
    "stocks.pdf": ("stocks", "studio", "-o", "stocks.pdf"),
    "studio/printed.txt": (*TAGS, "-o", "tags.pdf", "--remember"),
}


class Faults(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)
        shutil.copytree(STUDIO, self.here / "studio")
        self.records = self.names()

    def run_it(self, *words, **more):
        return subprocess.run(
            [PROGRAM, *words], cwd=self.here, capture_output=True, text=True, check=False, timeout=120, **more
        )

    def works(self, *words):
        done = self.run_it(*words)
        self.assertEqual(done.returncode, 0, done.stderr)

    def with_disk(self, part, words, **faults):
        """A run on a disk that has these faults with files whose name has this part."""
        disk = {
            "LD_PRELOAD": FAILING_DISK,
            "FAILING_PART": part,
            "ASAN_OPTIONS": os.environ.get("ASAN_OPTIONS", "") + ":verify_asan_link_order=0",
        }
        return self.run_it(*words, env={**os.environ, **disk, **{name: str(value) for name, value in faults.items()}})

    def run_failing(self, call, error, part, *words):
        """A run in which one kind of call fails."""
        return self.with_disk(part, words, FAILING_CALL=call, FAILING_ERROR=error)

    def content(self, name):
        return (self.here / name).read_bytes()

    def names(self):
        return sorted(str(path.relative_to(self.here)) for path in self.here.rglob("*") if path.is_file())

    def added(self):
        return sorted(set(self.names()) - set(self.records))


class FailingDisk(Faults):
    def test_the_disk_itself_works(self):
        done = self.run_failing("none", errno.ENOSPC, "tags.pdf", *WRITING["tags.pdf"])
        self.assertEqual(done.returncode, 0, done.stderr)

    def test_every_error_is_told_in_plain_words(self):
        self.works(*WRITING["measure.pdf"])
        old = self.content("measure.pdf")
        said = {
            errno.ENOSPC: "the disk is full",
            errno.EDQUOT: "the disk is full",
            errno.EACCES: "you may not write into the folder",
            errno.EROFS: "the folder is on a disk that can only be read",
            errno.EIO: os.strerror(errno.EIO),
        }
        for call in (*CALLS, "fchmod"):
            for error, words in said.items():
                with self.subTest(call=call, error=errno.errorcode[error]):
                    done = self.run_failing(call, error, "measure.pdf", *WRITING["measure.pdf"])
                    self.assertEqual(done.returncode, 1, done.stderr)
                    self.assertIn("cannot write “measure.pdf”: " + words, done.stderr)
                    self.assertEqual(self.content("measure.pdf"), old)
                    self.assertEqual(self.added(), ["measure.pdf"])

    def test_every_file_that_cannot_be_written_is_named_and_leaves_nothing(self):
        for name, words in WRITING.items():
            for call in CALLS:
                with self.subTest(name=name, call=call):
                    done = self.run_failing(call, errno.ENOSPC, Path(name).name, *words)
                    self.assertEqual(done.returncode, 1, done.stderr)
                    self.assertIn(f"cannot write “{name}”: the disk is full", done.stderr)
                    self.assertNotIn(f"wrote {name}", done.stdout)
                    self.assertNotIn("remembered", done.stdout)
                    # Papers are printed before they are noted as printed.
                    papers = ["tags.pdf"] if name == "studio/printed.txt" else []
                    self.assertEqual(self.added(), papers)
                    for paper in papers:
                        (self.here / paper).unlink()

    def test_a_new_studio_is_there_whole_or_not_at_all(self):
        for call in CALLS:
            with self.subTest(call=call):
                done = self.run_failing(call, errno.ENOSPC, "my-studio", "new", "my-studio")
                self.assertEqual(done.returncode, 1, done.stderr)
                self.assertRegex(done.stderr, "cannot write “my-studio/.*”: the disk is full")
                self.assertNotIn("Made", done.stdout)
                self.assertEqual(sorted(os.listdir(self.here)), ["studio"])
        (self.here / "my-studio").mkdir()
        done = self.run_failing("write", errno.ENOSPC, "my-studio", "new", "my-studio")
        self.assertEqual(done.returncode, 1, done.stderr)
        self.assertEqual(os.listdir(self.here / "my-studio"), [])

    def test_a_folder_that_does_not_keep_a_name_is_told_of(self):
        for name, words in WRITING.items():
            with self.subTest(name=name):
                done = self.run_failing("fsync folder", errno.EIO, self.here.name, *words)
                self.assertEqual(done.returncode, 1, done.stderr)
                first = "tags.pdf" if name == "studio/printed.txt" else name  # and after it nothing is remembered
                self.assertIn(f"the disk does not say that it will keep “{first}”: Input/output error", done.stderr)
                self.assertNotIn("remembered", done.stdout)
                self.assertEqual(self.added(), [first])
                broken = self.content(first)
                self.works(*words)
                self.assertEqual(self.content(first), broken)
                for made in self.added():
                    (self.here / made).unlink()
                done = self.run_failing("fsync folder", errno.EINVAL, self.here.name, *words)  # cannot be asked for it
                self.assertEqual(done.returncode, 0, done.stderr)
                for made in self.added():
                    (self.here / made).unlink()
        done = self.run_failing("fsync folder", errno.EIO, self.here.name, "new", "my-studio")
        self.assertEqual(done.returncode, 1, done.stderr)
        self.assertRegex(done.stderr, "the disk does not say that it will keep “my-studio/.*”")
        self.assertNotIn("Made", done.stdout)
        self.assertEqual(self.added(), [])

    def test_a_folder_in_the_way_is_told_of(self):
        for name, words in WRITING.items():
            with self.subTest(name=name):
                (self.here / name).unlink(missing_ok=True)
                (self.here / name).mkdir()
                done = self.run_it(*words)
                self.assertEqual(done.returncode, 1, done.stderr)
                self.assertIn(name, done.stderr)
                (self.here / name).rmdir()

    def test_a_file_larger_than_allowed_is_told_of(self):
        limit = lambda: resource.setrlimit(resource.RLIMIT_FSIZE, (1000, 1000))
        done = self.run_it(*WRITING["tags.pdf"], preexec_fn=limit)
        self.assertEqual(done.returncode, 1, done.stderr)
        self.assertIn("cannot write “tags.pdf”: the file would be larger than this computer allows", done.stderr)
        self.assertEqual(self.added(), [])


class Said(Faults):
    """What is shown is written as well."""

    def test_a_full_disk_behind_the_output_is_told_of(self):
        for words in (
            ("check", "studio", *DAY),
            ("list", "studio"),
            ("facts", "studio", "sloe", *DAY),
            ("lot", "studio", *DAY),
            ("near", "studio", "sloe"),
            ("compare", "studio"),
            ("proof", "hang-tag", "studio", "--only", "26-117", *DAY),
            ("layouts",),
            ("stocks",),
            ("--help",),
            WRITING["measure.pdf"],
        ):
            with self.subTest(words=words), open("/dev/full", "w", encoding="utf-8") as full:
                done = subprocess.run(
                    [PROGRAM, *words], cwd=self.here, stdout=full, stderr=subprocess.PIPE, text=True, check=False, timeout=60
                )
                self.assertEqual(done.returncode, 1, done.stderr)
                self.assertIn("not all that was to be shown could be written", done.stderr)

    def test_closed_outputs_do_not_end_up_in_the_paper(self):
        self.works(*WRITING["tags.pdf"])
        whole = self.content("tags.pdf")
        words = [PROGRAM, *WRITING["tags.pdf"]]
        done = subprocess.run(["sh", "-c", '"$@" <&- >&- 2>&-', "sh", *words], cwd=self.here, check=False, timeout=60)
        self.assertEqual(done.returncode, 0)
        self.assertEqual(self.content("tags.pdf"), whole)


class Killed(Faults):
    def killed_at_any_moment(self, times, words, check):
        """`check` looks at what each of so many runs left that were killed, and at what those left that were too fast."""
        begun = time.monotonic()
        self.works(*words)
        longest = time.monotonic() - begun
        check()
        moments = random.Random(20261128)
        killed = 0
        while killed < times:
            moment = moments.uniform(0, longest)
            process = subprocess.Popen(
                [PROGRAM, *words], cwd=self.here, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL
            )
            time.sleep(moment)
            process.send_signal(signal.SIGKILL)
            if process.wait() == -signal.SIGKILL:
                killed += 1
            else:
                longest = moment
            check()

    def killed_at_every_call(self, part, words, check):
        """As many runs as one makes calls that write, each killed before another call than the last."""
        killed = 0
        while True:
            done = self.with_disk(part, words, KILLED_AT=killed + 1)
            if done.returncode != -signal.SIGKILL:
                break
            killed += 1
            check()
        self.assertEqual(done.returncode, 0, done.stderr)
        self.assertGreaterEqual(killed, len(CALLS))
        check()

    def test_the_old_or_the_new_file_is_whole(self):
        for name, words in WRITING.items():
            with self.subTest(name=name):
                self.works(*words)
                new = self.content(name)
                old = b"" if name.endswith(".txt") else b"what was there before\n"  # the note keeps what it had

                def check():
                    self.assertIn(self.content(name), (old, new))
                    (self.here / name).write_bytes(old)

                (self.here / name).write_bytes(old)
                self.killed_at_every_call(Path(name).name, words, check)
                self.killed_at_any_moment(50 if name == "tags.pdf" else 10, words, check)
                self.works(*words)
                self.assertEqual([other for other in self.names() if "dyeleaf-tmp" in other], [])

    def test_a_new_studio_is_there_whole_or_not_at_all(self):
        self.works("new", "whole")
        files = lambda studio: {path.name: path.read_bytes() for path in studio.iterdir()}
        whole = files(self.here / "whole")

        def check():
            studio = self.here / "my-studio"
            if studio.exists():
                self.assertEqual(files(studio), whole)
                shutil.rmtree(studio)

        self.killed_at_every_call("my-studio", ("new", "my-studio"), check)
        self.killed_at_any_moment(20, ("new", "my-studio"), check)
        self.works("new", "my-studio")
        self.assertEqual(sorted(os.listdir(self.here)), ["my-studio", "studio", "whole"])

    def test_what_a_killed_run_left_is_cleared_away_by_the_next(self):
        gone = subprocess.Popen(["true"])
        gone.wait()
        for name, words in {**WRITING, "my-studio": ("new", "my-studio")}.items():
            with self.subTest(name=name):
                folder, base = (self.here / name).parent, Path(name).name
                if name == "my-studio":
                    (folder / f".{base}.dyeleaf-tmp-{gone.pid}").mkdir()
                    (folder / f".{base}.dyeleaf-tmp-{gone.pid}" / "dyes.yaml").write_bytes(b"half of it")
                else:
                    (folder / f".{base}.dyeleaf-tmp-{gone.pid}").write_bytes(b"half of it")
                busy = folder / f".{base}.dyeleaf-tmp-{os.getpid()}"
                busy.write_bytes(b"somebody is at work on it")
                self.works(*words)
                self.assertEqual([path for path in self.here.rglob("*") if "dyeleaf-tmp" in str(path)], [busy])
                busy.unlink()

    def test_a_studio_half_moved_into_an_empty_folder_is_cleared_away(self):
        gone = subprocess.Popen(["true"])
        gone.wait()
        left = self.here / "my-studio" / f".studio.dyeleaf-tmp-{gone.pid}"
        left.mkdir(parents=True)
        (left / "dyes.yaml").write_bytes(b"half of it")
        self.works("new", "my-studio")
        self.assertEqual([path for path in (self.here / "my-studio").iterdir() if path.name.startswith(".")], [])


if __name__ == "__main__":
    unittest.main()
