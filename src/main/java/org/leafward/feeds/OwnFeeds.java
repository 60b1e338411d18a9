package org.leafward.feeds;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.feeds.poll.PollBoard;
import org.leafward.feeds.store.DocumentTable.Claimed;
import org.leafward.feeds.ical.CalendarWriter.Before;
import org.leafward.feeds.store.FeedTable;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.springframework.stereotype.Component;

/** The feeds of a person, and their calendar as a file. */
@Component
class OwnFeeds implements PersonalData {

	private final FeedTable table;

	private final PollBoard board;

	private final FeedBuilder builder;

	private final Register register;

	private final Clock clock;

	OwnFeeds(FeedTable table, PollBoard board, FeedBuilder builder, Register register, Clock clock) {
		this.table = table;
		this.board = board;
		this.builder = builder;
		this.register = register;
		this.clock = clock;
	}

	@Override
	public int order() {
		return 20;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		return Map.of("feeds", this.table.rowsOf(person));
	}

	@Override
	public Map<String, byte[]> files(PersonId person) {
		LocalDate today = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		Instant now = this.clock.instant();
		Claimed whole = Claimed.of(new FeedId(person.value()), FeedKind.PERSON, person.value(), person,
				FeedOptions.USUAL, now);
		return Map.of("calendar.ics", this.builder.build(whole, today, Before.nothing(now)).octets());
	}

	@Override
	public void forget(PersonId person) {
		this.table.forget(person, this.register.sitesOf(person).stream().map(Site::id).toList());
		this.board.settle();
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.table.handOver(from, into);
	}

}
