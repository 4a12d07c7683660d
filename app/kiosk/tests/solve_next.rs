//! `pinladder solve next` from outside: worked examples, the laws at their edges, refusals.
use kiosk::solve::{Request, run};
use serde_json::{Value, json};

fn solve(input: &Value) -> Value {
    let input = input.to_string();
    let request = Request {
        problem: "next",
        input: &input,
        times: None,
        within_ns: 2_000_000_000,
    };
    let answer = run(request, &mut || 0);
    let value: Value = serde_json::from_str(&answer.json).expect("JSON");
    assert_eq!(answer.solved, value.get("refused").is_none());
    value
}

fn plates() -> Value {
    let plate = |mass: &str, pairs| json!({"mass": mass, "pairs": pairs, "handling_s": 4});
    json!([
        plate("20 kg", 8),
        plate("15 kg", 1),
        plate("10 kg", 1),
        plate("5 kg", 1),
        plate("2.5 kg", 1),
        plate("1.25 kg", 1)
    ])
}

/// Five reps of the rack pull on a day, all done.
fn well(date: &str, load: &str) -> Value {
    json!({"date": date, "lift": "rack pull", "track": "heavy", "sets": 1, "reps": [5, 5],
        "load": load, "done": [5]})
}

fn problem(today: &str, spacing: u16, history: &[Value]) -> Value {
    json!({"today": today, "lift": "rack pull", "track": "heavy", "spacing_days": spacing,
        "family": ["rack pull", "halting deadlift"], "bar": "20 kg", "plates": plates(),
        "history": history})
}

fn with(mut problem: Value, field: &str, value: Value) -> Value {
    problem[field] = value;
    problem
}

fn due(answer: &Value) -> (Option<&str>, &str, bool) {
    let due = answer["due"].as_str();
    assert!(due.is_some() || answer["due"].is_null(), "{answer}");
    let why = answer["why"].as_str().expect("why");
    assert!(why.ends_with('.') && why.len() > 20, "{why}");
    let verdict = answer["verdict"].as_str().expect("a verdict");
    (due, verdict, answer["ask_coach"].as_bool().expect("asked"))
}

/// The lifter of the issue: always succeeds, and the programme brings the lift every 32 days.
#[test]
fn who_succeeds_every_32_days_is_never_lowered() {
    let mut history = vec![well("2026-01-01", "180 kg")];
    let mut day = chrono::NaiveDate::from_ymd_opt(2026, 1, 1).expect("a day");
    let mut loads = Vec::new();
    for _ in 0..10 {
        day = day + chrono::Days::new(32);
        let answer = solve(&problem(&day.to_string(), 32, &history));
        let (load, verdict, asks) = due(&answer);
        assert_eq!((verdict, asks), ("raise", false), "{answer}");
        let load = load.expect("due").to_owned();
        history.push(well(&day.to_string(), &load));
        loads.push(load);
    }
    // 2.5 % each time, to the nearest that the plates make.
    let wanted = [
        "185 kg", "190 kg", "195 kg", "200 kg", "205 kg", "210 kg", "215 kg", "220 kg", "225 kg",
        "230 kg",
    ];
    assert_eq!(loads, wanted);
}

/// By hand: 2.5 % over 150 kg are 153.75 kg, as near to 152.5 as to 155 kg, of which the lower one
/// hangs; in whole steps of 10 kg 160 kg are the nearest above 150 kg. Held, 155 kg stays as it was
/// lifted.
#[test]
fn what_follows_is_whole_steps_of_what_the_lift_is_rounded_to() {
    let raised = problem("2026-01-08", 7, &[well("2026-01-01", "150 kg")]);
    assert_eq!(due(&solve(&raised)), (Some("152.5 kg"), "raise", false));
    let raised = with(raised, "round", json!("10 kg"));
    assert_eq!(due(&solve(&raised)), (Some("160 kg"), "raise", false));
    let held = problem("2026-01-29", 7, &[well("2026-01-01", "155 kg")]);
    let held = with(held, "round", json!("10 kg"));
    assert_eq!(due(&solve(&held)), (Some("155 kg"), "hold", false));
    let eased = problem("2026-01-30", 7, &[well("2026-01-01", "155 kg")]);
    let eased = with(eased, "round", json!("10 kg"));
    assert_eq!(due(&solve(&eased)), (Some("140 kg"), "ease", false));
}

