//! Templates of the kiosk's own: sticks, the journal, the disk. Refuses: a template twice.
super::rows! {
    "{0}" => "{0}";
    // A stick.
    "more than {0} plans in one folder: the rest was not looked at" => "mehr als {0} Pläne in einem Ordner: den Rest hat niemand angesehen";
    "more than {0} plans: the rest was not read; put them on another stick" => "mehr als {0} Pläne: der Rest ist nicht gelesen; nimm dafür einen weiteren Stick";
    "{0}: {1}" => "{0}: {1}";
    "{0} for {1} on {2}, which {3} has too" => "{0} für {1} am {2}, was auch {3} hat";
    "keep one of the two plans on the stick" => "lass einen der beiden Pläne auf dem Stick";
    "a link; links are not followed" => "ein Verweis; Verweisen wird nicht gefolgt";
    "cannot be opened ({0})" => "lässt sich nicht öffnen ({0})";
    "cannot be read ({0})" => "lässt sich nicht lesen ({0})";
    "no file but a folder, a device or a pipe; it was not opened further" => "keine Datei, sondern ein Ordner, ein Gerät oder eine Pipe; nicht weiter geöffnet";
    "broke off while it was read ({0})" => "brach beim Lesen ab ({0})";
    "larger than the most, {0} bytes" => "größer als höchstens {0} Bytes";
    "the stick was pulled while it was written to; put it in and write again" => "der Stick wurde beim Schreiben gezogen; steck ihn ein und schreib noch einmal";
    // The desk and its files.
    "{0} is no file of at most {1} bytes; save it anew" => "{0} ist keine Datei von höchstens {1} Bytes; speichere sie neu";
    "this kiosk keeps no files; start it on a data folder" => "dieser Kiosk hat keine Dateien; starte ihn mit einem Datenordner";
    "the journal is busy; try again" => "das Journal ist beschäftigt; versuch es noch einmal";
    "no TOML: {0}" => "kein TOML: {0}";
    "there is no {0} called \"{1}\"; look at the file" => "in der Datei gibt es kein {0} \"{1}\"; sieh sie an";
    "there is no number {0} in that list; look again" => "die Liste hat keine Nummer {0}; sieh noch einmal nach";
    "there is no list \"{0}\" there; look at the file" => "dort gibt es keine Liste \"{0}\"; sieh die Datei an";
    "there is no such list in the file; write it there" => "diese Liste gibt es in der Datei nicht; schreib sie dort hinein";
    "that way leads nowhere in the file; look at it" => "das findet sich nicht in der Datei; sieh sie an";
    "a way needs at least one step" => "dafür fehlt, was zu ändern ist";
    "a list has one key; look at the file" => "eine Liste hat einen Schlüssel; sieh die Datei an";
    "that is not in the file any more; look at it" => "das steht nicht mehr in der Datei; sieh sie an";
    "the file is written in a way that this cannot change; change it there" => "die Datei ist so geschrieben, dass es hier nicht zu ändern ist; ändere es dort";
    // The disk and the journal.
    "{0}: {1}; check that it exists and that you may use it" => "{0}: {1}; sieh nach, ob es das gibt und du es benutzen darfst";
    "no home folder is set; choose a data folder with --data DIR" => "kein Home-Ordner ist gesetzt; wähl einen Datenordner mit --data DIR";
    "the picture could not be drawn: {0}" => "das Bild ließ sich nicht zeichnen: {0}";
    "there is no journal at {0}; choose the data folder that has one" => "bei {0} liegt kein Journal; wähl den Datenordner, der eins hat";
    "{0} cannot be opened: its folder is missing or closed to this user; create or open it, or choose another data folder" => "{0} lässt sich nicht öffnen: der Ordner fehlt oder ist für diesen Benutzer gesperrt; leg ihn an, öffne ihn oder wähl einen anderen Datenordner";
    "{0} cannot be written; give this user write permission on the file and its folder, or choose another data folder" => "{0} lässt sich nicht schreiben; gib diesem Benutzer Schreibrecht auf Datei und Ordner, oder wähl einen anderen Datenordner";
    "{0} cannot grow: the disk is full; free some space and try again" => "{0} kann nicht wachsen: der Speicher ist voll; schaff Platz und versuch es noch einmal";
    "{0} is kept busy by another program for over {1} ms; close that program and try again" => "{0} ist seit über {1} ms von einem anderen Programm belegt; schließ es und versuch es noch einmal";
    "{0} is not a database; move it away, and put back a copy of the journal" => "{0} ist keine Datenbank; leg sie beiseite und leg eine Kopie des Journals zurück";
    "{0} is a database of another program; move it away, or choose another data folder" => "{0} ist die Datenbank eines anderen Programms; leg sie beiseite, oder wähl einen anderen Datenordner";
    "{0} is a database of another program; move it away" => "{0} ist die Datenbank eines anderen Programms; leg sie beiseite";
    "{0} is empty: no journal was begun in it, or all of it was lost; put back a copy if there was one" => "{0} ist leer: kein Journal wurde begonnen, oder alles ging verloren; leg eine Kopie zurück, wenn es eine gab";
    "{0} was written by a newer version of this program (layout {1}, this one knows up to {2}); install the newer version" => "{0} ist von einer neueren Version geschrieben (Aufbau {1}, diese kennt bis {2}); installiere die neuere";
    "{0} cannot be kept safe from a power cut: {1} is {2}, not {3}; put the data folder on a local disk" => "{0} ist vor Stromausfall nicht sicher: {1} ist {2}, nicht {3}; leg den Datenordner auf einen eigenen Datenträger";
    "{0} was moved or deleted while in use; put it back and start the program again" => "{0} wurde im Betrieb verschoben oder gelöscht; leg sie zurück und starte neu";
    "{0} cannot be trusted from event {1} on: {2}; {3}" => "{0} ist ab Ereignis {1} nicht mehr zu trauen: {2}; {3}";
    "{0} ends at event {1}, before event {2}; events were lost: put back a later copy" => "{0} endet bei Ereignis {1}, vor Ereignis {2}; Ereignisse gingen verloren: leg eine spätere Kopie zurück";
    "{0} has lost its guard {1}, so somebody has worked on it by hand; put back a copy" => "{0} hat die Sperre {1} verloren, also hat jemand von Hand daran gearbeitet; leg eine Kopie zurück";
    "{0} is damaged ({1}); put back a copy" => "{0} ist beschädigt ({1}); leg eine Kopie zurück";
    "{0} cannot be used ({1}); check the disk and try again" => "{0} ist nicht zu gebrauchen ({1}); prüf den Datenträger und versuch es noch einmal";
    "events {0} to {1} are missing before it" => "davor fehlen die Ereignisse {0} bis {1}";
    "its content or its place was altered: the hash does not match" => "sein Inhalt oder sein Platz ist verändert: die Prüfsumme stimmt nicht";
    "its {0} cannot be read" => "{0} ist nicht zu lesen";
    "it was written by a newer version of this program (wire version {0}, this one reads up to {1})" => "eine neuere Version hat es geschrieben (Form {0}, diese liest bis {1})";
    "move the file away, and put back a copy" => "leg die Datei beiseite und eine Kopie zurück";
    "install the newer version" => "installiere die neuere Version";
    "the program that wrote it is at fault: install the version that did" => "der Fehler liegt bei dem Programm, das es schrieb: installiere dessen Version";
    "{0} was made by another version of this program; start the kiosk, and it is made again" => "{0} ist von einer anderen Version; starte den Kiosk, dann entsteht sie neu";
    "{0} cannot be written ({1}); check the folder's permissions" => "{0} lässt sich nicht schreiben ({1}); prüf die Rechte des Ordners";
    "{0} cannot be used ({1}); check that the place is there, open to this user and not full" => "{0} ist nicht zu gebrauchen ({1}); prüf, ob der Ort da ist, offen für diesen Benutzer und nicht voll";
    "{0} is the data folder itself; choose a place on another disk" => "{0} ist der Datenordner selbst; wähl einen Ort auf einem anderen Datenträger";
    "{0} is in use; close the kiosk first, or restore on its desk" => "{0} ist in Gebrauch; schließ erst den Kiosk, oder leg die Kopie an seinem Schreibtisch zurück";
    "a code that is soon guessed; choose one that is no row of the same or of following signs" => "ein Code, der schnell zu raten ist; wähl einen ohne Reihe gleicher oder aufeinander folgender Zeichen";
    "the code cannot be kept safely ({0}); try again" => "der Code lässt sich nicht sicher behalten ({0}); versuch es noch einmal";
    "{0} cannot be used ({1}); check the data folder's permissions" => "{0} ist nicht zu gebrauchen ({1}); prüf die Rechte des Datenordners";
    // What the system reports.
    "No such file or directory (os error 2)" => "gibt es nicht";
    "Input/output error (os error 5)" => "Ein- und Ausgabe versagt";
    "Permission denied (os error 13)" => "kein Zugriff";
    "File exists (os error 17)" => "gibt es schon";
    "Not a directory (os error 20)" => "kein Ordner";
    "Is a directory (os error 21)" => "ein Ordner";
    "No space left on device (os error 28)" => "kein Platz mehr";
    "Read-only file system (os error 30)" => "nur zum Lesen";
}
