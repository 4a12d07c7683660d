#!/usr/bin/env python3
"""A real browser drives every page of the LAN: screenshots, a phone's width, paper, both languages,
downloads opened, the desk with a stick and copies, the floor board following what is entered at the
kiosk.

Needs Debian's chromium and chromium-driver, and selenium from PyPI; with poppler-utils the paper
becomes a picture too. Talks to loopback alone.

    cargo build -p acceptance --example season
    python3 tests/references/pages.py target/debug/examples/season OUT_FOLDER
"""
import base64
import csv
import http.client
import io
import json
import pathlib
import shutil
import sqlite3
import subprocess
import sys
import tempfile
import time

from selenium import webdriver
from selenium.common.exceptions import StaleElementReferenceException
from selenium.webdriver.common.by import By
from selenium.webdriver.support.ui import WebDriverWait

PORT = 18472
BASE = f"http://127.0.0.1:{PORT}"
CODE = "flat-backs-only"
PHONE, SCREEN, TV = (390, 844), (1280, 900), (1920, 1080)


class Season:
    """The kiosk with its page, told what to do line by line."""

    def __init__(self, binary, folder):
        self.process = subprocess.Popen(
            [binary, str(folder), str(PORT)], stdin=subprocess.PIPE, stdout=subprocess.PIPE, text=True)
        print(self.process.stdout.readline().strip())
        for _ in range(100):
            try:
                http.client.HTTPConnection("127.0.0.1", PORT, timeout=5).request("GET", "/")
                return
            except OSError:
                time.sleep(0.1)
        raise SystemExit("no page")

    def say(self, word):
        self.process.stdin.write(word + "\n")
        self.process.stdin.flush()
        return self.process.stdout.readline().strip()

    def end(self):
        if self.process.poll() is not None:
            return
        self.process.stdin.write("quit\n")
        self.process.stdin.close()
        self.process.wait(20)


def browser(downloads):
    options = webdriver.ChromeOptions()
    options.binary_location = "/usr/bin/chromium"
    for flag in ("--headless=new", "--no-sandbox", "--disable-gpu", "--hide-scrollbars",
                 "--disable-dev-shm-usage", "--lang=en"):
        options.add_argument(flag)
    options.add_experimental_option("prefs", {"download.default_directory": str(downloads)})
    options.set_capability("goog:loggingPrefs", {"browser": "ALL"})
    service = webdriver.ChromeService("/usr/bin/chromedriver")
    return webdriver.Chrome(options=options, service=service)


def size(driver, wanted):
    driver.execute_cdp_cmd("Emulation.setDeviceMetricsOverride", {
        "width": wanted[0], "height": wanted[1], "deviceScaleFactor": 1, "mobile": wanted == PHONE})


def shoot(driver, out, name, wanted=SCREEN, whole=False):
    """A screenshot; nothing may stand out of the width, and the console must be silent."""
    size(driver, wanted)
    time.sleep(0.3)
    wide = driver.execute_script("return document.documentElement.scrollWidth")
    assert wide <= wanted[0], f"{name}: {wide} px wide on {wanted[0]}"
    shot = driver.execute_cdp_cmd("Page.captureScreenshot", {"captureBeyondViewport": whole})
    (out / f"{name}.png").write_bytes(base64.b64decode(shot["data"]))
    told = [entry["message"] for entry in driver.get_log("browser")
            if "favicon" not in entry["message"] and "[DOM]" not in entry["message"]]
    assert not told, told
    print(f"{name}: {driver.title!r}, {wide} px")


