package org.leafward.climate.source;

import java.net.URI;
import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

/** Each kind of trouble with a service outside, and the words for it. */
class DownloadTests {

	private final SettableClock clock = new SettableClock(Instant.parse("2026-11-25T12:00:00Z"));

	private final LocalServer server = LocalServer.start();

	private final Download download = DownloadFixture.patient(this.clock);

	@AfterEach
	void close() {
		this.server.close();
	}

	@Test
	void givesTheWholeTextAsUtf8() {
		this.server.on("/a", LocalServer.text("text/plain; charset=utf-8", "18 °C"));
		assertThat(text("/a")).isEqualTo("18 °C");
	}

	@ParameterizedTest
	@CsvSource({ "404, knows nothing", "500, status 500", "503, out of order", "429, too often", "204, status 204" })
	void anotherStatusIsAFailure(int status, String words) {
		this.server.on("/a", LocalServer.status(status));
		FetchFailed failure = failure("/a");
		assertThat(failure).hasMessageContaining(words).hasMessageContaining("127.0.0.1");
		assertThat(failure.retryAfter()).isNull();
	}

	/** Both forms of RFC 9110, section 10.2.3; a date that is over is no wait. */
	@ParameterizedTest
	@CsvSource(delimiter = '|', value = { "120 | PT2M", "Wed, 25 Nov 2026 14:30:00 GMT | PT2H30M",
			"Wed, 25 Nov 2026 11:00:00 GMT |", "soon |", "-5 |", "99999999999999999999 |" })
	void hearsHowLongToWait(String header, Duration wait) {
		this.server.on("/a", LocalServer.status(503, "Retry-After", header));
		assertThat(failure("/a").retryAfter()).isEqualTo(wait);
	}

	@Test
	void anotherContentTypeIsAFailure() {
		this.server.on("/a", LocalServer.text("text/html", "<p>We are moving.</p>"))
			.on("/b", LocalServer.text("broken", "x"));
		assertThat(failure("/a")).hasMessageContaining("content type 'text/html'");
		assertThat(failure("/b")).hasMessageContaining("content type 'none'");
	}

	@Test
	void whatNeverEndsIsLeft() {
		this.server.on("/a", this.server.silence())
			.on("/b", this.server.trickle("text/plain"))
			.on("/c", LocalServer.flood("text/plain", 1_000_000))
			.on("/d", LocalServer.status(302, "Location", "/d"));
		assertThat(impatient("/a")).hasMessageContaining("in time");
		assertThat(impatient("/b")).hasMessageContaining("in time");
		assertThat(failure("/c")).hasMessageContaining("larger than 204800 bytes");
		assertThat(failure("/d")).hasMessageContaining("redirects more than 5 times");
	}

	@Test
	void halfABodyIsAFailure() {
		this.server.on("/a", LocalServer.brokenOff("text/plain", "x".repeat(1000)));
		assertThat(failure("/a")).hasMessageContaining("127.0.0.1: ");
	}

	@Test
	void nobodyThereIsAFailure() {
		FetchFailed refused = catchThrowableOfType(FetchFailed.class, () -> text(LocalServer.nobody()));
		assertThat(refused).hasMessageContaining("can't be connected to");
		// RFC 2606 keeps .invalid from ever being a name.
		FetchFailed unknown = catchThrowableOfType(FetchFailed.class,
				() -> text(URI.create("https://weather.invalid/a")));
		assertThat(unknown).hasMessageContaining("weather.invalid: ");
	}

	private String text(String path) {
		return text(this.server.address(path));
	}

	private String text(URI address) {
		return this.download.text(address, "text/plain", Set.of("text/plain"));
	}

	private FetchFailed impatient(String path) {
		return catchThrowableOfType(FetchFailed.class, () -> DownloadFixture.impatient(this.clock)
			.text(this.server.address(path), "text/plain", Set.of("text/plain")));
	}

	private FetchFailed failure(String path) {
		return catchThrowableOfType(FetchFailed.class, () -> text(path));
	}

}
