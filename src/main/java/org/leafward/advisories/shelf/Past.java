package org.leafward.advisories.shelf;

import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.leafward.advisories.Advisory;
import org.leafward.advisories.AdvisoryId;
import org.leafward.advisories.AdvisoryState;
import org.leafward.advisories.core.chain.Message;
import org.leafward.advisories.core.chain.MessageChain;
import org.leafward.advisories.store.SentTable;
import org.leafward.measure.NotThere;
import org.springframework.stereotype.Service;

/** What was sent before. */
@Service
public class Past {

	private final Chains chains;

	private final SentTable table;

	Past(Chains chains, SentTable table) {
		this.chains = chains;
		this.table = table;
	}

	/**
	 * An advisory with all of its messages.
	 * @param id the advisory
	 * @return its messages
	 * @throws NotThere when there is none
	 */
	public Chain find(AdvisoryId id) {
		return this.chains.find(id.value()).orElseThrow(() -> new NotThere("There is no advisory " + id));
	}

	/**
	 * Advisories of a county that ended.
	 * @param county its code
	 * @param since from when on they ended
	 * @param now the moment
	 * @param most how many at most
	 * @return what ended last comes first
	 */
	public List<Advisory> endedSince(String county, Instant since, Instant now, int most) {
		return sent(Set.of(county), since.minus(Duration.ofDays(MessageChain.LONGEST_DAYS)), now.plusSeconds(1), 500)
			.stream()
			.map((chain) -> chain.at(now))
			.filter((one) -> !one.state().current() && !ended(one).isBefore(since))
			.sorted(Comparator.comparing(Past::ended).reversed())
			.limit(most)
			.toList();
	}

	private static Instant ended(Advisory advisory) {
		return (advisory.state() == AdvisoryState.CANCELLED) ? advisory.sent() : advisory.expires();
	}

	/**
	 * Advisories of which a message was sent in a time.
	 * @param counties codes of counties
	 * @param from since when
	 * @param to until when, exclusive
	 * @param most how many at most
	 * @return what was sent last comes first
	 */
	public List<Chain> sent(Set<String> counties, Instant from, Instant to, int most) {
		return this.table.newest(counties, from, to, 0, most)
			.stream()
			.map(Message::advisory)
			.map(this.chains::find)
			.flatMap(Optional::stream)
			.toList();
	}

	/**
	 * The document of a message.
	 * @param message its identifier
	 * @return its octets
	 * @throws NotThere when there is none
	 */
	public byte[] document(UUID message) {
		return this.table.document(message).orElseThrow(() -> new NotThere("There is no message " + message));
	}

	/**
	 * Whom a message concerned when it was sent.
	 * @param message its identifier
	 * @return empty until they are counted
	 */
	public Optional<Counts> reach(UUID message) {
		return this.table.reach(message);
	}

}
