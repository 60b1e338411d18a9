package org.leafward.workdays;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.leafward.accounts.Post;
import org.leafward.accounts.Post.Handed;
import org.leafward.accounts.Post.Outcome;
import org.leafward.workdays.store.DayMailTable;
import org.leafward.workdays.store.DayMailTable.MessageRow;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Service;

/**
 * Hands the mails of the outbox on. A node that dies leaves claims that end by
 * themselves; what it had handed on without a record goes out again under the same
 * identifier.
 */
@Service
public class PostRound {

	private static final Logger LOG = LoggerFactory.getLogger(PostRound.class);

	private static final int TOGETHER = 20;

	private static final Duration LEASE = Duration.ofMinutes(10);

	/**
	 * After these waits a mail is given up; the last mails of a day have no use later.
	 */
	private static final List<Duration> WAITS = List.of(Duration.ofMinutes(1), Duration.ofMinutes(5),
			Duration.ofMinutes(15), Duration.ofHours(1), Duration.ofHours(3), Duration.ofHours(6),
			Duration.ofHours(12));

	private final DayMailTable outbox;

	private final ObjectProvider<Post> post;

	private final Clock clock;

	PostRound(DayMailTable outbox, ObjectProvider<Post> post, Clock clock) {
		this.outbox = outbox;
		this.post = post;
		this.clock = clock;
	}

	/**
	 * Sends what is due.
	 * @param box for how long at most new mails are taken up
	 * @return how many were tried
	 */
	public int send(Duration box) {
		Post way = this.post.stream().findFirst().orElse(null);
		if (way == null) {
			return 0;
		}
		Instant until = this.clock.instant().plus(box);
		int tried = 0;
		while (this.clock.instant().isBefore(until)) {
			List<MessageRow> mails = this.outbox.claim(TOGETHER, this.clock.instant(), LEASE);
			if (mails.isEmpty()) {
				break;
			}
			for (MessageRow mail : mails) {
				finish(mail,
						way.hand(new Post.Mail(mail.id(), mail.recipient(), mail.name(), mail.subject(), mail.body(),
								mail.calendar(), mail.method(),
								(mail.workday() != null) ? mail.workday().toString() : null, mail.language(),
								mail.createdAt())));
				tried++;
			}
		}
		return tried;
	}

	private void finish(MessageRow mail, Handed handed) {
		Instant now = this.clock.instant();
		boolean again = handed.outcome() == Outcome.LATER && mail.tries() <= WAITS.size();
		String state = switch (handed.outcome()) {
			case TAKEN -> "SENT";
			case KEPT -> "KEPT";
			case LATER -> again ? "WAITING" : "FAILED";
			case REFUSED -> "FAILED";
		};
		if (state.equals("FAILED")) {
			LOG.warn("mail {} about a workday was given up: {}", mail.id(), handed.reason());
		}
		Instant next = again ? now.plus(WAITS.get(Math.max(0, mail.tries() - 1))) : now;
		this.outbox.finish(mail.id(), state, handed.reason(), now, next);
	}

}
