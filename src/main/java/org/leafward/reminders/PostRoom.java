package org.leafward.reminders;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.leafward.measure.BadInput;
import org.leafward.measure.NotThere;
import org.leafward.reminders.store.QueueTable;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The messages of everybody, for those who run the server. */
@Service
public class PostRoom {

	private static final int LARGEST_PAGE = 200;

	private static final int LAST_PAGE = 100_000;

	private static final Duration DAY = Duration.ofDays(1);

	private final QueueTable table;

	private final Duration late;

	private final Duration keep;

	private final Clock clock;

	PostRoom(QueueTable table, @Value("${leafward.reminders.late:15m}") Duration late,
			@Value("${leafward.reminders.keep:400d}") Duration keep, Clock clock) {
		this.table = table;
		this.late = late;
		this.keep = keep;
		this.clock = clock;
	}

	/**
	 * How things stand.
	 *
	 * @param depth how much waits
	 * @param oldestFor for how long the oldest has been waiting; null when nothing waits
	 * @param late whether that is too long
	 * @param sent messages that left within the last day, by hour, the latest first
	 * @param trouble what failed
	 */
	public record Standing(QueueDepth depth, @Nullable Duration oldestFor, boolean late, List<SentHour> sent,
			QueueTrouble trouble) {
	}

	/**
	 * How things stand now.
	 * @return with what left within a day
	 */
	public Standing standing() {
		Instant now = this.clock.instant();
		QueueDepth depth = this.table.depth(now);
		Duration oldest = oldest(depth, now);
		return new Standing(depth, oldest, late(oldest), this.table.sent(now.minus(DAY)), this.table.trouble());
	}

	/**
	 * How much waits, and for how long.
	 * @return without what left
	 */
	public Standing waiting() {
		Instant now = this.clock.instant();
		QueueDepth depth = this.table.depth(now);
		Duration oldest = oldest(depth, now);
		return new Standing(depth, oldest, late(oldest), List.of(), new QueueTrouble(0, 0));
	}

	private static @Nullable Duration oldest(QueueDepth depth, Instant now) {
		Instant since = depth.oldest();
		return (since != null) ? Duration.between(since, now) : null;
	}

	private boolean late(@Nullable Duration oldest) {
		return oldest != null && oldest.compareTo(this.late) > 0;
	}

	/**
	 * Messages that failed, and those that wait after a failure.
	 * @param page from 0 to 100,000
	 * @param size 1 to 200
	 * @return newest first
	 * @throws BadInput if page or size are out of range
	 */
	public MessagePage inTrouble(int page, int size) {
		if (page < 0 || page > LAST_PAGE || size < 1 || size > LARGEST_PAGE) {
			throw new BadInput("page %d or size %d is out of range".formatted(page, size), "page", "start at page 0");
		}
		List<Message> some = this.table.inTrouble((long) page * size, size + 1);
		return new MessagePage(some.subList(0, Math.min(size, some.size())), page, some.size() > size);
	}

	/**
	 * Lets a message be tried at once.
	 * @param message the message
	 * @throws NotThere when it has lost its use, or there is no such message
	 */
	@Transactional
	public void retry(UUID message) {
		if (this.table.retry(message, this.clock.instant()) == 0) {
			throw new NotThere("There is no such message that is still of use.");
		}
	}

	/**
	 * Deletes what ended long ago.
	 * @return how many rows
	 */
	public int purge() {
		int all = 0;
		int some = this.table.purge(this.clock.instant(), this.keep);
		while (some > 0) {
			all += some;
			some = this.table.purge(this.clock.instant(), this.keep);
		}
		return all;
	}

}
