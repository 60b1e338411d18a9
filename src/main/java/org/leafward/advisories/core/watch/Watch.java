package org.leafward.advisories.core.watch;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leafward.advisories.Bilingual;
import org.leafward.advisories.Figure;
import org.leafward.climate.PlaceDay;
import org.leafward.measure.DayWords;
import org.leafward.measure.Season;

/**
 * Looks whether a condition holds at a place. What isn't known is never a hit.
 */
public final class Watch {

	/** Crops that are named at most. */
	private static final int MOST_CROPS = 6;

	/** So that 2.54 cm meets an inch. */
	private static final double TOLERANCE = 0.005;

	private final WatchCondition condition;

	private final Limits limits;

	private final Scene scene;

	private final Figures figures;

	/** A figure that met its threshold. */
	private record Met(Figure figure, boolean least) {
	}

	private Watch(WatchCondition condition, Limits limits, Scene scene) {
		this.condition = condition;
		this.limits = limits;
		this.scene = scene;
		this.figures = new Figures(scene, condition.stages());
	}

	/**
	 * What came of looking.
	 *
	 * @param holds whether it holds; null when that isn't known
	 * @param hit the hit; null unless it holds
	 */
	public record Outcome(@Nullable Boolean holds, @Nullable Hit hit) {
	}

	/**
	 * Looks.
	 * @param condition the condition
	 * @param limits its thresholds as they hold at the place
	 * @param scene what is known of the place
	 * @return what came of it
	 */
	public static Outcome look(WatchCondition condition, Limits limits, Scene scene) {
		return new Watch(condition, limits, scene).look();
	}

	private Outcome look() {
		Boolean season = inSeason();
		if (!Boolean.TRUE.equals(season)) {
			return new Outcome(season, null);
		}
		List<Met> met = new ArrayList<>();
		Boolean today = all(this.condition.all(), null, met);
		if (Boolean.FALSE.equals(today)) {
			return new Outcome(false, null);
		}
		OneDay oneDay = this.condition.oneDay();
		if (oneDay == null) {
			return (today != null)
					? new Outcome(true, hit(met, this.scene.today(),
							this.scene.today().plusDays(this.condition.lasts() - 1L), List.of()))
					: new Outcome(null, null);
		}
		return onOneDay(oneDay, today, met);
	}

	private Outcome onOneDay(OneDay oneDay, @Nullable Boolean today, List<Met> met) {
		boolean unknown = false;
		LocalDate first = null;
		LocalDate last = null;
		PlaceDay worst = null;
		List<Met> ofDay = List.of();
		for (int ahead = oneDay.from(); ahead <= oneDay.to(); ahead++) {
			LocalDate date = this.scene.today().plusDays(ahead);
			PlaceDay day = this.scene.now()
				.forecast()
				.stream()
				.filter((one) -> one.day().equals(date))
				.findFirst()
				.orElse(null);
			List<Met> here = new ArrayList<>();
			Boolean holds = (day != null) ? all(oneDay.all(), day, here) : null;
			if (Boolean.TRUE.equals(holds)) {
				first = (first != null) ? first : date;
				last = date;
				if (worst == null || worse(here, ofDay)) {
					worst = day;
					ofDay = here;
				}
			}
			unknown |= holds == null;
		}
		if (worst == null) {
			return new Outcome(unknown ? null : Boolean.FALSE, null);
		}
		if (today == null) {
			return new Outcome(null, null);
		}
		List<Met> all = new ArrayList<>(ofDay);
		all.addAll(met);
		return new Outcome(true, hit(all, Objects.requireNonNull(first).minusDays(oneDay.night() ? 1 : 0),
				Objects.requireNonNull(last), crops(worst)));
	}

	/** The first figure of a day decides which of several days is told. */
	private static boolean worse(List<Met> one, List<Met> other) {
		if (one.isEmpty() || other.isEmpty()) {
			return false;
		}
		double a = one.get(0).figure().value();
		double b = other.get(0).figure().value();
		return one.get(0).least() ? a > b : a < b;
	}

	private List<Bilingual> crops(PlaceDay day) {
		if (this.condition.stages() == null) {
			return List.of();
		}
		double margin = this.condition.oneDay() != null ? margin(this.condition.oneDay()) : 0;
		return this.figures.risks(day)
			.stream()
			.filter((risk) -> risk.margin() <= margin)
			.limit(MOST_CROPS)
			.map(StageWords::of)
			.toList();
	}

