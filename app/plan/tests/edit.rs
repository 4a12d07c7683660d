//! One value written into a file, all else as it stood.
use plan::Source;
use plan::edit::{Step, edit, has_entry, push, remove};

const LIFTERS: &str = "# Ours.\n[[lifter]]\nname = \"Ines\" # the tall one\nunit = \"kg\"\nrack = \"door rack\"\n\n\
    [lifter.landmarks]\ntibial_tuberosity = \"488 mm\" # in shoes\n\n\
    [[lifter]]\nname = \"Tomo\"\nunit = \"lb\"\nrack = \"door rack\"\nlandmarks = { lockout = \"700 mm\" }\n\n\
    [[lifter]]\nname = \"Una\"\nunit = \"kg\"\nrack = \"door rack\"\n";

fn height(name: &str, key: &str) -> Result<String, plan::Words> {
    let path = [Step::Name("landmarks"), Step::Name(key)];
    edit(LIFTERS, Some(("lifter", name)), &path, "\"490 mm\"")
}

#[test]
fn a_value_is_replaced_and_its_comment_stays() {
    let text = height("Ines", "tibial_tuberosity").expect("it is there");
    let now = LIFTERS.replace("\"488 mm\" # in shoes", "\"490 mm\" # in shoes");
    assert_eq!(text, now);
}

#[test]
fn a_key_that_is_missing_stands_beside_the_others() {
    let text = height("Ines", "lockout").expect("beside");
    let was = "\"488 mm\" # in shoes\n";
    assert_eq!(
        text,
        LIFTERS.replace(was, &format!("{was}lockout = \"490 mm\"\n"))
    );
    let text = height("Tomo", "mid_thigh").expect("in the braces");
    let was = "{ lockout = \"700 mm\"";
    assert_eq!(
        text,
        LIFTERS.replace(was, &format!("{was}, mid_thigh = \"490 mm\""))
    );
    let text = height("Una", "lockout").expect("after the name");
    let was = "name = \"Una\"\n";
    assert_eq!(
        text,
        LIFTERS.replace(was, &format!("{was}landmarks.lockout = \"490 mm\"\n"))
    );
}

#[test]
fn a_key_of_the_file_itself_is_written_even_where_nothing_stands() {
    let share = |text| edit(text, None, &[Step::Name("share")], "false");
    assert_eq!(share("").as_deref(), Ok("share = false\n"));
    assert_eq!(
        share("port = 80\n").as_deref(),
        Ok("port = 80\nshare = false\n")
    );
    assert_eq!(
        share("share = true # yes\n").as_deref(),
        Ok("share = false # yes\n")
    );
}

#[test]
fn what_is_not_there_is_refused() {
    assert!(height("Nobody", "lockout").is_err());
    assert!(edit("= broken", None, &[Step::Name("share")], "false").is_err());
    let path = [Step::Name("name"), Step::Name("first")];
    assert!(edit(LIFTERS, Some(("lifter", "Una")), &path, "1").is_err());
}

/// Every figure of the demo gym can be written anew, and the gym is then read with it.
#[test]
fn the_demo_gym_takes_every_edit() {
    let demo = |name: &str| {
        let path = format!("{}/../../demo-data/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read_to_string(path).expect("the demo file is in the repository")
    };
    let (gym_text, lifters_text) = (demo("gym.toml"), demo("lifters.toml"));
    let read = |gym: &str, lifters: &str| {
        let source = |name, text: &'static str| Source {
            name,
            text: text.as_bytes(),
        };
        let gym: &'static str = gym.to_owned().leak();
        let lifters: &'static str = lifters.to_owned().leak();
        plan::gym(source("gym.toml", gym), source("lifters.toml", lifters))
    };
    let gym = read(&gym_text, &lifters_text).expect("a good gym");
    for set in &gym.plate_sets {
        for at in 0..set.plates.len() {
            let path = [Step::Name("plates"), Step::At(at), Step::Name("pairs")];
            let text = edit(&gym_text, Some(("plate_set", &set.name)), &path, "9").expect("pairs");
            let now = read(&text, &lifters_text).expect("still a gym");
            let now = now
                .plate_sets
                .iter()
                .find(|s| s.name == set.name)
                .expect("the set");
            assert_eq!(now.plates[at].pairs, 9);
        }
    }
    for lifter in &gym.lifters {
        let path = [Step::Name("landmarks"), Step::Name("mid_thigh")];
        let entry = Some(("lifter", lifter.name.as_str()));
        let text = edit(&lifters_text, entry, &path, "\"701 mm\"").expect("a height");
        let now = read(&gym_text, &text).expect("still a gym");
        let now = now
            .lifters
            .iter()
            .find(|l| l.name == lifter.name)
            .expect("the lifter");
        let height = now.landmark(domain::lift::Landmark::MidThigh);
        assert_eq!(height, Some(domain::Length::mm(701)));
    }
}

