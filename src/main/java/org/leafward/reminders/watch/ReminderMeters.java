package org.leafward.reminders.watch;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.TimeGauge;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.leafward.reminders.PostRoom;
import org.leafward.reminders.PostRoom.Standing;
import org.leafward.reminders.channel.Delivery.Outcome;
import org.leafward.reminders.dispatch.DispatchWatch;
import org.springframework.stereotype.Component;

/**
 * Meters of the reminders: {@code leafward.reminders.delivered} counts what came of
 * handing messages on by channel and outcome, {@code leafward.reminders.repeated}
 * messages that may go out twice after a node died, and gauges tell what waits. The
 * gauges ask the database once in {@link #FRESH} at most.
 */
@Component
class ReminderMeters implements DispatchWatch {

	private static final Duration FRESH = Duration.ofSeconds(15);

	private final MeterRegistry registry;

	private final PostRoom room;

	private final Clock clock;

	private @Nullable Standing last;

	private Instant asked = Instant.EPOCH;

	ReminderMeters(MeterRegistry registry, PostRoom room, Clock clock) {
		this.registry = registry;
		this.room = room;
		this.clock = clock;
		Gauge.builder("leafward.reminders.due", this, (meters) -> meters.standing().depth().due())
			.description("Reminders whose time has come and that no node has taken")
			.register(registry);
		Gauge.builder("leafward.reminders.retrying", this, (meters) -> meters.standing().depth().waiting())
			.description("Reminders that failed and wait for their next try")
			.register(registry);
		TimeGauge.builder("leafward.reminders.oldest", this, TimeUnit.SECONDS, ReminderMeters::oldest)
			.description("For how long the oldest reminder has been due")
			.register(registry);
	}

	@Override
	public void delivered(String channel, Outcome outcome) {
		this.registry.counter("leafward.reminders.delivered", "channel", channel, "outcome", outcome.name())
			.increment();
	}

	@Override
	public void repeated(int messages) {
		this.registry.counter("leafward.reminders.repeated").increment(messages);
	}

	private double oldest() {
		Duration oldest = standing().oldestFor();
		return (oldest != null) ? oldest.toSeconds() : 0;
	}

	private synchronized Standing standing() {
		Instant now = this.clock.instant();
		Standing known = this.last;
		if (known == null || this.asked.plus(FRESH).isBefore(now)) {
			known = this.room.waiting();
			this.last = known;
			this.asked = now;
		}
		return known;
	}

}