#[test]
fn absence_is_counted_from_the_family_beyond_the_spacing() {
    let mut history = vec![well("2026-01-01", "180 kg")];
    let at = |today: &str, history: &[Value]| solve(&problem(today, 7, history));
    assert_eq!(
        due(&at("2026-01-14", &history)),
        (Some("185 kg"), "raise", false)
    );
    assert_eq!(
        due(&at("2026-01-29", &history)),
        (Some("180 kg"), "hold", false)
    );
    // 22 days beyond the week: a step of 5 % off, to what the plates make.
    assert_eq!(
        due(&at("2026-01-30", &history)),
        (Some("170 kg"), "ease", false)
    );
    assert_eq!(due(&at("2026-04-03", &history)), (None, "begin anew", true));
    // Another pull of the family was trained all the while.
    history.push(
        json!({"date": "2026-01-25", "lift": "halting deadlift", "track": "volume",
        "sets": 3, "reps": [8, 8], "load": "140 kg", "done": [8, 8, 8]}),
    );
    let raised = (Some("185 kg"), "raise", false);
    assert_eq!(due(&at("2026-01-29", &history)), raised);
    // Long ago for this track: held, not eased.
    let held = (Some("180 kg"), "hold", false);
    assert_eq!(due(&at("2026-01-30", &history)), held);
    // A lift of no family of it does not count.
    let press = json!({"date": "2026-01-26", "lift": "press", "track": "a", "sets": 1,
        "reps": [5, 5], "load": "60 kg", "done": [5]});
    let mut others = vec![well("2026-01-01", "180 kg"), press];
    assert_eq!(
        due(&at("2026-01-30", &others)),
        (Some("170 kg"), "ease", false)
    );
    others.push(
        json!({"date": "2026-01-27", "lift": "halting deadlift", "track": "a", "sets": 1,
        "reps": [5, 5], "load": "60 kg", "done": [5]}),
    );
    assert_ne!(due(&at("2026-01-30", &others)).1, "ease");
}

#[test]
fn illness_eases_sooner() {
    let history = [well("2026-01-01", "180 kg")];
    let plain = problem("2026-01-22", 7, &history);
    assert_eq!(due(&solve(&plain)), (Some("180 kg"), "hold", false));
    let ill = with(
        plain,
        "ill",
        json!([{"from": "2026-01-05", "to": "2026-01-14"}]),
    );
    // 14 days beyond the spacing and 10 of illness that count twice more: 34, one step.
    assert_eq!(due(&solve(&ill)), (Some("170 kg"), "ease", false));
}

#[test]
fn a_back_that_moved_in_another_pull_keeps_this_one_from_rising() {
    let moved = json!({"date": "2026-01-05", "lift": "halting deadlift", "track": "volume",
        "sets": 3, "reps": [8, 8], "load": "140 kg", "done": [8, 4], "moved_at": 4});
    let history = [well("2026-01-01", "180 kg"), moved];
    let held = solve(&problem("2026-01-08", 7, &history));
    assert_eq!(due(&held), (Some("180 kg"), "hold", false));
    let mut after = history.to_vec();
    after.push(well("2026-01-08", "180 kg"));
    let raised = solve(&problem("2026-01-15", 7, &after));
    // The pull on the very day of the last one counts for the next time, one before does not.
    assert_eq!(due(&raised), (Some("185 kg"), "raise", false));
}

#[test]
fn hurt_has_nothing_due_and_ends() {
    let history = [well("2026-01-01", "180 kg")];
    let plain = problem("2026-01-08", 7, &history);
    let hurt = with(plain.clone(), "hurt", json!([{"from": "2026-01-02"}]));
    let answer = solve(&hurt);
    assert_eq!(due(&answer), (None, "hurt", true));
    assert!(answer["why"].as_str().expect("why").contains("clinician"));
    let over = json!([{"from": "2026-01-02", "to": "2026-01-05"}]);
    assert_eq!(due(&solve(&with(plain, "hurt", over))).0, Some("185 kg"));
}

#[test]
fn stuck_asks_the_coach_and_holds_until_another_load_is_written() {
    let set = |day: u32, load: &str, reps: u8| {
        let date = format!("2026-01-{day:02}");
        with(well(&date, load), "done", json!([reps]))
    };
    let mut history = vec![
        set(1, "200 kg", 5),
        set(3, "205 kg", 4),
        set(5, "205 kg", 4),
        set(7, "195 kg", 5),
        set(9, "200 kg", 5),
        set(11, "205 kg", 4),
        set(13, "205 kg", 4),
    ];
    let at = |day: u32, history: &[Value]| solve(&problem(&format!("2026-01-{day}"), 2, history));
    let asked = (Some("205 kg"), "ask the coach", true);
    assert_eq!(due(&at(15, &history)), asked);
    history.push(set(15, "205 kg", 5));
    assert_eq!(due(&at(17, &history)), asked);
    history.push(set(17, "190 kg", 5));
    let answered = (Some("195 kg"), "raise", false);
    assert_eq!(due(&at(19, &history)), answered);
}