	private double margin(OneDay oneDay) {
		return oneDay.all()
			.stream()
			.filter((one) -> one instanceof Criterion.Compare compare
					&& compare.figure().kind() == FigureKind.KILL_MARGIN)
			.mapToDouble((one) -> this.limits.counted(((Criterion.Compare) one).threshold()))
			.findFirst()
			.orElse(0);
	}

	private Hit hit(List<Met> met, LocalDate from, LocalDate to, List<Bilingual> crops) {
		return new Hit(from, to, met.stream().map(Met::figure).toList(),
				met.stream().map((one) -> FigureWords.reason(one.figure(), one.least())).toList(), crops);
	}

	private @Nullable Boolean all(List<Criterion> criteria, @Nullable PlaceDay day, List<Met> met) {
		boolean unknown = false;
		for (Criterion one : criteria) {
			Boolean holds = holds(one, day, met);
			if (Boolean.FALSE.equals(holds)) {
				return false;
			}
			unknown |= holds == null;
		}
		return unknown ? null : Boolean.TRUE;
	}

	private @Nullable Boolean holds(Criterion criterion, @Nullable PlaceDay day, List<Met> met) {
		if (criterion instanceof Criterion.AnyOf any) {
			boolean unknown = false;
			boolean held = false;
			for (Criterion one : any.of()) {
				Boolean holds = holds(one, day, met);
				held |= Boolean.TRUE.equals(holds);
				unknown |= holds == null;
			}
			return held ? Boolean.TRUE : unknown ? null : Boolean.FALSE;
		}
		Criterion.Compare compare = (Criterion.Compare) criterion;
		FigureSpec spec = compare.figure();
		Double value = (day != null) ? this.figures.of(spec, day) : this.figures.of(spec);
		if (value == null) {
			return null;
		}
		double limit = this.limits.counted(compare.threshold());
		boolean holds = compare.least() ? value >= limit - TOLERANCE : value <= limit + TOLERANCE;
		if (holds) {
			met.add(new Met(figure(compare, value, limit, day), compare.least()));
			if (spec.kind() == FigureKind.KILL_MARGIN && day != null && day.minimum() != null) {
				met.add(new Met(new Figure(FigureKind.LOW.code(), FigureKind.LOW.label(0), day.minimum(),
						FigureKind.LOW.unit().name(), null, day.day()), false));
			}
		}
		return holds;
	}

	private static Figure figure(Criterion.Compare compare, double value, double limit, @Nullable PlaceDay day) {
		FigureSpec spec = compare.figure();
		Bilingual label = spec.kind().label(spec.days());
		if (spec.marker() != null) {
			label = new Bilingual(label.english() + " of " + spec.marker().code(),
					label.spanish() + " de " + spec.marker().code());
		}
		return new Figure(spec.kind().code(), label, value, spec.kind().unit().name(), limit,
				(day != null && spec.kind().ofDay()) ? day.day() : null);
	}

	private @Nullable Boolean inSeason() {
		WatchCondition.WatchSeason season = this.condition.season();
		if (season == null) {
			return true;
		}
		Boolean known = Boolean.FALSE;
		int year = Season.containing(this.scene.today(), this.figures.hemisphere()).year();
		// A season may begin in one year and end in the next, such as winter.
		for (int of = year - 1; of <= year + 1; of++) {
			Optional<LocalDate> from = date(season.from(), of);
			Optional<LocalDate> to = date(season.to(), of);
			if (to.isPresent() && from.isPresent() && to.get().isBefore(from.get())) {
				to = date(season.to(), of + 1);
			}
			if (from.isEmpty() || to.isEmpty()) {
				known = null;
			}
			else if (!this.scene.today().isBefore(from.get()) && !this.scene.today().isAfter(to.get())) {
				return true;
			}
		}
		return known;
	}

	private Optional<LocalDate> date(SeasonEnd end, int season) {
		if (end.marker() != null) {
			return this.scene.markers().on(end.marker(), season).map((date) -> date.plusDays(end.days()));
		}
		LocalDate north = Objects.requireNonNull(end.day()).atYear(season);
		return Optional.of(this.scene.south() ? north.plusMonths(6) : north);
	}

	/**
	 * The days of a hit for readers.
	 * @param hit the hit
	 * @return for example "Thu 12 Nov 2026"
	 */
	public static String days(Hit hit) {
		return DayWords.of(hit.from()) + (hit.to().equals(hit.from()) ? "" : " to " + DayWords.of(hit.to()));
	}

}
