package org.leafward.platform.http;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpTimeoutException;
import java.time.Duration;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.leafward.support.LocalServer;
import org.springframework.boot.autoconfigure.AutoConfigurations;
import org.springframework.boot.restclient.autoconfigure.RestClientAutoConfiguration;
import org.springframework.boot.test.context.runner.ApplicationContextRunner;
import org.springframework.util.unit.DataSize;
import org.springframework.web.client.ResourceAccessException;
import org.springframework.web.client.RestClient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

/** The bounds of outgoing calls, against a server on this machine. */
class OutgoingHttpTests {

	private final LocalServer server = LocalServer.start();

	@AfterEach
	void close() {
		this.server.close();
	}

	@Test
	void saysWhoAsksAndWhomToWriteTo() {
		this.server.on("/a", LocalServer.text("text/plain", "hello"));
		assertThat(get(client("garden@example.org", 1000), "/a")).isEqualTo("hello");
		get(client("", 1000), "/a");
		assertThat(this.server.userAgents()).containsExactly("Leafward (garden@example.org)", "Leafward");
		assertThatExceptionOfType(IllegalArgumentException.class)
			.isThrownBy(() -> settings("a\r\nCookie: b", 1000, true))
			.withMessageContaining("leafward.http.contact");
	}

	@Test
	void callsNothingButHttpsUnlessTold() {
		RestClient strict = client(settings("", 1000, false));
		refused(strict, "/a", "only https");
		assertThatExceptionOfType(ResourceAccessException.class)
			.isThrownBy(() -> strict.get().uri(URI.create("ftp://127.0.0.1/a")).retrieve().body(String.class))
			.withStackTraceContaining("only https");
		assertThat(this.server.asked()).isEmpty();
	}

	@Test
	void followsAFewRedirectsOfTheSameScheme() {
		this.server.on("/a", LocalServer.status(301, "Location", "/b?x=1"))
			.on("/b", LocalServer.status(307, "Location", this.server.address("/c").toString()))
			.on("/c", LocalServer.text("text/plain", "there"));
		assertThat(get(client("", 1000), "/a")).isEqualTo("there");
		assertThat(this.server.asked()).containsExactly("/a", "/b?x=1", "/c");
	}

	@Test
	void leavesALoopAfterFiveRedirects() {
		this.server.on("/a", LocalServer.status(302, "Location", "/a"));
		refused(client("", 1000), "/a", "redirects more than 5 times");
		assertThat(this.server.asked()).hasSize(6);
	}

	@Test
	void followsToNoOtherScheme() {
		this.server.on("/a", LocalServer.status(302, "Location", "https://127.0.0.1:1/a"))
			.on("/b", LocalServer.status(302, "Location", "file:///etc/passwd"))
			.on("/c", LocalServer.status(302, "Location", "http://[broken"));
		refused(client("", 1000), "/a", "from http to https");
		refused(client("", 1000), "/b", "from http to file");
		refused(client("", 1000), "/c", "can't be read");
	}

	@Test
	void readsOnlySoMuch() {
		this.server.on("/said", LocalServer.text("text/plain", "x".repeat(1001)))
			.on("/unsaid", LocalServer.flood("text/plain", 10_000))
			.on("/just", LocalServer.text("text/plain", "x".repeat(1000)));
		refused(client("", 1000), "/said", "larger than 1000 bytes");
		refused(client("", 1000), "/unsaid", "larger than 1000 bytes");
		assertThat(get(client("", 1000), "/just")).hasSize(1000);
	}

	@Test
	void waitsOnlySoLongForHeadAndBody() {
		this.server.on("/head", this.server.silence()).on("/body", this.server.trickle("text/plain"));
		RestClient impatient = client(settings(Duration.ofMillis(300), "", 10_000, true));
		timedOut(impatient, "/head");
		timedOut(impatient, "/body");
	}

	@Test
	void boundsTheBuilderThatSpringGives() {
		this.server.on("/a", LocalServer.text("text/plain", "x".repeat(2000)));
		new ApplicationContextRunner().withConfiguration(AutoConfigurations.of(RestClientAutoConfiguration.class))
			.withUserConfiguration(OutgoingHttpConfiguration.class)
			.withPropertyValues("leafward.http.plain=true", "leafward.http.max-body=1KB",
					"leafward.http.contact=https://example.org")
			.run((context) -> {
				refused(context.getBean(RestClient.Builder.class).build(), "/a", "larger than 1024 bytes");
				HttpSettings settings = context.getBean(HttpSettings.class);
				assertThat(settings.connectTimeout()).isEqualTo(Duration.ofSeconds(5));
				assertThat(settings.readTimeout()).isEqualTo(Duration.ofSeconds(20));
			});
		assertThat(this.server.userAgents()).containsExactly("Leafward (https://example.org)");
	}

	private void timedOut(RestClient client, String path) {
		assertThatExceptionOfType(Exception.class).isThrownBy(() -> get(client, path))
			.withRootCauseInstanceOf(IOException.class)
			.satisfies((ex) -> assertThat(Stream.iterate((Throwable) ex, Objects::nonNull, Throwable::getCause))
				.hasAtLeastOneElementOfType(HttpTimeoutException.class));
	}

	private void refused(RestClient client, String path, String word) {
		assertThatExceptionOfType(Exception.class).isThrownBy(() -> get(client, path)).satisfies((ex) -> {
			StringBuilder words = new StringBuilder();
			for (Throwable cause = ex; cause != null; cause = cause.getCause()) {
				words.append(cause.getMessage()).append('\n');
			}
			assertThat(words.toString()).contains(word);
		});
	}

	private String get(RestClient client, String path) {
		return client.get().uri(this.server.address(path)).retrieve().body(String.class);
	}

	private static RestClient client(String contact, long bytes) {
		return client(settings(contact, bytes, true));
	}

	private static RestClient client(HttpSettings settings) {
		RestClient.Builder builder = RestClient.builder();
		new OutgoingHttp(settings).customize(builder);
		return builder.build();
	}

	private static HttpSettings settings(String contact, long bytes, boolean plain) {
		return settings(Duration.ofSeconds(10), contact, bytes, plain);
	}

	private static HttpSettings settings(Duration wait, String contact, long bytes, boolean plain) {
		return new HttpSettings(Duration.ofSeconds(5), wait, DataSize.ofBytes(bytes), contact, plain, false);
	}

}