def sign_in(driver, out):
    driver.get(BASE + "/coach")
    assert driver.current_url == BASE + "/sign-in", driver.current_url
    driver.find_element(By.ID, "code").send_keys("not-the-code")
    driver.find_element(By.CSS_SELECTOR, "form button").click()
    driver.implicitly_wait(10)
    assert "not the code" in driver.find_element(By.CSS_SELECTOR, ".notice").text
    driver.implicitly_wait(0)
    driver.get_log("browser")  # The 403 is told there, as it should be.
    shoot(driver, out, "sign-in-wrong", PHONE)
    driver.find_element(By.ID, "code").send_keys(CODE)
    driver.find_element(By.CSS_SELECTOR, "form button").click()
    for _ in range(100):
        if driver.current_url == BASE + "/coach/today":
            break
        time.sleep(0.1)
    assert driver.current_url == BASE + "/coach/today", driver.current_url
    cookie = next(c for c in driver.get_cookies() if c["name"] == "pinladder-coach")
    assert cookie["httpOnly"] and cookie["sameSite"] == "Strict", cookie
    assert driver.execute_script("return document.cookie") == ""
    return f"{cookie['name']}={cookie['value']}"


def charts(driver):
    """Every chart is drawn, with marks inside its frame."""
    found = driver.find_elements(By.CSS_SELECTOR, "figure svg")
    assert len(found) >= 3, len(found)
    for svg in found:
        box = svg.size
        assert box["width"] > 150 and box["height"] > 60, box
    marks = driver.find_elements(By.CSS_SELECTOR, "figure svg circle")
    assert len(marks) > 10, len(marks)
    return len(found), len(marks)


def coach(driver, out):
    shoot(driver, out, "coach")
    shoot(driver, out, "coach-phone", PHONE)
    links = driver.find_elements(By.CSS_SELECTOR, "nav.people a")
    names = [link.text for link in links]
    links[0].click()
    print(f"lifters {names}; charts and marks of {names[0]}: {charts(driver)}")
    shoot(driver, out, "lifter")
    shoot(driver, out, "lifter-phone", PHONE)
    paper(driver, out, "lifter")
    driver.find_element(By.LINK_TEXT, "Plan").click()
    shoot(driver, out, "plan")
    shoot(driver, out, "plan-phone", PHONE)
    rows = driver.find_elements(By.CSS_SELECTOR, "table.plan tbody tr")
    marked = driver.find_elements(By.CSS_SELECTOR, "table.plan .programme")
    assert rows and marked, (len(rows), len(marked))
    print(f"plan and done: {len(rows)} rows, {len(marked)} by a programme, such as {marked[0].text!r}")
    paper(driver, out, "plan")


def paper(driver, out, name):
    """A4 as the browser prints it; no page may be empty, and none cut off."""
    printed = driver.execute_cdp_cmd("Page.printToPDF", {
        "paperWidth": 8.27, "paperHeight": 11.69, "preferCSSPageSize": True})
    pdf = out / f"{name}.pdf"
    pdf.write_bytes(base64.b64decode(printed["data"]))
    if shutil.which("pdftoppm"):
        subprocess.run(["pdftoppm", "-r", "70", "-l", "2", "-png", str(pdf), str(out / f"{name}-paper")], check=True)
    size(driver, SCREEN)


def choose(driver, language):
    """Chooses the language at the foot of a page, which then is shown again in it."""
    before = driver.current_url
    driver.find_element(By.CSS_SELECTOR, f"form.language button[value={language}]").click()
    # The page goes while it is asked.
    waiting = WebDriverWait(driver, 5, ignored_exceptions=[StaleElementReferenceException])
    waiting.until(lambda d: d.find_element(By.TAG_NAME, "html").get_attribute("lang") == language)
    assert driver.current_url == before, (before, driver.current_url)


