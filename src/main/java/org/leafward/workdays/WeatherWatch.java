package org.leafward.workdays;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leafward.care.CareTask;
import org.leafward.care.TaskCalendar;
import org.leafward.care.core.rule.Work;
import org.leafward.climate.ForecastDay;
import org.leafward.climate.GroundReading;
import org.leafward.climate.Grounds;
import org.leafward.climate.SeasonSoFar;
import org.leafward.climate.SeasonView;
import org.leafward.climate.StationForecast;
import org.leafward.measure.DayWindow;
import org.leafward.measure.DayWords;
import org.leafward.measure.Season;
import org.leafward.register.Register;
import org.leafward.register.Site;
import org.leafward.workdays.core.weather.DayJudge;
import org.leafward.workdays.core.weather.DayOutlook;
import org.leafward.workdays.core.weather.WeatherJudgement;
import org.leafward.workdays.core.weather.WeatherJudgement.Advice;
import org.leafward.workdays.core.weather.WeatherJudgement.Finding;
import org.leafward.workdays.store.WorkdayTable;
import org.leafward.workdays.store.WorkdayTable.DayRow;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Service;
import org.springframework.transaction.support.TransactionTemplate;

/**
 * Looks at the forecast of the workdays of the next two days and warns those who lead,
 * once for each forecast that says something else. It never calls a day off itself.
 */
@Service
public class WeatherWatch {

	/** How far ahead people can still be told, days. */
	static final int AHEAD = 2;

	private static final Logger LOG = LoggerFactory.getLogger(WeatherWatch.class);

	private final WorkdayTable table;

	private final Workdays workdays;

	private final Register register;

	private final TaskCalendar calendar;

	private final SeasonSoFar seasons;

	private final Grounds grounds;

	private final RainDates rainDates;

	private final WorkdayMail mail;

	private final TransactionTemplate transaction;

	private final Clock clock;

	WeatherWatch(WorkdayTable table, Workdays workdays, Register register, TaskCalendar calendar, SeasonSoFar seasons,
			Grounds grounds, RainDates rainDates, WorkdayMail mail, TransactionTemplate transaction, Clock clock) {
		this.table = table;
		this.workdays = workdays;
		this.register = register;
		this.calendar = calendar;
		this.seasons = seasons;
		this.grounds = grounds;
		this.rainDates = rainDates;
		this.mail = mail;
		this.transaction = transaction;
		this.clock = clock;
	}

	/**
	 * Looks at all workdays of the next two days.
	 * @return how many were warned of
	 */
	public int look() {
		LocalDate here = LocalDate.ofInstant(this.clock.instant(), ZoneOffset.UTC);
		int warned = 0;
		for (DayRow row : this.table.fixed(new DayWindow(here.minusDays(1), here.plusDays(AHEAD + 1)))) {
			LocalDate today = LocalDate.ofInstant(this.clock.instant(), row.zone());
			if (!row.day().isBefore(today) && !row.day().isAfter(today.plusDays(AHEAD))) {
				try {
					warned += look(row, today) ? 1 : 0;
				}
				catch (RuntimeException ex) {
					LOG.error("the weather of workday {} could not be looked at", row.id(), ex);
				}
			}
		}
		return warned;
	}

	private boolean look(DayRow row, LocalDate today) {
		Optional<Workday> day = this.workdays.find(row.id());
		Optional<WeatherJudgement> judged = day.flatMap((one) -> judge(one, today));
		if (judged.isEmpty() || judged.get().advice().compareTo(Advice.CARE) < 0) {
			return false;
		}
		List<String> words = judged.get().findings().stream().map(Finding::words).toList();
		// What is told is what counts: a forecast in other figures with the same advice
		// is
		// no news.
		String told = judged.get().advice() + " "
				+ judged.get().findings().stream().map((one) -> one.kind() + "/" + one.advice()).sorted().toList();
		String instead = instead(day.get(), judged.get().advice());
		return Boolean.TRUE.equals(this.transaction.execute((status) -> {
			this.table.lock(row.id());
			DayRow now = this.table.find(row.id()).orElse(row);
			if (now.state() != WorkdayState.FIXED || !now.day().equals(row.day()) || told.equals(now.warned())) {
				return false;
			}
			List<String> all = new ArrayList<>(words);
			all.addAll(judged.get().reminders());
			this.mail.warn(now, all, instead);
			this.table.warned(now.id(), told);
			return true;
		}));
	}

	private String instead(Workday day, Advice advice) {
		LocalDate rain = day.rainDay();
		if (advice != Advice.PUT_OFF) {
			return "It can take place, with care.";
		}
		if (rain != null && !this.rainDates.taken(day)) {
			return "Better on its rain date, %s: one button on its page moves it and tells everybody."
				.formatted(DayWords.of(rain));
		}
		return this.rainDates.propose(day)
			.map((one) -> "Better on another day: on %s %d of its %d tasks can be done. Its page can make that its rain date."
				.formatted(DayWords.of(one.day()), one.tasks(), day.tasks().size()))
			.orElse((rain != null) ? "Better on another day; another workday stands on its rain date."
					: "Better on another day; it has no rain date.");
	}

	/**
	 * What the weather says about a workday.
	 * @param day which
	 * @param today the day there
	 * @return the gravest of its sites; empty when no forecast reaches it
	 */
	public Optional<WeatherJudgement> judge(Workday day, LocalDate today) {
		Set<Work> works = works(day);
		return this.register.find(day.sites().stream().map(GroupSite::site).toList())
			.stream()
			.flatMap((site) -> outlook(site, day.day(), today).stream())
			.map((outlook) -> DayJudge.judge(outlook, works))
			.max((one, other) -> one.advice().compareTo(other.advice()));
	}

	private Set<Work> works(Workday day) {
		Map<?, CareTask> tasks = this.calendar.find(day.tasks().stream().map(WorkdayTask::task).toList());
		Set<Work> works = EnumSet.noneOf(Work.class);
		tasks.values().stream().map(CareTask::work).filter(Objects::nonNull).forEach(works::add);
		return works;
	}

	private Optional<DayOutlook> outlook(Site site, LocalDate day, LocalDate today) {
		SeasonView view = this.seasons
			.of(site.place(), Season.containing(today, site.point().hemisphere()).year(), today)
			.orElse(null);
		StationForecast forecast = (view != null) ? view.forecast() : null;
		if (view == null || forecast == null || forecast.stale()) {
			return Optional.empty();
		}
		Boolean frozen = this.grounds.at(site.point(), today).map(GroundReading::frozen).orElse(null);
		return forecast.days()
			.stream()
			.filter((one) -> one.day().equals(day))
			.findFirst()
			.map((one) -> outlook(one, view, frozen));
	}

	private static DayOutlook outlook(ForecastDay day, SeasonView view, @Nullable Boolean frozen) {
		return new DayOutlook(day.day(), tenth(day.precipitation(), 0),
				(day.snowfall() != null) ? day.snowfall().doubleValue() : null,
				tenth(day.minimum(), view.shift().low()), tenth(day.maximum(), view.shift().high()),
				day.lowestHumidity(), tenth(day.wind(), 0), frozen);
	}

	private static @Nullable Double tenth(@Nullable Integer tenths, double colderBy) {
		return (tenths != null) ? tenths / 10.0 - colderBy : null;
	}

}
