//! A text as a QR code (ISO/IEC 18004), for the kiosk's screen. Refuses: drawing it.
use qrcodegen::{QrCode, QrCodeEcc};

/// The modules of a QR code, without the quiet zone of four modules that belongs around it.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Qr {
    /// Modules on a side, 21 to 177.
    pub size: usize,
    /// Row by row from the top left: whether a module is dark. `size * size` of them.
    pub dark: Vec<bool>,
}

/// The QR code of `text`, with error correction of about 15 % (level M); `None` when the text is
/// too long for any.
#[must_use]
pub fn qr(text: &str) -> Option<Qr> {
    let code = QrCode::encode_text(text, QrCodeEcc::Medium).ok()?;
    let side = code.size();
    let at = |y: i32| (0..side).map(move |x| (x, y));
    let modules = (0..side).flat_map(at);
    Some(Qr {
        size: usize::try_from(side).ok()?,
        dark: modules.map(|(x, y)| code.get_module(x, y)).collect(),
    })
}

#[cfg(test)]
mod tests {
    use super::qr;

    /// ISO/IEC 18004: finder patterns of seven modules in three corners, timing patterns between.
    #[test]
    fn it_has_the_marks_of_the_standard() {
        let link = format!("http://192.168.1.20:8470/mine/{}", "0".repeat(64));
        let code = qr(&link).expect("fits");
        assert_eq!(code.dark.len(), code.size * code.size);
        assert!(
            (code.size - 17).is_multiple_of(4) && code.size <= 57,
            "{}",
            code.size
        );
        let dark = |x: usize, y: usize| code.dark[y * code.size + x];
        for (left, top) in [(0, 0), (code.size - 7, 0), (0, code.size - 7)] {
            for y in 0..7_usize {
                for x in 0..7_usize {
                    let ring = x.min(6 - x).min(y.min(6 - y));
                    assert_eq!(dark(left + x, top + y), ring != 1, "{left} {top} {x} {y}");
                }
            }
        }
        for at in 8..code.size - 8 {
            assert_eq!(dark(at, 6), at % 2 == 0);
            assert_eq!(dark(6, at), at % 2 == 0);
        }
        assert_eq!(qr(&"x".repeat(4_000)), None);
    }
}
