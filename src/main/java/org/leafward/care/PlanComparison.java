package org.leafward.care;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.core.plan.PlanDiff;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.care.core.plan.StoredTask;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.Site;

/**
 * What another plan of a site would change of its stored tasks. What would change without
 * it as well is left out.
 *
 * @param changed tasks with other days or words
 * @param added new tasks, or such as come back
 * @param withdrawn tasks no longer needed
 */
record PlanComparison(List<PreviewedChange> changed, List<PreviewedChange> added, List<PreviewedChange> withdrawn) {

	/** Stands for the names of explanations, which nobody sees change. */
	private static final UUID UNASKED = new UUID(0, 0);

	/**
	 * Compares.
	 * @param inputs the site
	 * @param stored its stored tasks
	 * @param now its plan as it is
	 * @param then its plan as it would be
	 * @return the changes, in the order of the plan
	 */
	static PlanComparison of(SiteInputs inputs, List<StoredTask> stored, SitePlanner.Planned now,
			SitePlanner.Planned then) {
		Site site = inputs.site();
		Set<PlantingId> present = inputs.plantings().stream().map(Planting::id).collect(Collectors.toSet());
		PlanDiff anyway = PlanDiff.between(stored, now.plan(), present, inputs.today(), (explanation) -> UNASKED);
		PlanDiff diff = PlanDiff.between(stored, then.plan(), present, inputs.today(), (explanation) -> UNASKED);
		Map<TaskId, StoredTask> before = new HashMap<>();
		stored.forEach((task) -> before.put(task.id(), task));
		Set<TaskId> without = new HashSet<>();
		anyway.withdrawn().forEach((gone) -> without.add(gone.task()));
		Map<TaskId, PlannedTask> planned = new HashMap<>();
		visible(anyway).forEach((task) -> planned.put(task.id(), task));
		List<PreviewedChange> withdrawn = new ArrayList<>();
		diff.withdrawn()
			.stream()
			.map((gone) -> gone.task())
			.filter((gone) -> !without.contains(gone))
			.map((gone) -> Objects.requireNonNull(before.get(gone)))
			.forEach((task) -> withdrawn.add(new PreviewedChange(site.name(), site.county(), task.plant(),
					title(now, task), task.window(), null)));
		return new PlanComparison(
				news(diff.changed().stream(), planned).map((task) -> change(site, before.get(task.id()), task))
					.toList(),
				news(Stream.concat(diff.added().stream(), diff.reopened().stream()), planned)
					.map((task) -> change(site, null, task))
					.toList(),
				List.copyOf(withdrawn));
	}

	private static String title(SitePlanner.Planned now, StoredTask task) {
		return now.plan()
			.tasks()
			.stream()
			.filter((one) -> one.rule().equals(task.rule()))
			.findFirst()
			.map((one) -> one.text().title())
			.orElse(task.rule());
	}

	private static PreviewedChange change(Site site, @Nullable StoredTask before, PlannedTask task) {
		return new PreviewedChange(site.name(), site.county(), task.plant(), task.text().title(),
				(before != null) ? before.window() : null, task.window());
	}

	private static Stream<PlannedTask> visible(PlanDiff diff) {
		return Stream.of(diff.added(), diff.reopened(), diff.changed()).flatMap(List::stream);
	}

	/** Those that the plan as it is doesn't want in just the same way. */
	private static Stream<PlannedTask> news(Stream<PlannedTask> tasks, Map<TaskId, PlannedTask> anyway) {
		return tasks.filter((task) -> {
			PlannedTask same = anyway.get(task.id());
			return same == null || !same.window().equals(task.window()) || same.kind() != task.kind()
					|| !same.wording().name().equals(task.wording().name());
		});
	}

	/**
	 * All of them.
	 * @return changed, added, withdrawn
	 */
	List<PreviewedChange> all() {
		return Stream.of(this.changed, this.added, this.withdrawn).flatMap(List::stream).toList();
	}

}
