"""Files short enough to be read in one sitting. Functions are measured by clang-tidy."""

import project

COLUMNS = 100
TEST_LINES = 600
LINES = {".hpp": 300, ".cpp": 500, ".py": 300, ".sh": 300, ".cmake": 200, ".ts": 300, ".tsx": 300}


def limit(path):
    if path.startswith("tests/") and path.endswith(".cpp"):
        return TEST_LINES
    return next((most for suffix, most in LINES.items() if path.endswith(suffix)), None)


def violations(root):
    found = []
    for path in project.files(root, LINES):
        lines = project.text(root, path).splitlines()
        if len(lines) > limit(path):
            found.append(f"{path}:{limit(path) + 1}: {len(lines)} lines, at most {limit(path)}")
        found += [f"{path}:{number}: {len(line)} columns, at most {COLUMNS}"
                  for number, line in enumerate(lines, 1) if len(line) > COLUMNS]
    return found
