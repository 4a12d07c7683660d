//! TLS to the hub by rustls: the server shows the very certificate that lies in hub.pem, or one that
//! an authority in it vouches for.
//!
//! Refuses: a server that shows any other. Nothing of the system's own authorities is believed.
use crate::HubError;
use rustls::client::WebPkiServerVerifier;
use rustls::client::danger::{HandshakeSignatureValid, ServerCertVerified, ServerCertVerifier};
use rustls::crypto::{CryptoProvider, ring};
use rustls::pki_types::pem::PemObject as _;
use rustls::pki_types::{CertificateDer, ServerName, UnixTime};
use rustls::{ClientConfig, DigitallySignedStruct, RootCertStore, SignatureScheme};
use std::io;
use std::path::Path;
use std::pin::Pin;
use std::sync::Arc;
use std::task::{Context, Poll};
use tokio::io::{AsyncRead, AsyncWrite, ReadBuf};
use tokio_postgres::tls::{ChannelBinding, MakeTlsConnect, TlsConnect, TlsStream};

/// Begins TLS by the certificates of one file.
#[derive(Debug, Clone)]
pub(crate) struct Tls(Arc<ClientConfig>);

impl Tls {
    /// By the certificates in `roots`; `None` where there is no such file.
    ///
    /// # Errors
    /// [`HubError::File`] when it holds none.
    pub(crate) fn by(roots: &Path) -> Result<Option<Self>, HubError> {
        let wrong = |detail: String| HubError::File {
            path: roots.to_owned(),
            detail: format!("{detail}; lay the server's certificate there, in PEM"),
        };
        if matches!(roots.try_exists(), Ok(false)) {
            return Ok(None);
        }
        let found = CertificateDer::pem_file_iter(roots).map_err(|why| wrong(why.to_string()))?;
        let found: Result<Vec<_>, _> = found.collect();
        let found = found.map_err(|why| wrong(why.to_string()))?;
        let mut store = RootCertStore::empty();
        store.add_parsable_certificates(found.iter().cloned());
        let provider = Arc::new(ring::default_provider());
        let roots = Arc::new(store);
        let inner = WebPkiServerVerifier::builder_with_provider(roots, provider.clone());
        let inner = inner.build().map_err(|why| wrong(why.to_string()))?;
        let verifier = Known {
            found,
            inner,
            provider: provider.clone(),
        };
        let config = ClientConfig::builder_with_provider(provider)
            .with_safe_default_protocol_versions()
            .map_err(|why| wrong(why.to_string()))?
            .dangerous()
            .with_custom_certificate_verifier(Arc::new(verifier))
            .with_no_client_auth();
        Ok(Some(Self(Arc::new(config))))
    }
}

/// Believes the certificates of the file, and what they vouch for.
#[derive(Debug)]
struct Known {
    found: Vec<CertificateDer<'static>>,
    inner: Arc<WebPkiServerVerifier>,
    provider: Arc<CryptoProvider>,
}

impl ServerCertVerifier for Known {
    fn verify_server_cert(
        &self,
        shown: &CertificateDer<'_>,
        between: &[CertificateDer<'_>],
        name: &ServerName<'_>,
        ocsp: &[u8],
        now: UnixTime,
    ) -> Result<ServerCertVerified, rustls::Error> {
        // Somebody carried this very one from the server: neither name nor date say more.
        if self.found.iter().any(|known| known == shown) {
            return Ok(ServerCertVerified::assertion());
        }
        self.inner
            .verify_server_cert(shown, between, name, ocsp, now)
    }

    fn verify_tls12_signature(
        &self,
        message: &[u8],
        by: &CertificateDer<'_>,
        signed: &DigitallySignedStruct,
    ) -> Result<HandshakeSignatureValid, rustls::Error> {
        let known = &self.provider.signature_verification_algorithms;
        rustls::crypto::verify_tls12_signature(message, by, signed, known)
    }

    fn verify_tls13_signature(
        &self,
        message: &[u8],
        by: &CertificateDer<'_>,
        signed: &DigitallySignedStruct,
    ) -> Result<HandshakeSignatureValid, rustls::Error> {
        let known = &self.provider.signature_verification_algorithms;
        rustls::crypto::verify_tls13_signature(message, by, signed, known)
    }

    fn supported_verify_schemes(&self) -> Vec<SignatureScheme> {
        let known = &self.provider.signature_verification_algorithms;
        known.supported_schemes()
    }
}

impl<S> MakeTlsConnect<S> for Tls
where
    S: AsyncRead + AsyncWrite + Unpin + Send + 'static,
{
    type Stream = Under<S>;
    type TlsConnect = Begin;
    type Error = rustls::pki_types::InvalidDnsNameError;

    fn make_tls_connect(&mut self, host: &str) -> Result<Begin, Self::Error> {
        let name = ServerName::try_from(host.to_owned())?;
        Ok(Begin(self.0.clone(), name))
    }
}

/// TLS to one server, about to begin.
pub(crate) struct Begin(Arc<ClientConfig>, ServerName<'static>);

impl<S> TlsConnect<S> for Begin
where
    S: AsyncRead + AsyncWrite + Unpin + Send + 'static,
{
    type Stream = Under<S>;
    type Error = io::Error;
    type Future = Pin<Box<dyn Future<Output = io::Result<Under<S>>> + Send>>;

    fn connect(self, stream: S) -> Self::Future {
        Box::pin(async move {
            let connector = tokio_rustls::TlsConnector::from(self.0);
            connector.connect(self.1, stream).await.map(Under)
        })
    }
}

/// A connection under TLS.
pub(crate) struct Under<S>(tokio_rustls::client::TlsStream<S>);

impl<S: AsyncRead + AsyncWrite + Unpin> TlsStream for Under<S> {
    fn channel_binding(&self) -> ChannelBinding {
        ChannelBinding::none()
    }
}

impl<S: AsyncRead + AsyncWrite + Unpin> AsyncRead for Under<S> {
    fn poll_read(
        mut self: Pin<&mut Self>,
        cx: &mut Context<'_>,
        into: &mut ReadBuf<'_>,
    ) -> Poll<io::Result<()>> {
        Pin::new(&mut self.0).poll_read(cx, into)
    }
}

impl<S: AsyncRead + AsyncWrite + Unpin> AsyncWrite for Under<S> {
    fn poll_write(
        mut self: Pin<&mut Self>,
        cx: &mut Context<'_>,
        from: &[u8],
    ) -> Poll<io::Result<usize>> {
        Pin::new(&mut self.0).poll_write(cx, from)
    }

    fn poll_flush(mut self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.0).poll_flush(cx)
    }

    fn poll_shutdown(mut self: Pin<&mut Self>, cx: &mut Context<'_>) -> Poll<io::Result<()>> {
        Pin::new(&mut self.0).poll_shutdown(cx)
    }
}
