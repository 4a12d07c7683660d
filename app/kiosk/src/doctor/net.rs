//! The network: the page, its certificate, the hub.
use super::{Finding, How, Patient};
use crate::clock::unix_s;
use hub::{Link, Places};
use journal::SealedReader;
use std::net::{SocketAddr, TcpStream};
use std::time::Duration;

/// How long the page is waited for.
const WAIT: Duration = Duration::from_secs(2);

/// Whether the page is where the settings say.
pub(super) fn lan(patient: &Patient) -> Finding {
    let what = "lan";
    let Some(settings) = patient.settings().filter(|settings| settings.share) else {
        return Finding::new(what, How::Off, "the page is off")
            .so("write share = true into kiosk.toml where it is wanted");
    };
    let at = SocketAddr::new(settings.address, settings.port);
    let own = if_addrs::get_if_addrs().unwrap_or_default();
    if !own
        .iter()
        .any(|interface| interface.ip() == settings.address)
    {
        let told = Finding::new(
            what,
            How::Wrong,
            format!("this machine has no address {}", at.ip()),
        );
        return told
            .so("write one of the machine's own into kiosk.toml, and have the router keep it");
    }
    if !settings.is_under_tls() && !at.ip().is_loopback() {
        let told = Finding::new(what, How::Soon, format!("the page at {at} is without TLS"));
        return told.so("take tls = false out of kiosk.toml: the coach's code travels readable");
    }
    match TcpStream::connect_timeout(&at, WAIT) {
        Ok(_) => Finding::new(what, How::Fine, format!("the page answers at {at}")),
        Err(why) => Finding::new(what, How::Soon, format!("nothing answers at {at} ({why})")).so(
            "start the kiosk; where it runs, another program may have the port: choose another",
        ),
    }
}

/// The owner's certificate.
pub(super) fn certificate(patient: &Patient) -> Finding {
    let what = "certificate";
    let under_tls = patient.settings().filter(|s| s.share && s.is_under_tls());
    let Some(settings) = under_tls else {
        return Finding::new(what, How::Off, "the page is not under TLS");
    };
    let Some((certificate, key)) = &settings.certificate else {
        return Finding::new(what, How::Fine, "the device makes and renews its own");
    };
    let now = unix_s();
    let own = Some((certificate.as_ref(), key.as_ref()));
    let ends_s = match share::identity(&patient.data, own, &[], now) {
        Ok(identity) => identity.look(now).ends_s,
        Err(error) => {
            let told = Finding::new(what, How::Wrong, error.to_string());
            return told.so("give the two files that your authority made");
        }
    };
    let Some(ends_s) = ends_s else {
        let told = format!("{certificate} holds for two weeks or more");
        return Finding::new(what, How::Fine, told);
    };
    let days = (ends_s - now).div_euclid(24 * 3_600);
    let told = format!("{certificate} ends in {days} days");
    match days {
        ..0 => Finding::new(what, How::Wrong, told).so("renew it: browsers refuse the page"),
        _ => Finding::new(what, How::Soon, told).so("renew it"),
    }
}

/// Whether the hub answers, and knows this journal.
pub(super) fn hub(patient: &Patient) -> Finding {
    let what = "hub";
    let Some(address) = patient.settings().and_then(|settings| settings.hub.clone()) else {
        return Finding::new(
            what,
            How::Off,
            "kiosk.toml names no hub: this rack keeps its own record",
        );
    };
    let places = Places {
        password: patient.data.join(hub::PASSWORD_FILE),
        roots: patient.data.join(hub::ROOTS_FILE),
    };
    let head = Link::open(&address, &places).and_then(|mut link| link.head());
    let head = match head {
        Ok(head) => head,
        Err(error) => {
            let is_away = matches!(error, hub::HubError::Away { .. });
            let how = if is_away { How::Soon } else { How::Wrong };
            let told = Finding::new(what, how, error.to_string());
            return told.so("the rack works alone meanwhile; see to the hub when nobody lifts");
        }
    };
    let reader = SealedReader::aside(&patient.data.join(journal::JOURNAL_FILE));
    let known = reader.and_then(|reader| Ok((reader.seal_of(head.seq)?, reader.last()?.0)));
    match known {
        Ok((Some(seal), here)) if seal == head.seal => {
            let told = format!("it has {} of this journal's {here} events", head.seq);
            Finding::new(what, How::Fine, told)
        }
        Ok((_, here)) => {
            let there = head.seq;
            let found = format!(
                "it has {there} events of {}, which are not this journal's {here}",
                head.kiosk
            );
            Finding::new(what, How::Wrong, found)
                .so("another box runs under this name, or an older copy was put back: give this box a name of its own, or put the newest copy back")
        }
        Err(error) => {
            Finding::new(what, How::Wrong, error.to_string()).so("mend the journal first")
        }
    }
}
