package org.leafward.advisories.core.chain;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.leafward.advisories.AdvisoryState;
import org.leafward.measure.BadInput;
import org.leafward.measure.Findings;

/**
 * The messages of an advisory: which may follow, what they refer to, and where the
 * advisory stands. Nothing is edited in place; whoever changes something sends another
 * message (CAP 1.2, section 3.2.1, msgType).
 *
 * @param links by number, the first one an alert
 */
public record MessageChain(List<ChainLink> links) {

	/** Longest time that an advisory is in force, days. */
	public static final int LONGEST_DAYS = 120;

	/** Farthest that its beginning may lie ahead, days. */
	public static final int FARTHEST_DAYS = 60;

	/** A message that ends sooner is read by hardly anybody. */
	private static final Duration SHORTEST = Duration.ofHours(1);

	/** Messages of one advisory; whoever needs more means another one. */
	public static final int MOST = 50;

	/** An advisory of which nothing was sent. */
	public static final MessageChain NONE = new MessageChain(List.of());

	/**
	 * Checks the order.
	 * @throws IllegalArgumentException when the first is no alert, a later one is, one
	 * follows a cancellation, times go back, or an identifier comes twice
	 */
	public MessageChain {
		links = List.copyOf(links);
		Set<String> seen = new HashSet<>();
		for (int i = 0; i < links.size(); i++) {
			ChainLink link = links.get(i);
			boolean ordered = (i == 0) == (link.type() == MessageType.ALERT)
					&& (i == 0 || (links.get(i - 1).type() != MessageType.CANCEL
							&& links.get(i - 1).sentAt().isBefore(link.sentAt())));
			if (!ordered || !seen.add(link.identifier())) {
				throw new IllegalArgumentException("message %d can't stand there: %s".formatted(i + 1, link));
			}
		}
	}

	/**
	 * The latest message.
	 * @return empty before the first
	 */
	public Optional<ChainLink> latest() {
		return this.links.isEmpty() ? Optional.empty() : Optional.of(this.links.get(this.links.size() - 1));
	}

	/**
	 * Where the advisory stands.
	 * @param now the moment
	 * @return the state
	 * @throws IllegalStateException before the first message
	 */
	public AdvisoryState state(Instant now) {
		ChainLink latest = latest().orElseThrow(() -> new IllegalStateException("nothing was sent"));
		if (latest.type() == MessageType.CANCEL) {
			return AdvisoryState.CANCELLED;
		}
		if (!now.isBefore(latest.expires())) {
			return AdvisoryState.OVER;
		}
		return now.isBefore(latest.onset()) ? AdvisoryState.AHEAD : AdvisoryState.IN_FORCE;
	}

	/**
	 * When a message may say that it was sent: two of one advisory never say the same.
	 * @param now the moment
	 * @return whole seconds
	 */
	public Instant nextSent(Instant now) {
		Instant second = now.truncatedTo(ChronoUnit.SECONDS);
		Instant earliest = latest().map((one) -> one.sentAt().plusSeconds(1)).orElse(second);
		return second.isBefore(earliest) ? earliest : second;
	}

	/**
	 * Checks whether a message may follow.
	 * @param type what it is to do
	 * @param sent when it says that it was sent
	 * @param onset when what it speaks of begins; may lie in the past, as it may have
	 * begun
	 * @param expires when it ends
	 * @throws BadInput when it may not
	 */
	public void check(MessageType type, Instant sent, Instant onset, Instant expires) {
		if (type == MessageType.ALERT && !this.links.isEmpty()) {
			throw new BadInput("this advisory was sent already", "type", "send an update of it");
		}
		if (type != MessageType.ALERT) {
			AdvisoryState state = this.links.isEmpty() ? AdvisoryState.OVER : state(sent);
			if (!state.current()) {
				throw new BadInput("this advisory is " + state.words(), "type", "write another one");
			}
		}
		if (this.links.size() >= MOST) {
			throw new BadInput("this advisory has %d messages".formatted(MOST), "type",
					"call it off and write another");
		}
		checkTimes(sent, onset, expires);
	}

	private static void checkTimes(Instant sent, Instant onset, Instant expires) {
		Findings findings = new Findings();
		findings.check(() -> {
			if (onset.isAfter(sent.plus(Duration.ofDays(FARTHEST_DAYS)))) {
				throw new BadInput("it begins more than %d days from now".formatted(FARTHEST_DAYS), "onset",
						"send it later, or check the date");
			}
			if (onset.isBefore(sent.minus(Duration.ofDays(LONGEST_DAYS)))) {
				throw new BadInput("it began more than %d days ago".formatted(LONGEST_DAYS), "onset", "check the date");
			}
		});
		findings.check(() -> {
			if (!expires.isAfter(onset)) {
				throw new BadInput("it ends before it begins", "expires", "choose a later end");
			}
			if (expires.isBefore(sent.plus(SHORTEST))) {
				throw new BadInput("it ends within the hour", "expires",
						"choose an end at least an hour after it is sent");
			}
			if (expires.isAfter(sent.plus(Duration.ofDays(LONGEST_DAYS)))) {
				throw new BadInput("it ends more than %d days from now".formatted(LONGEST_DAYS), "expires",
						"choose an earlier end; send another one when it lasts");
			}
		});
		findings.end();
	}

	/**
	 * What a message that is sent now refers to: every earlier one that has not ended,
	 * and the latest in any case.
	 * @param sent when it says that it was sent
	 * @return triples with a space between them; empty for the first message
	 */
	public String references(Instant sent) {
		StringBuilder references = new StringBuilder();
		for (int i = 0; i < this.links.size(); i++) {
			if (i == this.links.size() - 1 || this.links.get(i).expires().isAfter(sent)) {
				references.append((references.length() > 0) ? " " : "").append(this.links.get(i).triple());
			}
		}
		return references.toString();
	}

	/**
	 * Every county that any message named: who was told once is told of the end too.
	 * @return codes of counties
	 */
	public Set<String> counties() {
		Set<String> all = new TreeSet<>();
		this.links.forEach((one) -> all.addAll(one.counties()));
		return all;
	}

	/**
	 * When the last of its messages ends, as feeds keep an update or a cancellation as
	 * long as anything that it refers to.
	 * @return the latest end
	 */
	public Instant longest() {
		return this.links.stream().map(ChainLink::expires).max(Instant::compareTo).orElseThrow();
	}

	/**
	 * The chain with one message more.
	 * @param next the message
	 * @return the longer chain
	 */
	public MessageChain with(ChainLink next) {
		List<ChainLink> longer = new ArrayList<>(this.links);
		longer.add(next);
		return new MessageChain(longer);
	}

}
