package org.leafward.reminders.channel.webhook;

import com.sun.net.httpserver.HttpExchange;
import com.zaxxer.hikari.HikariDataSource;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpHeaders;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.stream.Stream;
import org.leafward.accounts.AuditLog;
import org.leafward.accounts.Letter;
import org.leafward.accounts.Letters;
import org.leafward.accounts.People;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.platform.http.HttpSettings;
import org.leafward.platform.http.StrangersHttp;
import org.leafward.reminders.Message;
import org.leafward.reminders.MessageState;
import org.leafward.reminders.MessageText;
import org.leafward.reminders.dispatch.Materialiser;
import org.leafward.reminders.Series;
import org.leafward.reminders.store.WebhookTable;
import org.leafward.support.LocalServer;
import org.leafward.support.SettableClock;
import org.leafward.support.TestDatabase;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.util.unit.DataSize;

import static org.mockito.ArgumentMatchers.any;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.when;

/**
 * Webhooks with a real database, a real server on this machine, which passes as public,
 * and a letter box.
 */
final class WebhookFixture implements AutoCloseable {

	static final PersonId NORA = new PersonId(UUID.fromString("6f8d0a52-1111-4222-8333-944445555666"));

	/** A part of the address that nobody else may see. */
	static final String SECRET_PATH = "/c5c1f0a7d2e94b6f";

	/** In whole seconds, as the database rounds what is finer than it keeps. */
	final SettableClock clock = new SettableClock(Instant.now().truncatedTo(ChronoUnit.SECONDS));

	final LocalServer server = LocalServer.start();

	/** Bodies and headers of the calls, in order. */
	final List<Call> calls = new CopyOnWriteArrayList<>();

	final List<Letter> letters = new ArrayList<>();

	final WebhookTable table;

	final Webhooks webhooks;

	final WebhookChannel channel;

	private final HikariDataSource source = TestDatabase.fresh();

	private final StrangersHttp http;

	WebhookFixture(boolean privateToo) {
		this(privateToo, Duration.ofSeconds(10));
	}

	WebhookFixture(boolean privateToo, Duration patience) {
		this.http = new StrangersHttp(new HttpSettings(Duration.ofSeconds(5), patience, DataSize.ofKilobytes(1),
				"garden@example.org", true, privateToo));
		this.table = new WebhookTable(JdbcClient.create(this.source));
		WebhookAttempts attempts = new WebhookAttempts(new WebhookCall(this.http.builder(), this.clock), this.table,
				people(), letterBox(), "https://plants.example.org/", this.clock);
		this.webhooks = new Webhooks(this.table, attempts, mock(Materialiser.class), mock(AuditLog.class), true,
				this.clock);
		this.channel = new WebhookChannel(this.table, attempts, this.clock);
	}

	/**
	 * What the other side got.
	 *
	 * @param headers its headers
	 * @param body its body
	 */
	record Call(Map<String, List<String>> headers, String body) {

		HttpHeaders forLibrary() {
			return HttpHeaders.of(this.headers, (name, value) -> true);
		}

		String header(String name) {
			return String.join(", ", this.headers.getOrDefault(name, List.of()));
		}

	}

	private static People people() {
		People people = mock(People.class);
		when(people.find(any(PersonId.class))).thenReturn(Optional.empty());
		when(people.find(NORA)).thenReturn(Optional.of(nora()));
		return people;
	}

	static Person nora() {
		return new Person(NORA, "Nora Field", "nora@example.org", ZoneId.of("America/Chicago"));
	}

	private ObjectProvider<Letters> letterBox() {
		Letters box = new Letters() {
			@Override
			public boolean canSend() {
				return true;
			}

			@Override
			public void send(Letter letter) {
				WebhookFixture.this.letters.add(letter);
			}
		};
		return new ObjectProvider<>() {
			@Override
			public Letters getObject() {
				return box;
			}

			@Override
			public Stream<Letters> stream() {
				return Stream.of(box);
			}
		};
	}

	/** Nora's webhook at the local server. */
	String set() {
		return this.webhooks.set(NORA, address().toString()).orElseThrow();
	}

	URI address() {
		return this.server.address(SECRET_PATH + "?key=" + SECRET_PATH.substring(1));
	}

	/** Answers each call, having written it down. */
	WebhookFixture answering(LocalServer.Answer answer) {
		this.server.on(SECRET_PATH, (exchange) -> {
			note(exchange);
			answer.send(exchange);
		});
		return this;
	}

	private void note(HttpExchange exchange) throws IOException {
		Map<String, List<String>> headers = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
		headers.putAll(exchange.getRequestHeaders());
		this.calls.add(new Call(headers, new String(exchange.getRequestBody().readAllBytes(), StandardCharsets.UTF_8)));
	}

	static Message message(String id, String content) {
		UUID uuid = UUID.nameUUIDFromBytes(id.getBytes(StandardCharsets.UTF_8));
		MessageText words = new MessageText("Water the hedge", "Water the hedge.\n", "<p>Water the hedge.</p>",
				"Water the hedge", "https://plants.example.org/tasks/1", content);
		return new Message(uuid, NORA, "webhook", Series.MORNING, "Leafward <reminders@example.org>",
				"https://example.org", "Nora Field", words, null, "<%s@example.org>".formatted(uuid),
				MessageState.WAITING, Instant.parse("2026-11-12T13:00:00Z"), null, null, 0);
	}

	@Override
	public void close() {
		this.server.close();
		try {
			this.http.close();
		}
		catch (IOException ex) {
			throw new IllegalStateException(ex);
		}
		this.source.close();
	}

}
