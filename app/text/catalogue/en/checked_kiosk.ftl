checked-as-said = { $a }

## A stick.
checked-more-than-plans-in-one = more than { $a } plans in one folder: the rest was not looked at
checked-more-than-plans-the-rest = more than { $a } plans: the rest was not read; put them on another stick
checked-place-and-what = { $a }: { $b }
checked-for-on-which-has-too = { $a } for { $b } on { $c }, which { $d } has too
checked-with-it-the-stick-has = with it the stick has more rows than the most, { $a }
checked-put-it-on-another-stick = put it on another stick, or take the other plans first
checked-keep-one-of-the-two-plans = keep one of the two plans on the stick
checked-a-link-links-are-not = a link; links are not followed
checked-cannot-be-opened = cannot be opened ({ $a })
checked-cannot-be-read = cannot be read ({ $a })
checked-no-file-but-a-folder = no file but a folder, a device or a pipe; it was not opened further
checked-broke-off-while-it-was = broke off while it was read ({ $a })
checked-larger-than-the-most-bytes = larger than the most, { $a } bytes
checked-the-stick-was-pulled-while = the stick was pulled while it was written to; put it in and write again

## The desk and its files.
checked-is-no-file-of-at = { $a } is no file of at most { $b } bytes; save it anew
checked-this-kiosk-keeps-no-files = this kiosk keeps no files; start it on a data folder
checked-another-kiosk-runs-on-close = another kiosk runs on { $a }; close that one, or choose another data folder
checked-the-journal-is-busy-try = the journal is busy; try again
checked-the-record-in-record-sqlite = the record in record.sqlite was damaged and is made again from the journal; nothing is lost, but look again at what was read of it
checked-changed-since-the-kiosk-ran = changed since the kiosk ran last, and in force from now on: { $a }; if that was nobody, put the file back as it was
checked-no-toml = no TOML: { $a }
checked-there-is-no-called-look = there is no { $a } called "{ $b }"; look at the file
checked-there-is-no-number-in = there is no number { $a } in that list; look again
checked-there-is-no-list-there = there is no list "{ $a }" there; look at the file
checked-there-is-no-such-list = there is no such list in the file; write it there
checked-that-way-leads-nowhere-in = that way leads nowhere in the file; look at it
checked-a-way-needs-at-least = a way needs at least one step
checked-a-list-has-one-key = a list has one key; look at the file
checked-that-is-not-in-the = that is not in the file any more; look at it
checked-the-file-is-written-in = the file is written in a way that this cannot change; change it there

