package org.leafward.care;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leafward.accounts.PersonId;
import org.leafward.care.core.plan.Gap;
import org.leafward.care.store.ExplanationTable;
import org.leafward.care.store.GapTable;
import org.leafward.care.store.TaskTable;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.register.BedId;
import org.leafward.register.Beds;
import org.leafward.register.Planting;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The calendar read from the database. */
@Service
@Transactional(readOnly = true)
public class StoredTasks implements TaskCalendar {

	private final TaskTable tasks;

	private final ExplanationTable explanations;

	private final GapTable gaps;

	private final Beds beds;

	StoredTasks(TaskTable tasks, ExplanationTable explanations, GapTable gaps, Beds beds) {
		this.tasks = tasks;
		this.gaps = gaps;
		this.beds = beds;
		this.explanations = explanations;
	}

	@Override
	public List<CareTask> ofSite(SiteId site, DayWindow window) {
		return this.tasks.ofSite(site, window);
	}

	@Override
	public List<CareTask> ofBed(BedId bed, DayWindow window) {
		List<Planting> plantings = this.beds.plantingsIn(bed);
		return plantings.isEmpty() ? List.of() : this.tasks.ofPlantings(plantings.get(0).site(),
				plantings.stream().map(Planting::id).toList(), window);
	}

	@Override
	public List<CareTask> ofPlantings(SiteId site, Collection<PlantingId> plantings, DayWindow window) {
		return this.tasks.ofPlantings(site, plantings, window);
	}

	@Override
	public List<CareTask> ofPerson(PersonId person, DayWindow window) {
		return this.tasks.ofPerson(person.value(), window);
	}

	@Override
	public List<CareTask> ofSeason(SiteId site, int season) {
		return this.tasks.ofSeason(site, season);
	}

	@Override
	public Optional<CareTask> find(TaskId id) {
		return this.tasks.find(id);
	}

	@Override
	public Map<TaskId, CareTask> find(Collection<TaskId> ids) {
		return this.tasks.find(ids);
	}

	@Override
	public List<Beginning> beginning(Collection<PersonId> people, DayWindow firstDays, Collection<TaskId> also) {
		return this.tasks.beginning(people, firstDays, also);
	}

	@Override
	public Optional<Explanation> explain(TaskId id) {
		return this.explanations.of(id);
	}

	@Override
	public List<Undated> undated(SiteId site) {
		return this.gaps.of(site).stream().map(StoredTasks::undated).toList();
	}

	private static Undated undated(Gap gap) {
		return new Undated(gap.planting(), gap.rule(), gap.title(), gap.season(), gap.reason());
	}

}
