package org.leafward.care.web;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.care.CareTask;
import org.leafward.care.TaskKind;
import org.leafward.measure.DayWindow;

/** The days of a ramp as one entry, for pictures in which a day is too narrow to see. */
final class Ramps {

	private Ramps() {
	}

	private record Key(UUID subject, String rule, int season) {
	}

	/**
	 * Joins the days of each ramp; other tasks stay as they are.
	 * @param tasks the tasks
	 * @return a ramp stands where its first day was, and leads to that day
	 */
	static List<CareTask> joined(List<CareTask> tasks) {
		List<CareTask> joined = new ArrayList<>();
		Map<Key, Integer> places = new LinkedHashMap<>();
		for (CareTask task : tasks) {
			Key key = new Key(task.subject(), task.rule(), task.season());
			Integer place = (task.kind() == TaskKind.RAMP_DAY) ? places.get(key) : null;
			if (place != null) {
				joined.set(place, until(joined.get(place), task));
			}
			else {
				places.put(key, joined.size());
				joined.add(task);
			}
		}
		return joined;
	}

	private static CareTask until(CareTask first, CareTask last) {
		return new CareTask(first.id(), first.planting(), first.plant(), first.site(), first.siteName(), first.person(),
				first.rule(), first.season(), first.occurrence(), first.kind(),
				new DayWindow(first.window().from(), last.window().to()), first.text(), first.state(),
				first.withdrawnBecause(), first.sequence(), first.createdAt(), first.changedAt(), first.work(),
				first.packVersion());
	}

}
