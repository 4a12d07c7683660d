//! Advice on splitting, steel and measuring, in the words that a coach reads.
use chrono::{Days, NaiveDate};
use domain::body::{Body, Sex};
use domain::event::LiftNo;
use domain::lift::Landmark;
use domain::lifter::GearFrom;
use domain::next::outing::{Outing, Went};
use domain::sheet::Rated;
use domain::solve::bar::{Problem, bend};
use domain::split::{Advice, BackDay, Evidence, Split, SplitRule};
use domain::steel::Figures;
use domain::{Length, Lifter, Mass, MassUnit, Stress};
use view::measure::{measure, measure_text};
use view::measure_svg::measure_svg;
use view::split::{sentence, split_face};
use view::split_doc::split_text;
use view::split_svg::split_svg;
use view::{Language, words};

fn kg(tenths: i64) -> Mass {
    Mass::of(MassUnit::Kg, tenths * 100)
}

fn day(days: u64) -> NaiveDate {
    NaiveDate::from_ymd_opt(2027, 1, 4).expect("a day") + Days::new(days)
}

fn split(advice: Advice) -> Split {
    let outing = |(at, (load, went)): (u32, (i64, Went))| Outing {
        no: LiftNo(at + 1),
        date: day(u64::from(at) * 7),
        load: kg(load),
        sets: 1,
        reps: 5,
        went,
        at_top: true,
        hard: false,
        track: None,
        chosen: false,
        kept: None,
    };
    let list = [
        (1_850, Went::Well),
        (1_900, Went::Well),
        (1_950, Went::Short { set: 1, reps: 4 }),
        (1_950, Went::Moved { set: 1, rep: 3 }),
    ];
    Split {
        rule: SplitRule {
            test: Some(day(90)),
            ..SplitRule::shipped()
        },
        evidence: Some(Evidence {
            outings: (0..).zip(list).map(outing).collect(),
            heaviest: Some(kg(1_900)),
            rise: kg(8),
            line: (kg(1_860), kg(1_965)),
            due: Mass::of(MassUnit::Kg, 4_750),
            short: 1,
            moved: 1,
            slow: true,
        }),
        advice,
        back: vec![BackDay {
            date: day(69),
            reps: 5,
            share: 8_000,
            load: Some(kg(1_550)),
        }],
    }
}

const EVERY_ADVICE: [Advice; 7] = [
    Advice::TooFew,
    Advice::Light,
    Advice::Rising,
    Advice::TestNear,
    Advice::Split,
    Advice::Stay,
    Advice::Back,
];

#[test]
fn every_advice_is_one_sentence() {
    let told = EVERY_ADVICE.map(|advice| sentence(Language::English, &split(advice), MassUnit::Kg));
    insta::assert_snapshot!(told.join("\n"));
    insta::assert_snapshot!(split_text(
        Language::English,
        "Ines",
        MassUnit::Kg,
        &split(Advice::Split)
    ));
}

/// Nothing of it stays English on a screen that speaks German, and no gap stays open.
#[test]
fn every_advice_is_said_in_german() {
    let told = EVERY_ADVICE.map(|advice| sentence(Language::German, &split(advice), MassUnit::Kg));
    insta::assert_snapshot!(told.join("\n"));
    for words in told {
        assert!(
            !words.contains('{') && !words.contains("deadlift"),
            "{words}"
        );
    }
}

#[test]
fn the_evidence_is_drawn_on_one_scale() {
    let face = split_face(Language::English, &split(Advice::Split), MassUnit::Kg);
    let points = &face.trail.points;
    assert_eq!(points.len(), 4);
    // From 185 kg at the foot to the end of the line, 196.5 kg.
    let near = |height: f32, share: f32| (height - share).abs() < 0.002;
    let (from, to) = face.trail.line.expect("a line through four");
    assert!(near(from, 10.0 / 115.0) && near(to, 1.0), "{from} {to}");
    assert!(near(points[0].height, 0.0) && near(points[3].height, 100.0 / 115.0));
    let (height, words) = face.trail.threshold.expect("a threshold");
    assert!(near(height, 0.0));
    assert_eq!(words, "heavy from 185 kg");
    assert_eq!(face.back, ["14 March: deadlift 155 kg × 5"]);
}

/// Every outing is drawn by how it went, higher loads higher, the line from end to end.
#[test]
fn the_evidence_to_print_is_whole() {
    let svg = split_svg(
        Language::English,
        "Ines",
        MassUnit::Kg,
        &split(Advice::Split),
    );
    let tags = svg.matches('<').count();
    assert_eq!(tags, svg.matches('>').count());
    // Two well, one short; one moved as a cross of two lines, the threshold, least squares.
    assert_eq!(svg.matches("<circle").count(), 3);
    assert_eq!(svg.matches("fill=\"white\" stroke").count(), 1);
    assert_eq!(svg.matches("<line").count(), 4);
    let cy = |row: &str| -> f32 {
        let y = row.split("cy=\"").nth(1).expect("cy");
        y.split('"')
            .next()
            .expect("a number")
            .parse()
            .expect("a number")
    };
    let ys: Vec<f32> = svg
        .lines()
        .filter(|row| row.starts_with("<circle"))
        .map(cy)
        .collect();
    assert!(ys[0] > ys[1] && ys[1] > ys[2], "185, 190, 195 kg: {ys:?}");
    assert!(
        svg.contains("heavy from 185 kg") && svg.contains(">25 Jan<"),
        "{svg}"
    );
}

