//! Loads in the lifter's own unit, also before their first lift.
use crate::gym::{Gym, march, text};
use domain::prescription::LoadWish;
use domain::{Mass, MassUnit};
use journal::MassUnit as Unit;

/// 150 lb are 68.0388555 kg (the international pound, exact): what the page once said.
fn gym() -> Gym {
    let pounds = Mass::of(MassUnit::Lb, 150_000);
    let third = Mass::of(MassUnit::Lb, 133_333);
    Gym::new()
        .planned("Bo", "rack pull", march(9), LoadWish::Mass(pounds))
        .planned("Cy", "rack pull", march(9), LoadWish::Mass(third))
        .recorded()
}

#[tokio::test]
async fn who_has_lifted_nothing_reads_their_own_unit() {
    let gym = gym();
    gym.desk()
        .know_units([("Bo".to_owned(), Unit::Lb), ("Cy".to_owned(), Unit::Kg)].into());
    let own = gym.desk().link(1, "Bo", 0).expect("a link");
    let opened = crate::gym::post(gym.router(), &own, (&own, ""), &[]).await;
    let cookie = crate::gym::cookie(&opened);
    let mine = crate::gym::ask_with(gym.router(), "GET", &own, &[("cookie", &cookie)]).await;
    for page in [
        gym.text("/coach/plan").await,
        gym.text("/coach/lifter/Bo").await,
        text(mine).await,
    ] {
        assert!(page.contains("1 \u{d7} 5 at 150 lb"), "{page}");
        assert!(!page.contains("68.0388555"), "{page}");
    }
    // Rounded as the screen rounds: to hundredths.
    let cy = gym.text("/coach/lifter/Cy").await;
    assert!(cy.contains("1 \u{d7} 5 at 60.48 kg"), "{cy}");
}

/// Somebody who is in no file of the gym any more is still read.
#[tokio::test]
async fn nobody_s_load_has_seven_decimals() {
    let page = gym().text("/coach/plan").await;
    assert!(
        page.contains("68.04 kg") && page.contains("60.48 kg"),
        "{page}"
    );
}
