//! Contrast of every text colour on its ground, by the formula of WCAG 2.2 (relative luminance,
//! success criterion 1.4.6: 7:1).
mod bench;

use slint::{Color, ComponentHandle as _};
use ui::{Discs, Shade, Theme};

/// Relative luminance of a colour, WCAG 2.2.
fn luminance(colour: Color) -> f64 {
    let linear = |channel: u8| {
        let share = f64::from(channel) / 255.0;
        if share <= 0.040_45 {
            share / 12.92
        } else {
            ((share + 0.055) / 1.055).powf(2.4)
        }
    };
    0.2126 * linear(colour.red()) + 0.7152 * linear(colour.green()) + 0.0722 * linear(colour.blue())
}

/// Contrast ratio of two colours, WCAG 2.2.
fn contrast(one: Color, other: Color) -> f64 {
    let (a, b) = (luminance(one), luminance(other));
    (a.max(b) + 0.05) / (a.min(b) + 0.05)
}

fn rgb(hex: u32) -> Color {
    Color::from_argb_encoded(0xFF00_0000 | hex)
}

/// The formula itself against rows of the project's table of WCAG contrasts
/// (`wcag_contrast.csv`: computed from the definition in WCAG 2.2, black on white 21:1).
#[test]
fn the_formula_gives_the_values_of_the_standard() {
    let rows = [
        (0x00_0000, 0xFF_FFFF, 21.0),
        (0x77_7777, 0xFF_FFFF, 4.4781),
        (0x76_7676, 0xFF_FFFF, 4.5422),
        (0x59_5959, 0xFF_FFFF, 7.0047),
        (0x5A_5A5A, 0xFF_FFFF, 6.8969),
        (0xFF_0000, 0xFF_FFFF, 3.9985),
        (0x00_00FF, 0xFF_FFFF, 8.5925),
        (0xC8_102E, 0xFF_FFFF, 5.8833),
        (0xFF_8100, 0x64_003A, 5.2354),
    ];
    for (one, other, ratio) in rows {
        let found = contrast(rgb(one), rgb(other));
        assert!(
            (found - ratio).abs() < 0.001,
            "{one:06X} on {other:06X}: {found}"
        );
    }
}

#[test]
fn every_text_keeps_seven_to_one() {
    let (face, _) = bench::open();
    let theme = face.component().global::<Theme<'_>>();
    for daylight in [false, true] {
        theme.set_daylight(daylight);
        keeps_seven_to_one(&theme);
    }
}

/// Every ink on every ground that it stands on.
fn keeps_seven_to_one(theme: &Theme<'_>) {
    let (ground, raised, pressed) = (theme.get_ground(), theme.get_raised(), theme.get_pressed());
    let pairs = [
        ("chalk on ground", theme.get_chalk(), ground),
        ("chalk on raised", theme.get_chalk(), raised),
        ("chalk on pressed", theme.get_chalk(), pressed),
        ("dust on ground", theme.get_dust(), ground),
        ("dust on raised", theme.get_dust(), raised),
        ("now on ground", theme.get_now(), ground),
        ("now on raised", theme.get_now(), raised),
        ("rest on ground", theme.get_rest(), ground),
        ("rest on raised", theme.get_rest(), raised),
        ("moved on ground", theme.get_moved(), ground),
        ("moved on raised", theme.get_moved(), raised),
        ("ink on what is lit", theme.get_ink(), theme.get_lit()),
        (
            "ink on a main that fills",
            theme.get_ink(),
            theme.get_lit_filling(),
        ),
        (
            "ink on a pressed main",
            theme.get_ink(),
            theme.get_lit_pressed(),
        ),
    ];
    for (words, ink, on) in pairs {
        let ratio = contrast(ink, on);
        assert!(ratio >= 7.0, "{words}: {ratio:.2}");
    }
}

#[test]
fn every_number_on_a_disc_keeps_seven_to_one() {
    let (face, _) = bench::open();
    let discs = face.component().global::<Discs<'_>>();
    let shades = [
        Shade::Red,
        Shade::Blue,
        Shade::Yellow,
        Shade::Green,
        Shade::White,
        Shade::Plain,
    ];
    for shade in shades {
        let ratio = contrast(discs.invoke_ink(shade), discs.invoke_fill(shade));
        assert!(ratio >= 7.0, "{shade:?}: {ratio:.2}");
    }
}
