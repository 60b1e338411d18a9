package org.leafward.reminders.core;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskText;
import org.leafward.measure.DayWindow;
import org.leafward.register.SiteId;
import org.leafward.reminders.Topic;

/**
 * Tasks that differ in their planting and its amount only are one piece of work, told
 * once.
 */
public final class Alike {

	private Alike() {
	}

	/** What such tasks have in common. */
	private record Work(SiteId site, String rule, DayWindow window, TaskText text, @Nullable String because) {

		static Work of(CareTask task) {
			return of(task, task.withdrawnBecause());
		}

		static Work of(CareTask task, @Nullable String because) {
			TaskText text = task.text();
			return new Work(task.site(), task.rule(), task.window(),
					new TaskText(text.title(), text.what(), null, text.why(), text.otherwise(), text.caution()),
					because);
		}

	}

	/** What reminders of such tasks have in common. */
	private record Item(Work work, Topic topic, int rampDays, @Nullable LocalDate toldDay) {

		static Item of(ReminderItem item) {
			return new Item(Work.of(item.task()), item.topic(), item.rampDays(),
					(item.topic() == Topic.CHANGE) ? item.toldDay() : null);
		}

	}

	/**
	 * Whether two tasks are told as one while both stand, so that what is done to one
	 * from a message is done to the other.
	 * @param one a task
	 * @param other another
	 * @return true when they differ in planting and amount at most
	 */
	public static boolean told(CareTask one, CareTask other) {
		return Work.of(one, null).equals(Work.of(other, null));
	}

	static List<List<ReminderItem>> items(List<ReminderItem> ordered) {
		return together(ordered, Item::of);
	}

	static List<List<CareTask>> tasks(List<CareTask> ordered) {
		return together(ordered, Work::of);
	}

	private static <T> List<List<T>> together(List<T> ordered, Function<T, Object> common) {
		Map<Object, List<T>> groups = new LinkedHashMap<>();
		ordered.forEach((one) -> groups.computeIfAbsent(common.apply(one), (key) -> new ArrayList<>()).add(one));
		return List.copyOf(groups.values());
	}

}
