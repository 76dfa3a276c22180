#!/bin/sh
# SPDX-License-Identifier: MIT
# Starts the desk in a real X window under a small window manager, works it with keys and clicks,
# and checks what it did. Arguments: the program, the source folder, a folder for pictures of the
# screen, or none. Exit 77: skipped.
set -eu

program=$1
source=$2
pictures=${3:-}

for tool in Xvfb openbox xdotool pdfinfo pdftotext; do
  if ! command -v "$tool" >/dev/null 2>&1; then
    echo "skipped: $tool is not installed, so there is no real window to try"
    exit 77
  fi
done

work=$(mktemp -d)
cp -R "$source/demo" "$work/demo"
mkdir -m 700 "$work/home"
export HOME="$work/home" XDG_CONFIG_HOME="$work/home/config" XDG_RUNTIME_DIR="$work/home"
export CREASELINE_RESOURCES="$source/resources" QT_QPA_PLATFORM=xcb LC_ALL=C.UTF-8 LANGUAGE=en

server='' manager='' desk='' painters=''
tidy() {
  for started in $painters; do
    wait "$started" 2>/dev/null || true
  done
  for started in $desk $manager $server; do
    kill "$started" 2>/dev/null || true
    wait "$started" 2>/dev/null || true
  done
  rm -rf "$work"
}
trap tidy EXIT

# picture NAME: what is on the screen, where pictures are wanted and can be made; beside what goes on.
picture() {
  if [ -n "$pictures" ] && command -v python3 >/dev/null 2>&1; then
    mkdir -p "$pictures"
    sleep 0.3
    cp "$work/Xvfb_screen0" "$work/$1.xwd"
    python3 "$source/docs/xwd_to_png.py" "$work/$1.xwd" "$pictures/real-window-$1.png" \
      0 0 "$width" "$height" &
    painters="$painters $!"
  fi
}

fail() {
  echo "failed: $1"
  [ -z "${DISPLAY:-}" ] || picture failed
  [ ! -f "$work/desk.log" ] || sed 's/^/desk: /' "$work/desk.log"
  exit 1
}

# wait_until TENTHS MESSAGE COMMAND...: until the command succeeds; fails with the message when that
# takes more tenths of a second, or when the desk ends meanwhile.
wait_until() {
  left=$1
  message=$2
  shift 2
  until "$@" >/dev/null 2>&1; do
    left=$((left - 1))
    [ "$left" -gt 0 ] || fail "$message"
    [ -z "$desk" ] || kill -0 "$desk" 2>/dev/null || fail "the desk ended by itself: $message"
    sleep 0.1
  done
}

# The server picks a free display and says which.
width=1500
height=950
Xvfb -displayfd 3 -screen 0 "${width}x${height}x24" -fbdir "$work" -nolisten tcp 3>"$work/display" 2>"$work/xvfb.log" &
server=$!
wait_until 300 "the X server did not start" test -s "$work/display"
DISPLAY=":$(cat "$work/display")"
export DISPLAY
openbox >"$work/openbox.log" 2>&1 &
manager=$!
# A window that is shown while the manager is taking over may be passed over by it.
tries=0
until xdotool get_num_desktops >/dev/null 2>&1; do
  tries=$((tries + 1))
  [ "$tries" -lt 300 ] || fail "the window manager did not start: $(cat "$work/openbox.log")"
  # It gives up where the server is not yet ready for it.
  if ! kill -0 "$manager" 2>/dev/null; then
    openbox >>"$work/openbox.log" 2>&1 &
    manager=$!
  fi
  sleep 0.1
done
sleep 0.5

# Whether a window with this in its title is there; leaves its number.
shown() {
  xdotool search --onlyvisible --name "$1" >"$work/found" 2>/dev/null
}

dialog() {
  wait_until 300 "no window named '$1' appeared" shown "$1"
  xdotool windowactivate --sync "$(tail -n 1 "$work/found")"
}

# to_desk: the desk's own window in front again.
to_desk() {
  xdotool windowactivate --sync "$window"
}

# field KEY TEXT: types over the field that Alt and the key lead to.
field() {
  xdotool key --delay 40 "alt+$1" ctrl+a
  xdotool type --delay 8 "$2"
}

# save_as TITLE FILE: answers the question where to save.
save_as() {
  dialog "$1"
  xdotool key --delay 40 ctrl+a
  xdotool type --delay 8 "$2"
  xdotool key Return
  wait_until 300 "$2 was not saved" test -s "$2"
}

# ---- From an empty desk to sheets of a first order, typed ---------------------------------------

XDG_CONFIG_HOME="$work/home/first" "$program" >>"$work/desk.log" 2>&1 &
desk=$!
wait_until 900 "no empty desk appeared" shown '^Creaseline$'
window=$(head -n 1 "$work/found")
to_desk
sleep 0.3
xdotool key ctrl+n
wait_until 300 "no new order was started" shown '^1.* - Creaseline'
sleep 0.3
field u 2026-1
field i 'First regatta'
field c 'Harbour Row Club'
xdotool key Tab
wait_until 100 "the order's number was not taken" shown '^2026-1 First regatta'

# A new garment comes with a line of its own; it lies on the table before it can be planned.
xdotool key --delay 150 alt+e g Return
dialog '^Garments'
field n 'Quay tee'
xdotool key --delay 60 Tab Escape
to_desk
picture garment-unplanned
xdotool key --delay 60 alt+q ctrl+a
xdotool type --delay 40 '4'
xdotool key --delay 60 Tab
xdotool type --delay 40 '6'
xdotool key --delay 60 Tab

