#!/usr/bin/env bash
# The first table of docs/speed.md in one command: makes the program and an invented catalogue, then lets Exergue and
# other programs print in turn, and prints the medians. Programs that are not installed are left out, and said so.
#
# Usage: src/test/bench/speed.sh [ROUNDS] [COINS]          5 rounds and 2000 coins if nothing is said
set -euo pipefail
cd "$(dirname "$0")/../../.."
home=$PWD
rounds=${1:-5}
coins=${2:-2000}
flags="-XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=20 -XX:C1MaxInlineLevel=4"
flags="$flags -XX:Tier3InvocationThreshold=25 -XX:Tier3MinInvocationThreshold=12 -XX:Tier3CompileThreshold=250"
flags="$flags -XX:+UseParallelGC -XX:-UseAdaptiveSizePolicy -XX:InitialRAMPercentage=5 -Xmn96m -XX:MaxTenuringThreshold=0"

mvn -q -B package -DskipTests
mvn -q -B test-compile exec:java -Dexec.classpathScope=test -Dexec.mainClass=exergue.bench.Bench \
  -Dexec.args="$coins" -Dbench.flags="$flags"

cd "target/bench/$coins/peers"
programs=programs.txt
cat > "$programs" <<LIST
Exergue | "$home/target/exergue" typeset ../source --to book
Exergue, no class archive | java $flags -jar "$home/target/exergue.jar" typeset ../source --to book
Exergue, no flag at all | java -jar "$home/target/exergue.jar" typeset ../source --to book
LIST

if chromium=$(command -v chromium || command -v chromium-browser || command -v google-chrome); then
  print="$chromium --headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking"
  print="$print --disable-component-update --disable-sync --user-data-dir=profile --no-pdf-header-footer"
  cat >> "$programs" <<LIST
Chromium, same page, tagged | $print --print-to-pdf=chromium.pdf page.html
Chromium, same page, untagged | $print --disable-pdf-tagging --print-to-pdf=chromium.pdf page.html
Chromium, plain text, tagged | $print --print-to-pdf=chromium.pdf plain-text.html
LIST
else
  echo "Chromium is not installed." >&2
fi
if command -v weasyprint > /dev/null; then
  echo "WeasyPrint, plain text | weasyprint plain-text.html weasyprint.pdf" >> "$programs"
else
  echo "WeasyPrint is not installed." >&2
fi
if [ -d node_modules/@myriaddreamin/typst-ts-node-compiler ]; then
  echo "Typst, plain text | node \"$home/src/test/bench/typst.mjs\" plain-text.typ typst.pdf \"$home/src/main/resources/exergue/fonts\"" >> "$programs"
else
  echo "Typst is not installed; in $PWD: npm install @myriaddreamin/typst-ts-node-compiler@0.7.0" >&2
fi

python3 "$home/src/test/bench/side-by-side.py" "$rounds" "$programs"
