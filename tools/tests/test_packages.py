import os
import subprocess
import tempfile
import unittest
from pathlib import Path

PACKAGES = Path(__file__).resolve().parent.parent / "packages.sh"
# dpkg-query knows g++ only, and fails because it was asked for more; apt-get writes down its words.
STANDINS = {"dpkg-query": 'echo "g++ ii "; exit 1\n', "apt-get": 'echo "$*" >>"$HOME/asked"\n',
            "sudo": '"$@"\n', "id": "echo 0\n"}


class Packages(unittest.TestCase):
    def need(self, *packages):
        """What is said, and what apt-get is asked, when these are needed under `set -e`."""
        with tempfile.TemporaryDirectory() as home:
            for name, script in STANDINS.items():
                file = Path(home) / name
                file.write_text("#!/bin/sh\n" + script)
                file.chmod(0o755)
            said = subprocess.run(
                ["bash", "-c", 'set -euo pipefail; . "$0"; need_packages "to build" no "$@"',
                 str(PACKAGES), *packages],
                env={"PATH": f"{home}:{os.environ['PATH']}", "HOME": home, "CI": "true"},
                stdin=subprocess.DEVNULL, capture_output=True, text=True, check=True).stdout
            asked = Path(home) / "asked"
            return said, asked.read_text() if asked.exists() else ""

    def test_what_is_missing_is_said_and_installed_and_nothing_else(self):
        said, asked = self.need("g++", "ninja-build", "cmake")
        self.assertIn("ninja-build cmake", said)
        self.assertIn("install", asked)
        self.assertIn("ninja-build cmake", asked)
        self.assertNotIn("g++", asked)

    def test_nothing_is_said_or_asked_when_all_is_there(self):
        self.assertEqual(self.need("g++"), ("", ""))
