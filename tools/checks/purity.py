"""The object files of pure folders ask the system for nothing: no file, clock, thread, locale.

A rule that reads a clock gives two answers to the same question; nm shows what the sources hide.
"""

import re
import subprocess
from pathlib import Path

PURE = ("base", "trade", "log", "exchange", "herd", "trim", "rounds", "teach", "money", "sheets",
        "paper", "ports", "api")
# Undefined symbols (demangled, without version) that no pure object may have.
BANNED = re.compile(
    r"^(?:open|open64|openat|creat|fopen|fopen64|read|write|unlink|rename|stat|mkdir|system|popen"
    r"|socket|connect|bind|accept|send|recv|getaddrinfo"
    r"|clock|clock_gettime|gettimeofday|time|localtime|localtime_r|mktime|strftime|nanosleep"
    r"|rand|srand|random|srandom|drand48|getrandom|arc4random"
    r"|getenv|secure_getenv|setenv|getpid|pthread_create|setlocale|newlocale|uselocale"
    r"|printf|puts|putchar|scanf"
    r"|std::chrono::.*::now\(\)|std::thread::.*|std::random_device::.*|std::locale::.*"
    r"|std::basic_(?:i|o|)(?:f|string)stream.*|std::cout|std::cerr|std::cin"
    r"|std::ios_base::Init::.*)$")


def banned_in(nm_lines):
    """The banned symbols among lines of `nm -C -u`."""
    symbols = (line.strip().removeprefix("U ").removeprefix("w ").strip() for line in nm_lines)
    names = (re.sub(r"@.*$", "", symbol) for symbol in symbols)
    return sorted({name for name in names if BANNED.match(name)})


def objects(build):
    for folder in PURE:
        yield from sorted(Path(build).glob(f"CMakeFiles/evenclaw_core_{folder}.dir/**/*.o"))


def violations(build):
    found = []
    for path in objects(build):
        listing = subprocess.run(["nm", "-C", "-u", str(path)], check=True, capture_output=True,
                                 text=True).stdout
        source = str(path.relative_to(build)).split(".dir/", 1)[1].removesuffix(".o")
        found += [f"{source}:1: calls {name}" for name in banned_in(listing.splitlines())]
    return found