# A design comes with the place where it is sewn.
xdotool key --delay 150 alt+e p Return
dialog '^Designs'
field n 'Pennant'
field w '60 mm'
xdotool key --delay 60 Tab Escape
to_desk
picture without-shop

# The shop is what still lacks. With it the order is planned, and its sheets can be saved.
xdotool key --delay 150 alt+f b
dialog ' - Shop'
xdotool key ctrl+s
save_as '^Save the shop' "$work/first.shop.json"
dialog ' - Shop'
xdotool key Escape
to_desk
xdotool mousemove --window "$window" 720 400 click 1
sleep 0.5
picture planned
xdotool key ctrl+s
save_as '^Save the order' "$work/first.order.json"
for typed in 'First regatta' 'Harbour Row Club' 'Quay tee' 'Pennant' '"60 mm"' '"S": 4' '"M": 6'; do
  grep -q "$typed" "$work/first.order.json" || fail "the saved order lacks what was typed: $typed"
done
to_desk
xdotool key ctrl+e
dialog '^Sheets'
sleep 0.5
picture sheets
xdotool key alt+s
save_as '^Save the sheets as a PDF' "$work/first.pdf"
wait_until 300 "the sheets of the first order are no PDF" pdfinfo "$work/first.pdf"
pdftotext "$work/first.pdf" "$work/first.txt"
for typed in 'Harbour Row Club' 'Quay tee' 'Pennant'; do
  grep -q "$typed" "$work/first.txt" || fail "the sheets lack what was typed: $typed"
done
to_desk
xdotool key ctrl+q
first=$desk
desk=''
gone() { ! kill -0 "$first"; }
wait_until 300 "the desk with the first order did not close" gone
wait "$first" || fail "the desk with the first order closed with an error"

# ---- The demo, changed outside, killed, taken up again ------------------------------------------

# Starts the desk on the demo and waits for its window.
start_desk() {
  "$program" "$work/demo/regatta.order.json" "$work/demo/workshop.shop.json" \
    >>"$work/desk.log" 2>&1 &
  desk=$!
  wait_until 900 "no window with the order's name appeared" shown '2026-118.*Creaseline'
  window=$(head -n 1 "$work/found")
  xdotool windowactivate --sync "$window"
}
start_desk

# Ctrl+3 and the arrow keys walk along the sizes; a click on the table gives it the focus.
xdotool key --delay 60 ctrl+3 Right Right ctrl+1 Down Down Right
xdotool mousemove --window "$window" 720 400 click 1
xdotool key --delay 60 plus plus 0
sleep 0.5
kill -0 "$desk" 2>/dev/null || fail "the desk ended while it was used"

# Ctrl+E opens the window "Sheets" with its button for a PDF ready; Page Down turns the preview. The
# range, the question where to save and the saving itself take keys alone.
xdotool windowactivate --sync "$window"
xdotool key ctrl+e
dialog '^Sheets'
xdotool key --delay 60 Next Next Prior alt+c alt+f
xdotool key alt+g
sleep 0.5
xdotool type --delay 60 '2-3'
xdotool key --delay 60 alt+s
dialog '^Save the sheets as a PDF'
xdotool type --delay 20 "$work/saved.pdf"
xdotool key Return
wait_until 600 "the sheets were not saved" test -s "$work/saved.pdf"
pages=$(pdfinfo "$work/saved.pdf" | sed -n 's/^Pages: *//p')
[ "$pages" = 2 ] || fail "the saved range has $pages pages instead of 2"

# A changed order is read again, which the window's title shows.
sed 's/"title": "Regatta week"/"title": "Regatta fortnight"/' "$work/demo/regatta.order.json" \
  >"$work/changed.json"
mv "$work/changed.json" "$work/demo/regatta.order.json"
wait_until 600 "the changed order was not read again" shown 'Regatta fortnight'

# A quantity is typed over in the order. The title's star says that the desk has it; a slow machine
# may still be planning the changed order, so that the keys come before the table is ready for them.
type_quantity() {
  xdotool windowactivate --sync "$window"
  xdotool key --delay 80 ctrl+1 Home Right Right Right Right
  xdotool key --delay 80 7 7 Return
  sleep 1
  shown '2026-118.*\* - Creaseline'
}
wait_until 20 "the typed quantity did not become an edit" type_quantity

# The program is killed five seconds later.
sleep 5
test -n "$(find "$work/home/config" -name draft.order.json)" \
  || fail "nothing was kept of what was not saved"
grep -q '"[A-Z0-9]*": 77' "$work/demo/regatta.order.json" && fail "the order was saved unasked"
kill -9 "$desk"
wait "$desk" 2>/dev/null || true

# The next start offers it; taken up, it can be saved.
start_desk
sleep 1
xdotool key alt+t
wait_until 300 "what the killed desk left was not taken up" shown '2026-118.*\* - Creaseline'
xdotool windowactivate --sync "$window"
xdotool key ctrl+s
wait_until 300 "what was taken up could not be saved" \
  grep -q '"[A-Z0-9]*": 77' "$work/demo/regatta.order.json"

# Ctrl+Q closes it, with success.
xdotool windowactivate --sync "$window"
xdotool key ctrl+q
closing=$desk
desk=''
ended() { ! kill -0 "$closing"; }
wait_until 300 "the desk did not close" ended
wait "$closing" || fail "the desk closed with an error"
grep -i 'qt.*warning\|QObject::\|QPainter::' "$work/desk.log" && fail "the desk complained"
echo "the desk opened, saved sheets, read a change, lost nothing when killed, and closed"