def german(driver, out):
    """Every page of the coach in the other language, on a phone."""
    driver.get(BASE + "/coach")
    choose(driver, "de")
    for path, name, words in (("/coach", "coach", "Einheiten"), ("/coach/plan", "plan", "aus dem Programm"),
                              ("/coach/desk", "desk", "Kopien des Journals"), ("/", "front", "Übersicht für alle")):
        driver.get(BASE + path)
        assert words in driver.find_element(By.TAG_NAME, "body").text, path
        shoot(driver, out, f"{name}-de-phone", PHONE, whole=True)
    driver.get(BASE + "/coach")
    driver.find_elements(By.CSS_SELECTOR, "nav.people a")[0].click()
    text = driver.find_element(By.TAG_NAME, "main").text
    assert "Geplant und geschafft" in text and "Schwerste Arbeitslast" in text
    labels = [label.text for label in driver.find_elements(By.CSS_SELECTOR, "figure svg text")]
    assert any(". " in label for label in labels), labels
    shoot(driver, out, "lifter-de")
    shoot(driver, out, "lifter-de-phone", PHONE)
    driver.get(BASE + "/nowhere")
    assert "Das ging nicht" in driver.title
    driver.get_log("browser")  # The 404 is told there, as it should be.
    shoot(driver, out, "problem-de-phone", PHONE)
    driver.get(BASE + "/coach")
    choose(driver, "en")


def told(driver):
    """What the desk answers; the page that says so may still be on its way."""
    found = By.CSS_SELECTOR, ".notice[role=status]"
    return WebDriverWait(driver, 30).until(lambda here: here.find_element(*found)).text


def order(driver, name, code=CODE):
    """Gives the first order of a name with the code, and returns what the desk answers."""
    form = driver.find_element(By.XPATH, f"//form[input[@name='order' and @value='{name}']]")
    form.find_element(By.NAME, "code").send_keys(code)
    form.find_element(By.TAG_NAME, "button").click()
    return told(driver)


def until(driver, words):
    for _ in range(60):
        driver.get(BASE + "/coach/desk")
        if words in driver.find_element(By.TAG_NAME, "main").text:
            return
        time.sleep(0.5)
    raise SystemExit(f"the desk never says {words!r}")


def desk(driver, out, data):
    """A stick with a fault, then without; taken, written to; a copy made and put back."""
    size(driver, SCREEN)
    until(driver, "No stick is in")
    shoot(driver, out, "desk-empty-phone", PHONE)
    stick = data / "stick"
    lifter = "Hamza"
    head = "date,lifter,lift,sets,reps,load,note\n"
    rows = [f"2027-03-{day:02},{lifter},rack pull,1,5,180 kg,from the stick\n" for day in (1, 8, 15)]
    (stick / "march.csv").write_text(head + rows[0].replace(" kg", ""), encoding="utf-8")
    until(driver, "row 2, column load")
    shoot(driver, out, "desk-fault-phone", PHONE, whole=True)
    assert not driver.find_elements(By.XPATH, "//input[@value='take']")
    (stick / "march.csv").write_text(head + "".join(rows), encoding="utf-8")
    until(driver, "3 new days")
    shoot(driver, out, "desk", whole=True)
    shoot(driver, out, "desk-phone", PHONE, whole=True)
    size(driver, SCREEN)
    answer = order(driver, "take", "not-the-code")
    driver.get_log("browser")  # The 403 is told there, as it should be.
    answers = [answer]
    for name in ("copy", "take", "write", "restore"):
        until(driver, "Copies of the journal")
        if name == "write":
            until(driver, "3 days as before")
        answers.append(order(driver, name))
    shoot(driver, out, "desk-told-phone", PHONE)
    print("desk:", *answers, sep="\n  ")
    expected = ("not the code", "copied and proven", "took 3 rows", "may be pulled", "restored")
    assert all(words in answer for words, answer in zip(expected, answers)), answers
    files = sorted(path.name for path in next(stick.glob("pinladder-record-*")).iterdir())
    assert files == ["journal.sqlite", "record.csv", "record.json"], files


def download(driver, folder, link, name):
    size(driver, SCREEN)
    driver.get(BASE + "/coach")
    driver.execute_cdp_cmd("Browser.setDownloadBehavior", {"behavior": "allow", "downloadPath": str(folder)})
    driver.find_element(By.LINK_TEXT, link).click()
    path = folder / name
    for _ in range(100):
        if path.exists() and path.stat().st_size:
            return path
        time.sleep(0.1)
    raise SystemExit(f"{name} did not come")


