package org.leafward.care.store;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.leafward.accounts.Brought;
import org.leafward.accounts.PersonId;
import org.leafward.accounts.PersonalData;
import org.leafward.accounts.Rows;
import org.leafward.care.KeptCalculations;
import org.leafward.measure.BadInput;
import org.leafward.measure.Given;
import org.leafward.register.PlantingId;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.SiteId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * What care keeps about a person: tasks, what they did and what they saw. Words and
 * explanations are shared by the tasks of many; those that no task has any more go when
 * {@code Replanning.tidy} comes by.
 */
@Component
class OwnCare implements PersonalData {

	private final JdbcClient database;

	private final Register register;

	private final SitePlanTable plans;

	private final KeptCalculations kept;

	OwnCare(JdbcClient database, Register register, SitePlanTable plans, KeptCalculations kept) {
		this.database = database;
		this.register = register;
		this.plans = plans;
		this.kept = kept;
	}

	@Override
	public int order() {
		return 30;
	}

	@Override
	public Map<String, List<Map<String, Object>>> of(PersonId person) {
		Map<String, List<Map<String, Object>>> all = new LinkedHashMap<>();
		UUID[] sites = ids(person);
		all.put("tasks",
				this.database
					.sql("""
							select task.id, task.site, task.planting, task.plant, task.rule, task.season, task.kind, task.from_day as "from",
								task.to_day as "to", wording.title, wording.what, wording.amount, task.state,
								task.withdrawn_because as "because"
							from care.task task join care.wording wording on wording.id = task.wording
							where task.person = ? order by task.from_day, task.id""")
					.param(person.value())
					.query(Rows::plain)
					.list());
		all.put("task-history", this.database.sql("""
				select history.task, history.at, history.from_state as "from", history.to_state as "to", history.because
				from care.task_history history join care.task task on task.id = history.task
				where task.person = ? order by history.id""").param(person.value()).query(Rows::plain).list());
		all.put("care-log",
				this.database.sql("""
						select id, site, planting, task, work, day, amount, unit, note, entered_at as "enteredAt",
							undone_at as "undoneAt"
						from care.log where site = any(?) or person = ? order by day, id""")
					.param(sites)
					.param(person.value())
					.query(Rows::plain)
					.list());
		all.put("observations",
				this.database.sql("""
						select id, site, planting, kind, name, day, entered_at as "enteredAt", undone_at as "undoneAt"
						from care.observation where site = any(?) or person = ? order by day, id""")
					.param(sites)
					.param(person.value())
					.query(Rows::plain)
					.list());
		all.put("kept-calculations",
				this.database.sql("""
						select id, site, planting, calculator, inputs, words, day, kept_at as "keptAt"
						from care.kept_calculation where site = any(?) or person = ? order by kept_at, id""")
					.param(sites)
					.param(person.value())
					.query(Rows::plain)
					.list());
		return all;
	}

	/**
	 * The figures come back with the register; this is what they were worked out from.
	 */
	@Override
	public void bring(PersonId person, Brought brought) {
		brought.each("kept-calculations", (row) -> {
			String site = brought.here(row, "site");
			String planting = brought.here(row, "planting");
			if (site == null || planting == null) {
				throw new BadInput("site or planting is missing", "planting", "name the id of one of the plantings");
			}
			this.kept.bringBack(new SiteId(UUID.fromString(site)), new PlantingId(UUID.fromString(planting)),
					Given.text("calculator", row.get("calculator")), Given.text("inputs", row.get("inputs")),
					Given.date("day", row.get("day")), person);
		});
	}

	private UUID[] ids(PersonId person) {
		return this.register.sitesOf(person).stream().map(Site::id).map(SiteId::value).toArray(UUID[]::new);
	}

	@Override
	public void forget(PersonId person) {
		List<SiteId> sites = this.register.sitesOf(person).stream().map(Site::id).toList();
		UUID[] ids = sites.stream().map(SiteId::value).toArray(UUID[]::new);
		// Whoever derives one of them right now is waited for; afterwards it is not
		// there.
		this.plans.lock(sites);
		this.database.sql("""
				delete from care.task_history where task in (select id from care.task where site = any(?))""")
			.param(ids)
			.update();
		for (String table : List.of("task", "gap", "log", "observation", "kept_calculation", "replan", "site_plan")) {
			this.database.sql("delete from care.%s where site = any(?)".formatted(table)).param(ids).update();
		}
		this.database.sql("update care.task_history set by_person = null where by_person = ?")
			.param(person.value())
			.update();
		this.database.sql("update care.log set person = null where person = ?").param(person.value()).update();
		this.database.sql("update care.observation set person = null where person = ?").param(person.value()).update();
		this.database.sql("update care.kept_calculation set person = null where person = ?")
			.param(person.value())
			.update();
		this.database.sql("update care.pack_version set by_person = null, by_name = 'a specialist' where by_person = ?")
			.param(person.value())
			.update();
	}

	@Override
	public void handOver(PersonId from, PersonId into) {
		this.plans.lock(this.register.sitesOf(from).stream().map(Site::id).toList());
		for (String column : List.of("task set person", "log set person", "observation set person",
				"kept_calculation set person", "task_history set by_person", "pack_version set by_person")) {
			this.database
				.sql("update care.%s = ? where %s = ?".formatted(column, column.substring(column.lastIndexOf(' ') + 1)))
				.params(into.value(), from.value())
				.update();
		}
	}

}
