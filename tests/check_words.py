#!/usr/bin/env python3
"""Every word that prints comes from a language's file: what the program says stands in English, what stands in English is
said somewhere, and the bundled layouts hold no words of their own."""

import pathlib
import re
import sys

root = pathlib.Path(__file__).resolve().parent.parent
problems = []


def phrases(path):
    """The keys of a file of phrases, read simply: two spaces a level, one key a line, lists in brackets."""
    keys, heads = [], []
    for line in path.read_text(encoding="utf-8").splitlines():
        found = re.match(r'( *)([^#:"]+):(?: +(.*))?$', line)
        if not found:
            continue
        depth, name, rest = len(found[1]) // 2, found[2], found[3] or ""
        heads[depth:] = [name]
        key = ".".join(heads[: depth + 1])
        if rest and not rest.startswith("#"):
            keys.append(key)
    return [key for key in keys if key != "language"]


english = phrases(root / "layouts/languages/en.yaml")
if len(english) < 100:
    problems.append(f"only {len(english)} phrases found: the check itself is broken")

source = "\n".join(path.read_text(encoding="utf-8") for path in sorted((root / "src").rglob("*.cpp")))
# Whole keys in quotes; and the beginnings of those that are put together, as in "care." + key.
said = set(re.findall(r'"([a-z][A-Za-z ]*(?:\.[A-Za-z0-9 ]+)+)"', source))
begun = tuple(re.findall(r'"([a-z ]+\.(?:[a-z ]+\.)?)"', source))
words = re.search(r"words_beside\{(.*?)\};", source, re.S)[1]
said |= {"words." + word.replace("_", " ") for word in re.findall(r'"(\w+)"', words)}
# Lists, whose items are numbered: "dates.months" + "." + number.
for key in english:
    if key not in said and not (key + ".").startswith(begun):
        problems.append(f"the phrase “{key}” is never said")
for key in sorted(said):
    head = key.split(".")[0]
    is_phrase = any(other.split(".")[0] == head for other in english)
    call = re.search(r'(?:say|has|only_if|with_note)\([^"\n]*"' + re.escape(key) + '"', source)
    if call and is_phrase and key not in english:
        problems.append(f"“{key}” is said, but is no phrase")

for path in sorted((root / "layouts").glob("*.yaml")):
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
        for text in re.findall(r'\b(?:text|else|alt): ("[^"]*"|[^,}]+)', line):
            if re.search(r"[^\W\d_]{2}", re.sub(r"\{[^}]*\}", "", text)):
                problems.append(f"{path.name}:{number}: words of the layout's own: {text}")

# Every other language must have all that English has, save texts that stand in no source at hand.
for path in sorted((root / "layouts/languages").glob("*.yaml")):
    missing = [key for key in english if key not in phrases(path) and not key.startswith("statements.")]
    problems += [f"{path.name} lacks “{key}”" for key in missing]

print("\n".join(problems) or f"{len(english)} phrases checked")
sys.exit(bool(problems))