#[test]
fn an_entry_goes_with_its_tables_and_the_comment_above_it() {
    let text = remove(LIFTERS, Some(("lifter", "Ines")), &[]).expect("it is there");
    let head = LIFTERS.find("# Ours.").expect("the comment");
    let next = LIFTERS
        .find("[[lifter]]\nname = \"Tomo\"")
        .expect("the next");
    // The comment stands right above the entry, so it is taken to be about it.
    assert_eq!(text, format!("{}{}", &LIFTERS[..head], &LIFTERS[next..]));
    let text = remove(LIFTERS, Some(("lifter", "Una")), &[]).expect("the last");
    assert!(!has_entry(&text, "lifter", "Una") && has_entry(&text, "lifter", "Tomo"));
    let rules = "[[rule]]\nlift = \"squat\"\nlifter = \"Ines\"\ntries = 1\n\n# Slow.\n[[rule]]\nlifter = \"Ines\"\ntries = 3\n";
    let set = edit(rules, Some(("rule", "Ines")), &[Step::Name("tries")], "5").expect("set");
    assert_eq!(
        set,
        rules.replace("tries = 3", "tries = 5"),
        "the line for all lifts"
    );
    let more = edit(
        rules,
        Some(("rule", "Ines")),
        &[Step::Name("drop")],
        "\"5 %\"",
    )
    .expect("more");
    assert_eq!(
        more,
        rules.replace("\ntries = 3", "\ndrop = \"5 %\"\ntries = 3")
    );
    let text = remove(rules, Some(("rule", "Ines")), &[]).expect("the first line");
    assert_eq!(text, "# Slow.\n[[rule]]\nlifter = \"Ines\"\ntries = 3\n");
    let text = remove(&text, Some(("rule", "Ines")), &[]).expect("the other");
    assert_eq!(text, "");
    assert!(remove(LIFTERS, Some(("lifter", "Nobody")), &[]).is_err());
    let braces = "lifter = [{ name = \"Ines\" }, { name = \"Una\" }]\n";
    assert!(
        remove(braces, Some(("lifter", "Ines")), &[]).is_err(),
        "by hand"
    );
}

#[test]
fn a_key_and_an_item_of_a_list_go_and_come() {
    let text = "[[rack]]\nname = \"door\" # ours\nmats = [\"20 mm\", \"10 mm\"] # rubber\n";
    let door = Some(("rack", "door"));
    let mats = |at| remove(text, door, &[Step::Name("mats"), Step::At(at)]);
    let with = |mats: &str| text.replace("[\"20 mm\", \"10 mm\"]", mats);
    assert_eq!(mats(0), Ok(with("[\"10 mm\"]")));
    assert_eq!(mats(1), Ok(with("[\"20 mm\"]")));
    assert!(mats(2).is_err());
    let key = remove(text, door, &[Step::Name("mats")]);
    assert_eq!(key.as_deref(), Ok("[[rack]]\nname = \"door\" # ours\n"));
    assert_eq!(
        push(text, door, "mats", "\"5 mm\""),
        Ok(with("[\"20 mm\", \"10 mm\", \"5 mm\"]"))
    );
    let bare = "[[rack]]\nname = \"door\"\n";
    let begun = push(bare, door, "mats", "\"5 mm\"");
    assert_eq!(
        begun.as_deref(),
        Ok("[[rack]]\nname = \"door\"\nmats = [\"5 mm\"]\n")
    );
    let one = push("mats = []\n", None, "mats", "\"5 mm\"").expect("into an empty one");
    assert_eq!(one, "mats = [\"5 mm\"]\n");
    let none = remove(&one, None, &[Step::Name("mats"), Step::At(0)]);
    assert_eq!(none.as_deref(), Ok("mats = []\n"));
    assert!(push("mats = 5\n", None, "mats", "6").is_err());
}

#[test]
fn lines_of_a_list_stay_lines() {
    let text = "[[plate_set]]\nname = \"p\"\nplates = [\n    { mass = \"20 kg\" }, # big\n    { mass = \"10 kg\" },\n]\n";
    let set = Some(("plate_set", "p"));
    let more = push(text, set, "plates", "{ mass = \"5 kg\" }").expect("one more");
    let last = "    { mass = \"10 kg\" },\n";
    assert_eq!(
        more,
        text.replace(last, &format!("{last}    {{ mass = \"5 kg\" }},\n"))
    );
    let item = |at| remove(text, set, &[Step::Name("plates"), Step::At(at)]);
    assert_eq!(
        item(0),
        Ok(text.replace("    { mass = \"20 kg\" }, # big\n", ""))
    );
    assert_eq!(item(1), Ok(text.replace(last, "")));
}
