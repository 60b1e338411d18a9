package org.leafward.reminders.watch;

import java.time.Duration;
import org.leafward.reminders.PostRoom;
import org.leafward.reminders.PostRoom.Standing;
import org.springframework.boot.health.contributor.AbstractHealthIndicator;
import org.springframework.boot.health.contributor.Health;
import org.springframework.stereotype.Component;

/** Down when a reminder ought to have left long ago. */
@Component
class RemindersHealthIndicator extends AbstractHealthIndicator {

	private final PostRoom room;

	RemindersHealthIndicator(PostRoom room) {
		this.room = room;
	}

	@Override
	protected void doHealthCheck(Health.Builder builder) {
		Standing standing = this.room.waiting();
		Duration oldest = standing.oldestFor();
		builder.status(standing.late() ? "DOWN" : "UP")
			.withDetail("due", standing.depth().due())
			.withDetail("retrying", standing.depth().waiting())
			.withDetail("oldest-seconds", (oldest != null) ? oldest.toSeconds() : 0);
	}

}
