package org.leafward.care.core.plan;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import org.leafward.measure.DayWindow;

/**
 * A fingerprint of a plan, without putting anything into words. As long as it stays the
 * same there is nothing to write, and the stored tasks need not even be read.
 */
public final class PlanFingerprint {

	/**
	 * The words below a date can change while date and band stay, for example when a
	 * season more is counted. So each site is compared in full once in so many days.
	 */
	private static final int DAYS_UNCOMPARED = 28;

	/** Octets of a task: six numbers of four, one of eight. */
	private static final int TASK = 32;

	private PlanFingerprint() {
	}

	/**
	 * The fingerprint.
	 * @param site the site
	 * @param plan its plan, subjects in a fixed order
	 * @param day today's number, days since 1970-01-01
	 * @return 32 octets (SHA-256)
	 */
	public static byte[] of(PlanSite site, Plan plan, long day) {
		MessageDigest digest = Wording.sha256();
		// Sites take turns, so that not all are compared on one day.
		long turn = Math.floorMod(site.id().value().getLeastSignificantBits(), DAYS_UNCOMPARED);
		ByteBuffer buffer = ByteBuffer.allocate(TASK);
		buffer.putLong(Math.floorDiv(day + turn, DAYS_UNCOMPARED));
		digest.update(buffer.array(), 0, buffer.position());
		Subject subject = null;
		for (PlannedTask task : plan.tasks()) {
			if (task.subject() != subject) {
				subject = task.subject();
				digest.update((subject.id() + subject.words()).getBytes(StandardCharsets.UTF_8));
			}
			DayWindow window = task.window();
			buffer.clear()
				.putLong(task.basis())
				.putInt(task.season())
				.putInt(task.occurrence())
				.putInt((int) window.from().toEpochDay())
				.putInt((int) window.to().toEpochDay())
				.putInt(task.call().ordinal())
				.putInt(task.work().ordinal());
			digest.update(buffer.array());
		}
		for (Gap gap : plan.gaps()) {
			digest.update((gap.planting() + gap.rule() + gap.season() + gap.reason()).getBytes(StandardCharsets.UTF_8));
		}
		return digest.digest();
	}

}
