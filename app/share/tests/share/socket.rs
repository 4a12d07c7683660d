//! Over a real socket of this machine.
use crate::gym::two_days;
use share::{Front, ShareError, bind, serve};
use std::net::SocketAddr;
use std::time::Duration;
use tokio::io::{AsyncReadExt as _, AsyncWriteExt as _};
use tokio::net::TcpStream;
use tokio::sync::oneshot;
use tokio::time::timeout;

fn anywhere() -> SocketAddr {
    "127.0.0.1:0".parse().expect("an address")
}

/// Sends `head` and reads to the end of the connection.
async fn exchange(at: SocketAddr, head: &str) -> String {
    let mut stream = TcpStream::connect(at).await.expect("connects");
    stream.write_all(head.as_bytes()).await.expect("sends");
    let mut answer = String::new();
    let read = stream.read_to_string(&mut answer);
    timeout(Duration::from_secs(20), read)
        .await
        .expect("within its limits")
        .expect("text");
    answer
}

#[tokio::test]
async fn a_browser_is_answered_until_the_kiosk_ends() {
    let gym = two_days();
    let cookie = gym.coach().await;
    let plain = Front::default();
    let listener = bind(anywhere()).expect("binds");
    let at = listener.local_addr().expect("bound");
    let (end, ended) = oneshot::channel::<()>();
    let server = serve(listener, gym.router(), &plain, async {
        drop(ended.await);
    });
    let client = async {
        let head = format!(
            "GET /record.csv HTTP/1.1\r\nHost: {at}\r\nCookie: {cookie}\r\nConnection: close\r\n\r\n"
        );
        let answer = exchange(at, &head).await;
        assert!(answer.starts_with("HTTP/1.1 200 OK\r\n"), "{answer}");
        assert!(answer.contains("transfer-encoding: chunked"), "{answer}");
        assert!(answer.contains("halting deadlift"));
        assert!(answer.ends_with("\r\n0\r\n\r\n"), "{answer}");

        let foreign = "GET / HTTP/1.1\r\nHost: evil.example\r\nConnection: close\r\n\r\n";
        assert!(exchange(at, foreign).await.starts_with("HTTP/1.1 421 "));
        let none = "GET / HTTP/1.0\r\n\r\n";
        assert!(exchange(at, none).await.contains(" 400 "));
        let noise = "\u{16}\u{3}\u{1} no HTTP\r\n\r\n";
        assert!(exchange(at, noise).await.starts_with("HTTP/1.1 400 "));
        let huge = format!(
            "GET / HTTP/1.1\r\nHost: {at}\r\nX: {}\r\n\r\n",
            "y".repeat(1 << 20)
        );
        let mut stream = TcpStream::connect(at).await.expect("connects");
        // It may be cut off while sending.
        drop(stream.write_all(huge.as_bytes()).await);
        drop(stream);

        // One that only stays connected does not keep the kiosk from ending.
        let idle = TcpStream::connect(at).await.expect("connects");
        end.send(()).expect("the server runs");
        idle
    };
    let both = async { tokio::join!(server, client) };
    let (served, _idle) = timeout(Duration::from_secs(30), both).await.expect("ends");
    served.expect("ends well");
    assert!(
        TcpStream::connect(at).await.is_err(),
        "nobody listens any more"
    );
}

/// A head that never comes to its end is given up on. The paused clock jumps when all wait.
#[tokio::test(start_paused = true)]
async fn a_slow_head_is_given_up_on() {
    let gym = two_days();
    let plain = Front::default();
    let listener = bind(anywhere()).expect("binds");
    let at = listener.local_addr().expect("bound");
    let client = async {
        let mut stream = TcpStream::connect(at).await.expect("connects");
        stream
            .write_all(b"GET / HTTP/1.1\r\nHost: ")
            .await
            .expect("sends");
        let mut answer = Vec::new();
        // Closed, with or without a word.
        drop(stream.read_to_end(&mut answer).await);
        String::from_utf8_lossy(&answer).into_owned()
    };
    let begun = tokio::time::Instant::now();
    let (end, ended) = oneshot::channel::<()>();
    let server = serve(listener, gym.router(), &plain, async {
        drop(ended.await);
    });
    let client = async {
        let answer = client.await;
        let waited = begun.elapsed();
        drop(end);
        (answer, waited)
    };
    let (served, (answer, waited)) = tokio::join!(server, client);
    served.expect("ends well");
    assert!(
        answer.is_empty() || answer.starts_with("HTTP/1.1 408"),
        "{answer}"
    );
    assert!(
        waited >= Duration::from_secs(9) && waited < Duration::from_secs(60),
        "{waited:?}"
    );
}

#[tokio::test]
async fn a_port_that_is_taken_says_so() {
    let first = bind(anywhere()).expect("binds");
    let at = first.local_addr().expect("bound");
    let error = bind(at).expect_err("taken");
    assert!(matches!(error, ShareError::Taken { .. }));
    assert_eq!(
        error.to_string(),
        format!(
            "port {} of 127.0.0.1 is taken by another program; choose another port, or close \
             that program",
            at.port()
        )
    );
    // TEST-NET-1 (RFC 5737) is no machine's address.
    let far: SocketAddr = "192.0.2.1:8080".parse().expect("an address");
    let error = bind(far).expect_err("not here");
    assert_eq!(
        error.to_string(),
        "192.0.2.1 is no address of this machine; choose one that is, or 127.0.0.1"
    );
}
