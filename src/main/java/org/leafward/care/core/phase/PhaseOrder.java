package org.leafward.care.core.phase;

import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Keeps the phases of a planting in the order in which they come on such a plant, once
 * some were seen: a plant in bloom has had its bud break, if that comes before bloom on
 * it, and what comes after bloom is still to come. The order is that of the estimates, so
 * it differs between plants; phases expected on one day have none.
 */
public final class PhaseOrder {

	private PhaseOrder() {
	}

	/**
	 * A phase of a planting in a season.
	 *
	 * @param phase its name
	 * @param usual the day on which it would be expected if nothing had been seen, which
	 * gives it its place in the order
	 * @param day the day on which it was seen, or is expected by what was seen of the
	 * phases that its estimate hangs on
	 * @param seen whether it was seen
	 */
	public record Dated(String phase, LocalDate usual, LocalDate day, boolean seen) {
	}

	/**
	 * A phase in its place.
	 *
	 * @param day the day, in order
	 * @param by the phase that it had to make room for; null when its own day stands
	 */
	public record Kept(LocalDate day, @Nullable Dated by) {
	}

	/**
	 * Puts phases in order. What was seen stays, even where that is out of order itself;
	 * then the later phase rules what comes before both.
	 * @param phases phases of one planting in one season
	 * @return by name
	 */
	public static Map<String, Kept> keep(Collection<Dated> phases) {
		TreeMap<LocalDate, List<Dated>> order = new TreeMap<>(
				phases.stream().collect(Collectors.groupingBy(Dated::usual)));
		Map<LocalDate, Dated> latest = latest(order);
		Map<String, Kept> kept = new HashMap<>();
		Dated before = null;
		for (Map.Entry<LocalDate, List<Dated>> together : order.entrySet()) {
			Dated last = before;
			for (Dated phase : together.getValue()) {
				Kept one = phase.seen() ? new Kept(phase.day(), null)
						: between(phase, before, latest.get(together.getKey()));
				kept.put(phase.phase(), one);
				Dated now = new Dated(phase.phase(), phase.usual(), one.day(), phase.seen());
				last = (last == null || now.day().isAfter(last.day())) ? now : last;
			}
			before = last;
		}
		return kept;
	}

	private static Kept between(Dated phase, @Nullable Dated before, @Nullable Dated after) {
		LocalDate day = phase.day();
		Dated by = null;
		if (before != null && day.isBefore(before.day())) {
			day = before.day();
			by = before;
		}
		if (after != null && day.isAfter(after.day())) {
			day = after.day();
			by = after;
		}
		return new Kept(day, day.equals(phase.day()) ? null : by);
	}

	/** For each place in the order, the earliest that was seen of what comes after it. */
	private static Map<LocalDate, Dated> latest(TreeMap<LocalDate, List<Dated>> order) {
		Map<LocalDate, Dated> latest = new HashMap<>();
		Dated earliest = null;
		for (Map.Entry<LocalDate, List<Dated>> together : order.descendingMap().entrySet()) {
			if (earliest != null) {
				latest.put(together.getKey(), earliest);
			}
			for (Dated phase : together.getValue()) {
				if (phase.seen() && (earliest == null || phase.day().isBefore(earliest.day()))) {
					earliest = phase;
				}
			}
		}
		return latest;
	}

}
