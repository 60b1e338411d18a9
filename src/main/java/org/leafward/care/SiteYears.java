package org.leafward.care;

import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.leafward.care.core.review.YearInputs;
import org.leafward.care.core.review.YearReview;
import org.leafward.care.core.review.YearReviews;
import org.leafward.care.store.LogTable;
import org.leafward.climate.WeatherYear;
import org.leafward.climate.WeatherYears;
import org.leafward.measure.BadInput;
import org.leafward.measure.DayWindow;
import org.leafward.register.Planting;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.register.Waterings;
import org.springframework.stereotype.Service;

/** Looks back on the years of sites. Nothing of it is stored. */
@Service
public class SiteYears {

	/** First year that is answered. */
	public static final int FIRST = 1900;

	/** A bound against scripts; people log some hundreds. */
	private static final int MOST_ENTRIES = 20_000;

	/** Until the end of February people look back on the year before. */
	private static final int LOOKING_BACK_MONTHS = 2;

	/** How far ahead the next time of something missed is looked for, months. */
	private static final int AHEAD_MONTHS = 18;

	private final TaskCalendar calendar;

	private final LogTable log;

	private final Register register;

	private final Waterings waterings;

	private final WeatherYears weather;

	private final Clock clock;

	SiteYears(TaskCalendar calendar, LogTable log, Register register, Waterings waterings, WeatherYears weather,
			Clock clock) {
		this.calendar = calendar;
		this.log = log;
		this.register = register;
		this.waterings = waterings;
		this.weather = weather;
		this.clock = clock;
	}

	/**
	 * Checks a year.
	 * @param site the site
	 * @param year the year
	 * @return the year
	 * @throws BadInput when it is outside {@value #FIRST} to next year
	 */
	public int check(Site site, int year) {
		int last = today(site).getYear() + 1;
		if (year < FIRST || year > last) {
			throw new BadInput("year %d is outside %d to %d".formatted(year, FIRST, last), "year",
					"give a calendar year, for example %d".formatted(last - 1));
		}
		return year;
	}

	/**
	 * The year that one looks back on today: this one, in January and February the one
	 * before, if anything is known of it.
	 * @param site the site
	 * @return the year
	 */
	public int sensible(Site site) {
		LocalDate today = today(site);
		int before = today.getYear() - 1;
		return (today.getMonthValue() <= LOOKING_BACK_MONTHS && !review(site, before).empty()) ? before
				: today.getYear();
	}

	/**
	 * What was asked for and done in a year.
	 * @param site the site
	 * @param year as {@link #check} takes it
	 * @return the review; empty when nothing is known
	 */
	public YearReview review(Site site, int year) {
		LocalDate today = today(site);
		LocalDate from = LocalDate.of(year, 1, 1);
		LocalDate to = LocalDate.of(year, 12, 31);
		List<CareTask> tasks = this.calendar.ofSite(site.id(), new DayWindow(from, to));
		List<CareTask> ahead = this.calendar.ofSite(site.id(), new DayWindow(today, today.plusMonths(AHEAD_MONTHS)));
		Map<TaskId, LocalDate> doneOn = new HashMap<>();
		List<TaskId> done = tasks.stream().filter((task) -> task.state() == TaskState.DONE).map(CareTask::id).toList();
		this.log.ofTasks(done).forEach((task, entry) -> doneOn.put(task, entry.day()));
		return YearReviews.of(new YearInputs(year, today, site.zone(), tasks, ahead,
				this.log.between(site.id(), from, to, MOST_ENTRIES), doneOn,
				this.waterings.between(site.id(), from, to),
				this.register.plantingsOf(site.id())
					.stream()
					.collect(Collectors.toMap(Planting::id, Planting::label))));
	}

	/**
	 * What the weather did in a year.
	 * @param site the site
	 * @param year as {@link #check} takes it
	 * @return empty when no station can tell
	 */
	public Optional<WeatherYear> weather(Site site, int year) {
		return this.weather.of(site.place(), year, today(site));
	}

	/**
	 * The day at a site.
	 * @param site the site
	 * @return today
	 */
	public LocalDate today(Site site) {
		return LocalDate.ofInstant(this.clock.instant(), site.zone());
	}

}
