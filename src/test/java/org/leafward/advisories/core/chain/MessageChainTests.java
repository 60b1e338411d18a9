package org.leafward.advisories.core.chain;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leafward.advisories.AdvisoryState;
import org.leafward.measure.BadInput;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

/**
 * The rules of CAP 1.2, sections 3.2.1 and 3.3.2, for messages that follow each other.
 */
class MessageChainTests {

	private static final Instant NOON = Instant.parse("2027-04-20T17:00:00Z");

	private static final ZoneId ZONE = ZoneId.of("America/Chicago");

	private static ChainLink link(MessageType type, String id, Instant sent, Instant onset, Instant expires,
			String... counties) {
		return new ChainLink(type, "a@b.example", id, CapTime.write(sent, ZONE), sent, onset, expires,
				Set.of(counties));
	}

	private static Instant hours(int hours) {
		return NOON.plus(Duration.ofHours(hours));
	}

	private static MessageChain alert() {
		return MessageChain.NONE.with(link(MessageType.ALERT, "one", NOON, hours(10), hours(20), "alder", "sable"));
	}

	@ParameterizedTest
	@CsvSource({ "0, AHEAD", "10, IN_FORCE", "19, IN_FORCE", "20, OVER" })
	void stateFollowsTheClock(int hours, AdvisoryState state) {
		assertThat(alert().state(hours(hours))).isEqualTo(state);
	}

	@Test
	void laterMessagesReferToAllThatHaveNotEnded() {
		MessageChain chain = alert().with(link(MessageType.UPDATE, "two", hours(2), hours(10), hours(30), "alder"));
		assertThat(chain.references(hours(3)))
			.isEqualTo("a@b.example,one,2027-04-20T12:00:00-05:00 a@b.example,two,2027-04-20T14:00:00-05:00");
		assertThat(chain.references(hours(25))).as("the first has ended")
			.isEqualTo("a@b.example,two,2027-04-20T14:00:00-05:00");
		assertThat(MessageChain.NONE.references(NOON)).isEmpty();
	}

	@Test
	void whoWasToldOnceIsToldOfTheEnd() {
		MessageChain chain = alert().with(link(MessageType.UPDATE, "two", hours(2), hours(10), hours(30), "merrow"));
		assertThat(chain.counties()).containsExactly("alder", "merrow", "sable");
		assertThat(chain.longest()).isEqualTo(hours(30));
	}

	@Test
	void nothingFollowsACancellation() {
		MessageChain chain = alert().with(link(MessageType.CANCEL, "two", hours(2), hours(2), hours(20), "alder"));
		assertThat(chain.state(hours(3))).isEqualTo(AdvisoryState.CANCELLED);
		assertThatThrownBy(() -> chain.check(MessageType.UPDATE, hours(3), hours(5), hours(9)))
			.isInstanceOf(BadInput.class)
			.hasMessageContaining("called off");
		assertThatThrownBy(() -> chain.with(link(MessageType.UPDATE, "three", hours(3), hours(5), hours(9), "alder")))
			.isInstanceOf(IllegalArgumentException.class);
	}

	@Test
	void nothingFollowsTheEnd() {
		assertThatThrownBy(() -> alert().check(MessageType.UPDATE, hours(20), hours(21), hours(29)))
			.isInstanceOf(BadInput.class)
			.hasMessageContaining("over");
		assertThatThrownBy(() -> alert().check(MessageType.ALERT, hours(1), hours(2), hours(9)))
			.isInstanceOf(BadInput.class)
			.hasMessageContaining("sent already");
	}

	@ParameterizedTest
	@CsvSource({ "5, 5, expires", "5, 4, expires", "-9, 0, expires", "2000, 2010, onset", "-3000, 20, onset",
			"5, 3000, expires" })
	void timesAreInOrder(int onset, int expires, String field) {
		assertThatThrownBy(() -> MessageChain.NONE.check(MessageType.ALERT, NOON, hours(onset), hours(expires)))
			.isInstanceOfSatisfying(BadInput.class, (ex) -> assertThat(ex.byField()).containsKey(field));
	}

	@Test
	void whatHasBegunMayBeSent() {
		MessageChain.NONE.check(MessageType.ALERT, NOON, hours(-5), hours(5));
	}

	@Test
	void twoMessagesOfOneSecondAreSentOneAfterTheOther() {
		assertThat(alert().nextSent(NOON)).isEqualTo(NOON.plusSeconds(1));
		assertThat(alert().nextSent(hours(1).plusMillis(700))).isEqualTo(hours(1));
	}

	@Test
	void aChainBeginsWithAnAlertAndHasNoIdentifierTwice() {
		ChainLink update = link(MessageType.UPDATE, "one", hours(1), hours(2), hours(9), "alder");
		assertThatThrownBy(() -> new MessageChain(List.of(update))).isInstanceOf(IllegalArgumentException.class);
		assertThatThrownBy(() -> alert().with(update)).isInstanceOf(IllegalArgumentException.class);
	}

	/** CAP 1.2, section 3.3.2, which gives 2002-05-24T16:49:00-07:00 as its example. */
	@ParameterizedTest
	@CsvSource({ "2002-05-24T23:49:00Z, America/Phoenix, 2002-05-24T16:49:00-07:00",
			"2002-05-24T23:49:00Z, UTC, 2002-05-24T23:49:00-00:00",
			"2026-01-24T23:49:00Z, Europe/London, 2026-01-24T23:49:00-00:00",
			"2002-05-24T23:49:00.9Z, Asia/Kolkata, 2002-05-25T05:19:00+05:30" })
	void timesAreWrittenAsTheStandardDoes(Instant time, ZoneId zone, String words) {
		assertThat(CapTime.write(time, zone)).isEqualTo(words);
	}

}