#[test]
fn ranges_pounds_tracks_and_a_first_time() {
    let range = |done: [u8; 3]| {
        let entry = json!({"date": "2026-01-01", "lift": "press", "track": "main", "sets": 3,
            "reps": [3, 5], "load": "135 lb", "done": done});
        let pounds = json!([{"mass": "45 lb", "pairs": 4, "handling_s": 4},
            {"mass": "2.5 lb", "pairs": 1, "handling_s": 4}]);
        json!({"today": "2026-01-03", "lift": "press", "track": "main", "spacing_days": 2,
            "family": ["press"], "bar": "45 lb", "plates": pounds, "history": [entry]})
    };
    assert_eq!(
        due(&solve(&range([5, 4, 3]))),
        (Some("135 lb"), "repeat", false)
    );
    assert_eq!(
        due(&solve(&range([5, 5, 5]))),
        (Some("140 lb"), "raise", false)
    );
    assert_eq!(
        due(&solve(&range([5, 4, 2]))),
        (Some("135 lb"), "repeat", false)
    );
    let light = with(range([5, 5, 5]), "track", json!("light"));
    assert_eq!(due(&solve(&light)), (None, "begin anew", true));
    let mut open = range([5, 5, 9]);
    open["history"][0]["reps"] = json!([5, null]);
    assert_eq!(due(&solve(&open)), (Some("140 lb"), "raise", false));
}

#[test]
fn no_rule_raises_more_than_a_tenth_in_a_week_unless_the_file_says_so() {
    let history = [
        well("2026-01-01", "40 kg"),
        well("2026-01-03", "42.5 kg"),
        well("2026-01-05", "45 kg"),
    ];
    let rule = |week: &str| {
        let rule = json!({"step": "2.5 kg", "week": week});
        with(problem("2026-01-07", 2, &history), "rule", rule)
    };
    assert_eq!(due(&solve(&rule("10 %"))), (Some("45 kg"), "hold", false));
    assert_eq!(
        due(&solve(&rule("20 %"))),
        (Some("47.5 kg"), "raise", false)
    );
}

#[test]
fn answers_and_refusals_in_words() {
    let fine = problem("2026-01-08", 7, &[well("2026-01-01", "180 kg")]);
    let entry = |field: &str, value: Value| {
        let mut bad = fine.clone();
        bad["history"][0][field] = value;
        bad
    };
    let late = [well("2026-01-05", "180 kg"), well("2026-01-01", "180 kg")];
    let problems = [
        fine.clone(),
        with(fine.clone(), "today", json!("2026-01-60")),
        with(fine.clone(), "today", json!("8.1.2026")),
        with(fine.clone(), "spacing_days", json!(400)),
        with(fine.clone(), "spacing_days", json!("weekly")),
        with(fine.clone(), "famly", json!([])),
        with(fine.clone(), "bar", json!("20")),
        with(
            fine.clone(),
            "plates",
            json!([{"mass": "20 kg", "pairs": 1, "colour": "blue"}]),
        ),
        with(fine.clone(), "rule", json!({"step": "15 %"})),
        with(fine.clone(), "rule", json!({"steps": "5 %"})),
        with(fine.clone(), "rule", json!({"away": "60 %"})),
        with(fine.clone(), "rule", json!({"tries": 0})),
        with(
            fine.clone(),
            "ill",
            json!([{"from": "2026-01-05", "to": "2026-01-02"}]),
        ),
        entry("date", json!("2026-02-01")),
        entry("reps", json!([5])),
        entry("reps", json!([5, 3])),
        entry("load", json!("1200 kg")),
        entry("load", json!("0 kg")),
        entry("done", json!([5.5])),
        entry("moved_at", json!(0)),
        problem("2026-01-08", 7, &late),
    ];
    let told: Vec<String> = problems.iter().map(|p| solve(p).to_string()).collect();
    insta::assert_snapshot!(told.join("\n"));
}

#[test]
fn it_is_timed_like_the_other_planners() {
    let input = problem("2026-01-08", 7, &[well("2026-01-01", "180 kg")]).to_string();
    let mut now = 0;
    let mut clock = || {
        now += 1_500;
        now
    };
    let request = Request {
        problem: "next",
        input: &input,
        times: Some(3),
        within_ns: 1,
    };
    let answer = run(request, &mut clock);
    assert!(
        answer.json.contains(r#""median_us":1.5"#),
        "{}",
        answer.json
    );
}
