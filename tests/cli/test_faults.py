#!/usr/bin/env python3
"""Disks that fail and runs that are killed: the old file is whole or the new one is, and nothing is left lying about."""

import errno
import os
import random
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


class Faults(unittest.TestCase):
    def setUp(self):
        scratch = tempfile.TemporaryDirectory()
        self.addCleanup(scratch.cleanup)
        self.here = Path(scratch.name)

    def command(self, *more):
        return [PROGRAM, "render", "hang-tag", str(STUDIO), "--only", "26-117", "-o", "tags.pdf", *more]

    def run_it(self, *more, **environment):
        return subprocess.run(
            self.command("--date", "2026-11-20", *more),
            cwd=self.here,
            env={**os.environ, **environment},
            capture_output=True,
            text=True,
            check=False,
            timeout=120,
        )

    def names(self):
        return sorted(path.name for path in self.here.iterdir())


class FailingDisk(Faults):
    def fail(self, call, error):
        return self.run_it(
            LD_PRELOAD=FAILING_DISK,
            FAILING_CALL=call,
            FAILING_ERROR=str(error),
            FAILING_PART="tags.pdf",
            ASAN_OPTIONS=os.environ.get("ASAN_OPTIONS", "") + ":verify_asan_link_order=0",
        )

    def test_the_disk_itself_works(self):
        done = self.fail("none", errno.ENOSPC)
        self.assertEqual(done.returncode, 0, done.stderr)

    def test_every_call_that_fails_is_told_and_the_old_file_stays(self):
        self.assertEqual(self.run_it().returncode, 0)
        old = (self.here / "tags.pdf").read_bytes()
        said = {
            errno.ENOSPC: "the disk is full",
            errno.EDQUOT: "the disk is full",
            errno.EACCES: "you may not write into the folder",
            errno.EROFS: "the folder is on a disk that can only be read",
            errno.EIO: os.strerror(errno.EIO),
        }
        for call in ("open", "write", "fsync", "close", "rename", "fchmod"):
            for error, words in said.items():
                with self.subTest(call=call, error=errno.errorcode[error]):
                    done = self.fail(call, error)
                    self.assertEqual(done.returncode, 1, done.stderr)
                    self.assertIn("cannot write “tags.pdf”: " + words, done.stderr)
                    self.assertEqual((self.here / "tags.pdf").read_bytes(), old)
                    self.assertEqual(self.names(), ["tags.pdf"])

    def test_a_disk_that_fails_leaves_no_new_file(self):
        for call in ("open", "write", "fsync", "close", "rename"):
            with self.subTest(call=call):
                self.assertEqual(self.fail(call, errno.ENOSPC).returncode, 1)
                self.assertEqual(self.names(), [])


class Killed(Faults):
    def test_killed_at_any_moment_the_old_or_the_new_file_is_whole(self):
        self.assertEqual(self.run_it().returncode, 0)
        old = (self.here / "tags.pdf").read_bytes()
        begun = time.monotonic()
        self.assertEqual(self.run_it("--mono").returncode, 0)
        whole_run = time.monotonic() - begun
        new = (self.here / "tags.pdf").read_bytes()
        self.assertNotEqual(old, new)

        moments = random.Random(20261128)
        killed = 0
        for _ in range(50):
            (self.here / "tags.pdf").write_bytes(old)
            process = subprocess.Popen(
                self.command("--date", "2026-11-20", "--mono"),
                cwd=self.here,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.DEVNULL,
            )
            time.sleep(moments.uniform(0, whole_run * 1.1))
            process.send_signal(signal.SIGKILL)
            killed += process.wait() == -signal.SIGKILL
            self.assertIn((self.here / "tags.pdf").read_bytes(), (old, new))
        self.assertGreaterEqual(killed, 20)

        self.assertEqual(self.run_it("--mono").returncode, 0)
        self.assertEqual(self.names(), ["tags.pdf"])
        self.assertEqual((self.here / "tags.pdf").read_bytes(), new)

    def test_what_a_killed_run_left_is_cleared_away_by_the_next(self):
        gone = subprocess.Popen(["true"])
        gone.wait()
        (self.here / f".tags.pdf.dyeleaf-tmp-{gone.pid}").write_bytes(b"half of it")
        (self.here / f".tags.pdf.dyeleaf-tmp-{os.getpid()}").write_bytes(b"somebody is at work on it")
        self.assertEqual(self.run_it().returncode, 0)
        self.assertEqual(self.names(), [f".tags.pdf.dyeleaf-tmp-{os.getpid()}", "tags.pdf"])


if __name__ == "__main__":
    unittest.main()
