package org.leafward.care.store;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import org.leafward.care.TaskId;
import org.leafward.care.core.plan.TaskIdentity;
import org.leafward.measure.Explanation;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import tools.jackson.databind.json.JsonMapper;

/** Explanations under a name made from their content, each kept once. */
@Repository
public class ExplanationTable {

	private final JdbcClient database;

	private final JdbcTemplate batches;

	private final JsonMapper json;

	ExplanationTable(JdbcClient database, JdbcTemplate batches, JsonMapper json) {
		this.database = database;
		this.batches = batches;
		this.json = json;
	}

	/**
	 * The name of an explanation.
	 * @param explanation the explanation
	 * @return the same for the same content
	 */
	public UUID nameOf(Explanation explanation) {
		return TaskIdentity.named(this.json.writeValueAsString(explanation));
	}

	/**
	 * Keeps explanations that are not kept yet.
	 * @param explanations any number
	 * @param nameOf gives their names, as {@link #nameOf} does
	 */
	public void keep(Collection<Explanation> explanations, Function<Explanation, UUID> nameOf) {
		// In the order of their names, so that two nodes never wait for each other.
		Map<UUID, Explanation> named = new TreeMap<>();
		explanations.forEach((explanation) -> named.putIfAbsent(nameOf.apply(explanation), explanation));
		Set<UUID> kept = kept(named.keySet());
		this.batches.batchUpdate(
				"insert into care.explanation (id, content) values (?, ?::jsonb) on conflict (id) do nothing",
				named.entrySet()
					.stream()
					.filter((row) -> !kept.contains(row.getKey()))
					.map((row) -> new Object[] { row.getKey(), this.json.writeValueAsString(row.getValue()) })
					.toList());
	}

	private Set<UUID> kept(Set<UUID> names) {
		return Set.copyOf(this.database.sql("select id from care.explanation where id = any(?::uuid[])")
			.param(names.toArray(UUID[]::new))
			.query(UUID.class)
			.list());
	}

	/**
	 * The explanation of a task.
	 * @param task the task
	 * @return empty when there is no such task
	 */
	public Optional<Explanation> of(TaskId task) {
		return this.database.sql("""
				select e.content::text from care.task t join care.explanation e on e.id = t.explanation where t.id = ?
				""")
			.param(task.value())
			.query(String.class)
			.optional()
			.map((content) -> this.json.readValue(content, Explanation.class));
	}

	/**
	 * Forgets explanations that no task has any more.
	 * @return how many
	 */
	public int forgetUnused() {
		return this.database.sql("""
				delete from care.explanation e where not exists (select from care.task t where t.explanation = e.id)
					and not exists (select from care.task t where t.was_explanation = e.id)
				""").update();
	}

}