/// The worked value of the standard beam tables: d = 28.5 mm, 1 m between the pins, 0.25 m beyond,
/// 890 N (90.755 kg): 97.9 MPa.
#[test]
fn steel_in_one_line() {
    let bent = bend(&Problem {
        shaft_diameter: Length::from_nm(28_500_000),
        youngs_modulus: Stress::gpa(205),
        yield_stress: Stress::mpa(1_000),
        support_span: Length::mm(1_000),
        load_span: Length::mm(1_500),
        load_per_side: Mass::of(MassUnit::Kg, 90_755),
        drop: None,
    });
    let figures = Figures {
        load: kg(2_015),
        rated: vec![(Rated::Pins, kg(4_000)), (Rated::Bar, kg(5_000))],
        bending: Some(bent.expect("it bends")),
    };
    assert_eq!(
        words::steel(&figures, MassUnit::Kg),
        "at most 201.5 kg where makers rate 400 kg of the pins, 500 kg of the bar; 97.9 MPa in the \
         shaft on the pins, 10 % of yield; bends for good from a drop of 205 mm; a guide, never a \
         certificate"
    );
}

fn lifter(landmarks: Vec<(Landmark, Length)>, stature: Option<Length>) -> Lifter {
    Lifter {
        name: "Ines".into(),
        also: Vec::new(),
        unit: MassUnit::Kg,
        rack: "door rack".into(),
        bar: None,
        ladder: "fives".into(),
        landmarks,
        hooks: Vec::new(),
        body: Body {
            stature,
            sex: Some(Sex::Female),
            ..Body::default()
        },
        belt: GearFrom::Never,
        straps: GearFrom::Never,
        bests: Vec::new(),
        training_maxes: Vec::new(),
    }
}

#[test]
fn landmarks_are_told_with_how_to_find_them() {
    let measured = vec![(Landmark::TibialTuberosity, Length::mm(452))];
    let found = measure(
        Language::English,
        &lifter(measured, Some(Length::mm(1_630))),
    );
    insta::assert_snapshot!(measure_text(Language::English, &found));
}

/// The drawing is XML without a stray bracket, and names that would break it do not.
#[test]
fn the_drawing_to_print_is_whole() {
    let mut ines = lifter(vec![], Some(Length::mm(1_630)));
    ines.name = "Ines <b>&\u{1}\"".into();
    let svg = measure_svg(Language::English, &measure(Language::English, &ines));
    assert!(svg.contains(">Ines &lt;b&gt;&amp;\"</text>"), "{svg}");
    assert!(svg.starts_with("<svg ") && svg.ends_with("</svg>\n"));
    let tags = svg.matches('<').count();
    assert_eq!(tags, svg.matches('>').count());
    assert_eq!(svg.matches("<text").count(), svg.matches("</text>").count());
    // Five parts, the floor, a mark and its leader for each of four landmarks.
    assert_eq!(svg.matches("<line").count(), 5 + 1 + 2 * 4);
    for word in [
        "tibial tuberosity",
        "top of the patella",
        "mid-thigh",
        "lockout",
    ] {
        assert!(svg.contains(word), "{word}");
    }
    // Words stay within the drawing, each mark's above the one below it.
    let ys: Vec<f32> = svg
        .lines()
        .filter(|row| row.starts_with("<text x=\"640\"") && row.contains("font-size=\"44\""))
        .map(|row| {
            let y = row.split("y=\"").nth(1).expect("y");
            y.split('"')
                .next()
                .expect("a number")
                .parse()
                .expect("a number")
        })
        .collect();
    assert_eq!(ys.len(), 4);
    assert!(ys.windows(2).all(|two| two[0] - two[1] >= 300.0), "{ys:?}");
    assert!(ys.iter().all(|y| (260.0..2_000.0).contains(y)), "{ys:?}");
}

/// Whatever is known, the body stands on the floor, its parts join, and the marks rise with it.
#[test]
fn the_body_is_drawn_to_scale() {
    let known = vec![
        (Landmark::TibialTuberosity, Length::mm(452)),
        (Landmark::Lockout, Length::mm(790)),
    ];
    for (landmarks, stature) in [
        (vec![], None),
        (vec![], Some(Length::mm(1_500))),
        (known, Some(Length::mm(1_800))),
    ] {
        let found = measure(Language::English, &lifter(landmarks, stature));
        let body = &found.body;
        let of = |part: &str| {
            let found = body.segments.iter().find(|s| s.part == part);
            found.expect("a part of the body")
        };
        assert_eq!(of("shank").to, of("thigh").from);
        assert_eq!(of("thigh").to, of("trunk").from);
        assert_eq!(of("trunk").to, of("arm").from);
        assert!(of("foot").from.1 - of("foot").thick_mm / 2.0 >= -1.0);
        assert!(of("trunk").to.1 < body.head.1 && body.head.1 < body.top_mm);
        let heights: Vec<f32> = found.marks.iter().map(|m| m.height_mm).collect();
        assert!(
            heights.windows(2).all(|two| two[0] <= two[1]),
            "{heights:?}"
        );
        let knee = of("shank").to.1;
        assert!(
            (heights[0]..=heights[1]).contains(&knee),
            "{knee} {heights:?}"
        );
    }
}
