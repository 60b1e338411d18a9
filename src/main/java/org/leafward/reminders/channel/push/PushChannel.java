package org.leafward.reminders.channel.push;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import org.leafward.accounts.Person;
import org.leafward.accounts.PersonId;
import org.leafward.reminders.Message;
import org.leafward.reminders.PushSubscription;
import org.leafward.reminders.channel.Channel;
import org.leafward.reminders.channel.Delivery;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.core.OneLine;
import org.leafward.reminders.store.PushTable;

/**
 * Sends to the browsers of a person. It never says that nobody could be reached: each
 * push service is one that a browser named, so somebody's dead address would hold up
 * everybody else.
 */
public class PushChannel implements Channel {

	/** The channel's code. */
	public static final String CODE = "push";

	/** With ten browsers on dead services the last ones wait for the next try. */
	private static final Duration LONGEST = Duration.ofMinutes(1);

	private static final Duration TRIAL_LASTS = Duration.ofMinutes(5);

	private static final int LONGEST_REASON = 500;

	private final PushTable table;

	private final PushPost post;

	private final Clock clock;

	PushChannel(PushTable table, PushPost post, Clock clock) {
		this.table = table;
		this.post = post;
		this.clock = clock;
	}

	@Override
	public String code() {
		return CODE;
	}

	@Override
	public String words() {
		return "Push messages";
	}

	/**
	 * The labels of the browsers stand for the address, since endpoints are secrets.
	 */
	@Override
	public Map<PersonId, String> addresses(Collection<Person> people) {
		return this.table.labels(people.stream().map(Person::id).toList());
	}

	@Override
	public Delivery deliver(Message message) {
		return send(message.person(), PushNote.of(message));
	}

	/**
	 * Sends a message that says nothing, so that a person sees whether it comes.
	 * @param person who
	 * @return what came of it
	 */
	public Delivery trial(PersonId person) {
		return send(person, new PushNote("A trial message", "Messages about your plants will look like this one.",
				"/reminders/push", "trial", true, this.clock.instant().plus(TRIAL_LASTS)));
	}

	/**
	 * What a browser needs to know to trust this server.
	 * @return a public key: a point of P-256 in uncompressed form, as base64url
	 */
	public String publicKey() {
		return this.post.identity().publicKey();
	}

	private Delivery send(PersonId person, PushNote note) {
		long started = System.nanoTime();
		List<PushAnswer> answers = new ArrayList<>();
		for (PushSubscription browser : this.table.of(person)) {
			if (System.nanoTime() - started > LONGEST.toNanos()) {
				answers.add(new PushAnswer(Outcome.LATER, false, "no time was left for the others"));
				break;
			}
			PushAnswer answer = this.post.send(browser, note);
			note(browser, answer);
			answers.add(answer);
		}
		return whole(answers);
	}

	private void note(PushSubscription browser, PushAnswer answer) {
		Instant now = this.clock.instant();
		if (answer.gone()) {
			this.table.remove(browser.person(), browser.id());
		}
		else if (answer.outcome() == Outcome.TAKEN) {
			this.table.taken(browser.id(), now);
		}
		else {
			this.table.failed(browser.id(), now);
		}
	}

	/** One browser is enough, since a person looks at one of them. */
	private static Delivery whole(List<PushAnswer> answers) {
		if (answers.stream().anyMatch((one) -> one.outcome() == Outcome.TAKEN)) {
			return Delivery.of(Outcome.TAKEN);
		}
		boolean later = answers.stream().anyMatch((one) -> one.outcome() == Outcome.LATER);
		String reasons = answers.stream()
			.map(PushAnswer::reason)
			.filter(Objects::nonNull)
			.distinct()
			.collect(Collectors.joining("; "));
		return new Delivery(later ? Outcome.LATER : Outcome.REFUSED,
				answers.isEmpty() ? "no browser takes messages any more" : OneLine.of(reasons, LONGEST_REASON));
	}

}
