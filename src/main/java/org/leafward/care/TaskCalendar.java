package org.leafward.care;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leafward.accounts.PersonId;
import org.leafward.measure.DayWindow;
import org.leafward.measure.Explanation;
import org.leafward.register.BedId;
import org.leafward.register.PlantingId;
import org.leafward.register.SiteId;

/** The dated tasks, for those who show or send them. */
public interface TaskCalendar {

	/**
	 * Tasks of a site, withdrawn ones included, by first day, then title, then id.
	 * @param site the site
	 * @param window tasks that overlap these days
	 * @return never null, at most 20,000
	 */
	List<CareTask> ofSite(SiteId site, DayWindow window);

	/**
	 * Tasks of the plantings that stand in a bed now, in the order of {@link #ofSite};
	 * what is for a site as a whole is not among them.
	 * @param bed the bed
	 * @param window tasks that overlap these days
	 * @return never null, at most 20,000; empty when there is no such bed
	 */
	List<CareTask> ofBed(BedId bed, DayWindow window);

	/**
	 * Tasks of some plantings of a site, in the order of {@link #ofSite}.
	 * @param site the site
	 * @param plantings some of its plantings
	 * @param window tasks that overlap these days
	 * @return never null, at most 20,000
	 */
	List<CareTask> ofPlantings(SiteId site, Collection<PlantingId> plantings, DayWindow window);

	/**
	 * Tasks of all sites of a person, in the order of {@link #ofSite}.
	 * @param person the person
	 * @param window tasks that overlap these days
	 * @return never null, at most 20,000
	 */
	List<CareTask> ofPerson(PersonId person, DayWindow window);

	/**
	 * Tasks of a site in one season, in the order of {@link #ofSite}.
	 * @param site the site
	 * @param season year of the season
	 * @return never null, at most 20,000
	 */
	List<CareTask> ofSeason(SiteId site, int season);

	/**
	 * Rules that are for a planting of a site but can't be dated there.
	 * @param site the site
	 * @return never null
	 */
	List<Undated> undated(SiteId site);

	/**
	 * One task.
	 * @param id its identifier
	 * @return empty when there is none
	 */
	Optional<CareTask> find(TaskId id);

	/**
	 * Several tasks.
	 * @param ids their identifiers, at most 10,000
	 * @return those that are there, by identifier
	 */
	Map<TaskId, CareTask> find(Collection<TaskId> ids);

	/**
	 * Tasks that begin, of many people at once, withdrawn ones included.
	 * @param people whose
	 * @param firstDays when they begin
	 * @param also tasks to tell of whenever they begin, and whosever they are
	 * @return in no order
	 */
	List<Beginning> beginning(Collection<PersonId> people, DayWindow firstDays, Collection<TaskId> also);

	/**
	 * How a task's dates came about.
	 * @param id its identifier
	 * @return empty when there is no such task
	 */
	Optional<Explanation> explain(TaskId id);

}