def downloads(driver, folder):
    text = download(driver, folder, "CSV", "pinladder-record.csv").read_bytes().decode("utf-8")
    rows = list(csv.DictReader(io.StringIO(text, newline="")))
    sets = json.loads(download(driver, folder, "JSON", "pinladder-record.json").read_text("utf-8"))["sets"]
    path = download(driver, folder, "Database", "pinladder-journal.sqlite")
    database = sqlite3.connect(f"file:{path}?mode=ro", uri=True)
    check = database.execute("PRAGMA integrity_check").fetchone()[0]
    events = database.execute("SELECT count(*) FROM events").fetchone()[0]
    assert len(rows) == len(sets) > 1_000 and check == "ok", (len(rows), len(sets), check)
    print(f"downloads: {len(rows)} rows of CSV, {len(sets)} sets of JSON, {events} events, {check}")


def board(driver, out, season):
    driver.get(BASE + "/board")
    size(driver, TV)
    for _ in range(50):
        if driver.find_element(By.ID, "clock").text:
            break
        time.sleep(0.1)
    shoot(driver, out, "board-before", TV)
    seen = []
    for _ in range(6):
        said = season.say("set")
        before = driver.find_element(By.TAG_NAME, "body").text
        begun = time.monotonic()
        while driver.find_element(By.TAG_NAME, "body").text == before and time.monotonic() - begun < 3:
            time.sleep(0.02)
        took = time.monotonic() - begun
        up = [e.text.replace("\n", " | ") for e in driver.find_elements(By.CSS_SELECTOR, ".up")]
        seen.append(up)
        print(f"  kiosk: {said}; board after {took * 1000:.0f} ms: {up}")
    assert len({json.dumps(s) for s in seen}) > 2, "the board did not follow"
    shoot(driver, out, "board", TV)
    shoot(driver, out, "board-phone", PHONE)
    season.say("language de")
    for _ in range(100):
        if driver.find_element(By.ID, "title").text == "Übersicht":
            break
        time.sleep(0.05)
    assert driver.find_element(By.ID, "title").text == "Übersicht", "the board speaks as the kiosk does"
    shoot(driver, out, "board-de", TV)
    season.say("language en")


def own(driver, out, season):
    """A lifter's link opens once; another browser finds it closed."""
    path = season.say("link")
    driver.delete_all_cookies()
    driver.get(BASE + path)
    shoot(driver, out, "mine-before", PHONE)
    driver.find_element(By.CSS_SELECTOR, "main button, form.sign-in button").click()
    charts(driver)
    shoot(driver, out, "mine-phone", PHONE)
    driver.refresh()
    charts(driver)
    driver.delete_all_cookies()
    driver.get(BASE + path)
    assert "opened already" in driver.find_element(By.TAG_NAME, "main").text
    driver.get_log("browser")  # The 410 is told there, as it should be.
    shoot(driver, out, "mine-again", PHONE)
    driver.get(BASE + "/coach")
    assert driver.current_url == BASE + "/sign-in"


def main():
    binary, out = sys.argv[1], pathlib.Path(sys.argv[2])
    out.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory() as folder:
        folder = pathlib.Path(folder)
        season = Season(binary, folder / "data")
        driver = browser(folder)
        try:
            driver.get(BASE + "/")
            shoot(driver, out, "front", PHONE)
            sign_in(driver, out)
            coach(driver, out)
            downloads(driver, folder)
            german(driver, out)
            board(driver, out, season)
            desk(driver, out, folder / "data")
            driver.get(BASE + "/coach")
            size(driver, SCREEN)
            driver.find_element(By.CSS_SELECTOR, "nav form button").click()
            WebDriverWait(driver, 30).until(lambda here: here.current_url != BASE + "/coach")
            driver.get(BASE + "/coach")
            assert driver.current_url == BASE + "/sign-in", "signed out"
            own(driver, out, season)
            print("every page was driven")
        finally:
            driver.quit()
            season.end()


if __name__ == "__main__":
    main()
