//! What must be true of whatever the page answers to whatever bytes: the fuzz target and the tests
//! of `share` ask the same.

/// Statuses that the page or its HTTP library may give. A 500 is a finding.
const STATUSES: [u16; 18] = [
    200, 303, 304, 400, 401, 403, 404, 405, 408, 410, 413, 414, 415, 421, 429, 431, 503, 505,
];
/// What the library itself answers, before any route is asked: an empty body and no more.
const BEFORE_ROUTES: [u16; 5] = [400, 408, 414, 431, 505];

/// Holds the bytes of the answers of one connection against the rules. `secrets` are words of the
/// record, which nobody may read who came without a session or a link.
///
/// # Errors
/// The rule that is broken, in a sentence.
pub(crate) fn check(answers: &[u8], secrets: &[&str], may_see: bool) -> Result<(), String> {
    if answers.is_empty() {
        return Ok(());
    }
    let text = String::from_utf8_lossy(answers);
    let status = text
        .strip_prefix("HTTP/1.1 ")
        .or_else(|| text.strip_prefix("HTTP/1.0 "))
        .and_then(|rest| rest.get(..3)?.parse().ok())
        .ok_or_else(|| format!("no status line: {:.80}", text.escape_debug()))?;
    if !STATUSES.contains(&status) {
        return Err(format!("status {status}"));
    }
    let (head, body) = text
        .split_once("\r\n\r\n")
        .ok_or("a head that does not end")?;
    let head = head.to_ascii_lowercase();
    let guarded = head.contains("content-security-policy: default-src 'none'")
        && head.contains("x-content-type-options: nosniff")
        && head.contains("cache-control: no-store");
    let of_library = BEFORE_ROUTES.contains(&status) && body.is_empty();
    if !guarded && !of_library {
        return Err(format!("status {status} without the security headers"));
    }
    match secrets.iter().find(|secret| text.contains(**secret)) {
        Some(secret) if !may_see => Err(format!("{secret} is told to whoever has no right")),
        _ => Ok(()),
    }
}
