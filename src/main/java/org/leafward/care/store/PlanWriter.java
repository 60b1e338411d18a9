package org.leafward.care.store;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leafward.care.TaskChange;
import org.leafward.care.TaskState;
import org.leafward.care.core.plan.PlanDiff;
import org.leafward.care.core.plan.PlannedTask;
import org.leafward.measure.Explanation;
import org.leafward.register.PlantingId;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/**
 * Writes the differences of some sites. The time of a change never goes back and always
 * moves, since calendar clients take an entry as changed only when it is newer.
 */
@Repository
public class PlanWriter {

	private final JdbcTemplate batches;

	private final WordingTable wordings;

	private final ExplanationTable explanations;

	private final HistoryTable history;

	PlanWriter(JdbcTemplate batches, WordingTable wordings, ExplanationTable explanations, HistoryTable history) {
		this.batches = batches;
		this.wordings = wordings;
		this.explanations = explanations;
		this.history = history;
	}

	/**
	 * Writes differences.
	 * @param diffs the sites, locked in this transaction
	 * @param nameOf gives the name of an explanation
	 * @param at the time of the change, whole seconds
	 */
	public void write(List<SiteDiff> diffs, Function<Explanation, UUID> nameOf, Instant at) {
		List<PlannedTask> seen = all(diffs,
				(diff) -> Stream.of(diff.added(), diff.changed(), diff.reopened()).flatMap(List::stream));
		List<PlannedTask> explained = all(diffs, (diff) -> diff.explained().stream());
		this.wordings.keep(seen.stream().map(PlannedTask::wording).toList());
		this.explanations.keep(Stream.concat(seen.stream(), explained.stream()).map(PlannedTask::explanation).toList(),
				nameOf);
		OffsetDateTime time = at.atOffset(ZoneOffset.UTC);
		add(diffs, nameOf, time);
		change(all(diffs, (diff) -> Stream.concat(diff.changed().stream(), diff.reopened().stream())), nameOf, time);
		explain(explained, nameOf);
		withdraw(diffs, time);
		List<TaskChange> changes = new ArrayList<>();
		for (SiteDiff site : diffs) {
			site.diff()
				.reopened()
				.forEach((task) -> changes.add(new TaskChange(task.id(), at, TaskState.WITHDRAWN, TaskState.PLANNED,
						"It is called for again.", null)));
			site.diff()
				.withdrawn()
				.forEach((gone) -> changes.add(
						new TaskChange(gone.task(), at, TaskState.PLANNED, TaskState.WITHDRAWN, gone.because(), null)));
		}
		this.history.note(changes);
	}

	private static List<PlannedTask> all(List<SiteDiff> diffs, Function<PlanDiff, Stream<PlannedTask>> part) {
		return diffs.stream().flatMap((site) -> part.apply(site.diff())).toList();
	}

	private void add(List<SiteDiff> diffs, Function<Explanation, UUID> nameOf, OffsetDateTime at) {
		List<Object[]> rows = new ArrayList<>();
		for (SiteDiff diff : diffs) {
			for (PlannedTask task : diff.diff().added()) {
				PlantingId planting = task.planting();
				rows.add(new @Nullable Object[] { task.id().value(), (planting != null) ? planting.value() : null,
						task.plant(), diff.site().id().value(), diff.site().name(), diff.site().owner().value(),
						task.rule(), task.season(), task.occurrence(), task.kind().name(), task.work().name(),
						task.window().from(), task.window().to(), task.wording().name(), task.packVersion(),
						nameOf.apply(task.explanation()), task.rampStep(), task.rampHeld(), at, at });
			}
		}
		this.batches.batchUpdate(
				"""
						insert into care.task (id, planting, plant, site, site_name, person, rule, season, occurrence, kind, work,
							from_day, to_day, wording, pack_version, state, sequence, explanation, ramp_step, ramp_held,
							created_at, changed_at)
						values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'PLANNED', 0, ?, ?, ?, ?, ?)
						""",
				rows);
	}

	/**
	 * Tasks that look different now; each goes up by one in its sequence. Their former
	 * days are remembered: those before a far move, or before the first of the small
	 * moves of a week.
	 */
	private void change(List<PlannedTask> changed, Function<Explanation, UUID> nameOf, OffsetDateTime at) {
		OffsetDateTime weekAgo = at.minusDays(NewsTable.WEEK);
		this.batches.batchUpdate(
				"""
						update care.task t set plant = ?, kind = ?, work = ?, from_day = n.from_day, to_day = n.to_day, wording = ?,
							pack_version = ?, explanation = ?, ramp_step = ?, ramp_held = ?, state = 'PLANNED',
							withdrawn_because = null,
							sequence = sequence + 1, changed_at = greatest(n.at, changed_at + interval '1 second'),
							was_from = case when n.anew then t.from_day else was_from end,
							was_to = case when n.anew then t.to_day else was_to end,
							was_explanation = case when n.anew then t.explanation else was_explanation end,
							was_until = case when n.anew then n.at else was_until end
						from (select m.*, (m.from_day <> o.from_day or m.to_day <> o.to_day)
								and (o.was_until is null or o.was_until < m.week_ago
									or abs(m.from_day - o.from_day) >= %d or abs(m.to_day - o.to_day) >= %d) as anew
							from (select cast(? as uuid) as id, cast(? as date) as from_day, cast(? as date) as to_day,
									cast(? as timestamptz) as at, cast(? as timestamptz) as week_ago) m
								join care.task o on o.id = m.id) n
						where t.id = n.id and t.state in ('PLANNED', 'WITHDRAWN')
						"""
					.formatted(NewsTable.FAR_DAYS, NewsTable.FAR_DAYS),
				changed.stream()
					.map((task) -> new @Nullable Object[] { task.plant(), task.kind().name(), task.work().name(),
							task.wording().name(), task.packVersion(), nameOf.apply(task.explanation()),
							task.rampStep(), task.rampHeld(), task.id().value(), task.window().from(),
							task.window().to(), at, weekAgo })
					.toList());
	}

	/** Tasks with another explanation; no reader of a calendar sees that. */
	private void explain(List<PlannedTask> tasks, Function<Explanation, UUID> nameOf) {
		this.batches.batchUpdate("update care.task set work = ?, pack_version = ?, explanation = ? where id = ?",
				tasks.stream()
					.map((task) -> new Object[] { task.work().name(), task.packVersion(),
							nameOf.apply(task.explanation()), task.id().value() })
					.toList());
	}

	private void withdraw(List<SiteDiff> diffs, OffsetDateTime at) {
		this.batches.batchUpdate("""
				update care.task set state = 'WITHDRAWN', withdrawn_because = ?, sequence = sequence + 1,
					changed_at = greatest(?, changed_at + interval '1 second')
				where id = ? and state = 'PLANNED'
				""",
				diffs.stream()
					.flatMap((site) -> site.diff().withdrawn().stream())
					.map((gone) -> new Object[] { gone.because(), at, gone.task().value() })
					.toList());
	}

}