## The disk and the journal.
checked-place-what-and-remedy = { $a }: { $b }; { $c }
checked-free-some-space-and-try = free some space and try again
checked-check-that-it-exists-and = check that it exists and that you may use it
checked-no-home-folder-is-set = no home folder is set; choose a data folder with --data DIR
checked-the-picture-could-not-be = the picture could not be drawn: { $a }
checked-there-is-no-journal-at = there is no journal at { $a }; choose the data folder that has one
checked-cannot-be-opened-its-folder = { $a } cannot be opened: its folder is missing or closed to this user; create or open it, or choose another data folder
checked-cannot-be-written-give-this = { $a } cannot be written; give this user write permission on the file and its folder, or choose another data folder
checked-cannot-grow-the-disk-is = { $a } cannot grow: the disk is full; free some space and try again
checked-is-kept-busy-by-another = { $a } is kept busy by another program for over { $b } ms; close that program and try again
checked-is-not-a-database-move = { $a } is not a database; move it away, and put back a copy of the journal
checked-is-a-database-of-another = { $a } is a database of another program; move it away, or choose another data folder
checked-is-a-database-of-another-program = { $a } is a database of another program; move it away
checked-is-empty-no-journal-was = { $a } is empty: no journal was begun in it, or all of it was lost; put back a copy if there was one
checked-was-written-by-a-newer = { $a } was written by a newer version of this program (layout { $b }, this one knows up to { $c }); install the newer version
checked-cannot-be-kept-safe-from = { $a } cannot be kept safe from a power cut: { $b } is { $c }, not { $d }; put the data folder on a local disk
checked-was-moved-or-deleted-while = { $a } was moved or deleted while in use; put it back and start the program again
checked-cannot-be-trusted-from-event = { $a } cannot be trusted from event { $b } on: { $c }; { $d }
checked-ends-at-event-before-event = { $a } ends at event { $b }, before event { $c }; events were lost: put back a later copy
checked-ends-at-event-but-knows = { $a } ends at event { $b }, but { $c } knows it as far as event { $d }; nothing was changed: run "pinladder journal mend", or put back a copy
checked-the-part-failed-and-was = the part "{ $a }" failed and was begun anew (times since the start: { $b }); if it goes on, start the kiosk again and send its log to whoever looks after it
checked-is-another-journal-than-knows = { $a } is another journal than { $b } knows: event { $c } is not the one that was there; nothing was changed: run "pinladder journal mend", or put back a copy
checked-is-damaged-at-byte-in = { $a } is damaged at byte { $b }, in front of events that were safe; nothing was changed: run "pinladder journal mend", or put back a copy
checked-cannot-be-written-check-the = { $a } cannot be written ({ $b }); check the disk
checked-cannot-be-mended-and-tell = { $a } cannot be mended: { $b } and { $c } tell different events; choose one of them and put it back
checked-has-lost-its-guard-so = { $a } has lost its guard { $b }, so somebody has worked on it by hand; put back a copy
checked-is-damaged-put-back-a = { $a } is damaged ({ $b }); put back a copy
checked-cannot-be-used-check-the = { $a } cannot be used ({ $b }); check the disk and try again
checked-events-to-are-missing-before = events { $a } to { $b } are missing before it
checked-its-content-or-its-place = its content or its place was altered: the hash does not match
checked-its-cannot-be-read = its { $a } cannot be read
checked-it-was-written-by-a = it was written by a newer version of this program (wire version { $a }, this one reads up to { $b })
checked-move-the-file-away-and = move the file away, and put back a copy
checked-install-the-newer-version = install the newer version
checked-the-program-that-wrote-it = the program that wrote it is at fault: install the version that did
checked-was-made-by-another-version = { $a } was made by another version of this program; start the kiosk, and it is made again
checked-cannot-be-written-check-the-folder = { $a } cannot be written ({ $b }); check the folder's permissions
checked-cannot-be-used-check-that = { $a } cannot be used ({ $b }); check that the place is there, open to this user and not full
checked-is-the-data-folder-itself = { $a } is the data folder itself; choose a place on another disk
checked-is-in-use-close-the = { $a } is in use; close the kiosk first, or restore on its desk
checked-a-code-that-is-soon = a code that is soon guessed: { $a }; choose another, three plain words for example
checked-fewer-than-four-different-signs = fewer than four different signs
checked-the-same-piece-over-and = the same piece over and over
checked-a-row-of-letters-digits = a row of letters, digits or keys
checked-a-date = a date
checked-a-word-that-everybody-tries = a word that everybody tries
checked-the-code-cannot-be-kept = the code cannot be kept safely ({ $a }); try again
checked-cannot-be-used-check-the-data = { $a } cannot be used ({ $b }); check the data folder's permissions
checked-a-code-of-characters-choose = a code of { $a } characters; choose from { $b } to { $c }
checked-cannot-be-used = { $a } cannot be used ({ $b }); { $c }
checked-give-this-user-write-permission = give this user write permission on the file and its folder
checked-close-the-program-that-keeps = close the program that keeps it busy and try again
checked-delete-it-and-it-is = delete it, and it is made again from the journal

## Devices.
checked-buzzer = buzzer
checked-lamp = lamp
checked-lights = lights
checked-backlight = backlight
checked-switches = switches
checked-signs = signs
checked-check-hardware-toml-and-the = { $a }; check hardware.toml and the wiring, then start again
checked-cannot-be-read-check-its = cannot be read ({ $a }); check its wiring
checked-changed-more-than-times-within = changed more than { $a } times within a second and is not listened to; look for a loose wire
checked-has-been-down-for-over = has been down for over { $a } s; see what lies on it
checked-does-not-do-what-it = does not do what it is told ({ $a }); check its wiring
checked-the-system-gives-no-thread = the system gives no thread ({ $a })

## What the system reports.
checked-no-such-file-or-directory = No such file or directory (os error 2)
checked-input-output-error-os-error = Input/output error (os error 5)
checked-permission-denied-os-error-13 = Permission denied (os error 13)
checked-file-exists-os-error-17 = File exists (os error 17)
checked-not-a-directory-os-error = Not a directory (os error 20)
checked-is-a-directory-os-error = Is a directory (os error 21)
checked-no-space-left-on-device = No space left on device (os error 28)
checked-read-only-file-system-os = Read-only file system (os error 30)

## Plans in the folder.
checked-is-not-there-any-more = { $a } is not there any more; choose another
checked-the-hub-does-not-answer = the hub at { $a } does not answer; this rack works alone and catches up
checked-the-hub-knows-another-box = the hub knows another box as { $a }, or a later record of this one; nothing is sent, see pinladder hub look
checked-the-hub-lets-not-in = the hub does not let this kiosk in; see pinladder hub look
checked-the-hub-failed = the hub failed; this rack works alone, see pinladder hub look
checked-the-hub-of-another-rack = what the hub tells of { $a } does not follow what was read before; see pinladder hub look
